package org.griplore.ingest.recognise;

import java.util.List;
import java.util.stream.Collectors;
import org.griplore.ingest.grid.GridCell;

/**
 * A table found in a grid, tyres down and columns across (turned where the source has tyres
 * across).
 *
 * @param heads the columns with their header
 * @param rows the tyres' cells, in the order of the heads; null where a cell is empty
 * @param before cells that stand above the table, each line a list
 * @param after cells that stand below it, up to the next table
 */
public record TableArea(
    List<Head> heads,
    List<List<GridCell>> rows,
    List<List<GridCell>> before,
    List<List<GridCell>> after) {
  /**
   * What tables of one making have in common: their headers, in order, without differences that
   * nobody sees.
   */
  public String layout() {
    return heads.stream()
        .map(head -> head.text() + (head.unitText() == null ? "" : " " + head.unitText()))
        .map(ColumnMap::plain)
        .collect(Collectors.joining(" | "));
  }

  /**
   * A column's header.
   *
   * @param text all header texts of the column, the upper first; empty where there is none
   * @param unitText the text of a unit row below the header; null where there is none
   * @param cell the header's cell; null where there is none
   */
  public record Head(String text, String unitText, GridCell cell) {}
}
