package org.griplore.store.vocabulary;

import java.util.Objects;

/**
 * A table of a source that could not be decided on, with the readings of it that are proposed.
 *
 * @param sheet the sheet, table or section it stands in; empty where the source has one only
 * @param firstRow its first row, from 1
 * @param lastRow its last row
 * @param firstColumn its first column, from 1
 * @param lastColumn its last column
 * @param readings the readings with score and reasons, the best first, as a JSON array
 */
public record DraftTable(
    String sheet, int firstRow, int lastRow, int firstColumn, int lastColumn, String readings) {
  /** Checks the region. */
  public DraftTable {
    Objects.requireNonNull(sheet);
    Objects.requireNonNull(readings);
    if (firstRow < 1 || firstColumn < 1 || lastRow < firstRow || lastColumn < firstColumn) {
      throw new IllegalArgumentException("a region's rows and columns count from 1 and rise");
    }
  }
}
