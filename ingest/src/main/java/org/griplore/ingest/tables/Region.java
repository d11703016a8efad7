package org.griplore.ingest.tables;

import java.util.List;
import org.griplore.ingest.grid.GridCell;

/**
 * A part of a grid that may be a table, with the lines around it.
 *
 * @param rows its rows, a heading over several columns standing over each
 * @param before the lines above it, up to the region before
 * @param after the lines below it, up to the end of the grid; empty where another region follows
 */
record Region(List<List<GridCell>> rows, List<List<GridCell>> before, List<List<GridCell>> after) {
  Region with(List<List<GridCell>> others) {
    return new Region(others, before, after);
  }
}
