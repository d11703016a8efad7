package org.griplore.store.vocabulary;

import java.util.Objects;

/**
 * Where a value stands in its source, and the text found there.
 *
 * @param sheet the sheet, table or section name; empty where the source has one only
 * @param row 1-based row (for text: line) as a person counts it in the source
 * @param column 1-based column
 * @param found the text as found, unchanged
 */
public record Cell(String sheet, int row, int column, String found) {
  /** Checks the position. */
  public Cell {
    Objects.requireNonNull(sheet);
    Objects.requireNonNull(found);
    if (row < 1 || column < 1) {
      throw new IllegalArgumentException("a cell's row and column count from 1");
    }
  }

  /** The place in words, without the file: {@code sheet Wet, row 7, column 3}. */
  public String place() {
    String position = "row " + row + ", column " + column;
    return sheet.isEmpty() ? position : "sheet " + sheet + ", " + position;
  }
}
