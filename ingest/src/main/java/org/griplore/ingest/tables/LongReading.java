package org.griplore.ingest.tables;

import org.griplore.ingest.grid.Grid;

/**
 * A region read as a list of results, a row each, its columns headed by the words of the long
 * table.
 *
 * @param grid the rows, with those words in place of the headers
 */
public record LongReading(Grid grid) {}
