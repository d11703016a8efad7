package org.griplore.ingest.grid;

import java.time.LocalDate;
import java.util.Objects;

/**
 * A cell that is not empty.
 *
 * @param row 1-based, as a person counts it in the source (for text: the line)
 * @param column 1-based
 * @param text as shown in the source; never blank
 * @param number the number behind the text, where the source keeps numbers; else null
 * @param date the date behind the text, where the source keeps dates; else null
 */
public record GridCell(int row, int column, String text, Double number, LocalDate date) {
  /** Checks that there is a text. */
  public GridCell {
    Objects.requireNonNull(text);
  }

  /** A cell that is text only. */
  public static GridCell of(int row, int column, String text) {
    return new GridCell(row, column, text, null, null);
  }
}
