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
 * @param look how the source shows it beside the text
 */
public record GridCell(
    int row, int column, String text, Double number, LocalDate date, CellLook look) {
  /** Checks that there is a text. */
  public GridCell {
    Objects.requireNonNull(text);
    Objects.requireNonNull(look);
  }

  /** A cell of which the source shows nothing but its text. */
  public GridCell(int row, int column, String text, Double number, LocalDate date) {
    this(row, column, text, number, date, CellLook.PLAIN);
  }

  /** A cell that is text only. */
  public static GridCell of(int row, int column, String text) {
    return new GridCell(row, column, text, null, null);
  }

  /** The same cell in another column of its row. */
  public GridCell in(int other) {
    return new GridCell(row, other, text, number, date, look);
  }

  /** The same cell, shown so. */
  public GridCell shown(CellLook other) {
    return new GridCell(row, column, text, number, date, other);
  }

  /** The unit that the cell's number format shows; empty where it shows none. */
  public String formatUnit() {
    return look.format() == null ? "" : look.format().unit();
  }

  /** How many decimals the cell's number format shows; null where it leaves that open. */
  public Integer formatDecimals() {
    return look.format() == null ? null : look.format().decimals();
  }
}
