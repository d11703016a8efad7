package org.griplore.ingest.grid.workbook;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.griplore.store.vocabulary.Refusal;

/**
 * A cell's place as a workbook writes it: {@code C7} is row 7, column 3.
 *
 * @param row 1-based
 * @param column 1-based
 */
record CellReference(int row, int column) {
  /** The size of a sheet, XFD1048576. */
  static final int MOST_ROWS = 1 << 20;

  static final int MOST_COLUMNS = 1 << 14;
  private static final Pattern REFERENCE =
      Pattern.compile("\\$?([A-Za-z]{1,3})\\$?([1-9]\\d{0,6})");

  /**
   * Reads a reference.
   *
   * @param name the workbook, and {@code part} the part, for the refusal
   * @throws Refusal when no sheet has such a cell
   */
  static CellReference of(String reference, String name, String part) {
    Matcher parts = REFERENCE.matcher(reference);
    if (!parts.matches()) {
      throw outside(reference, name, part);
    }
    String letters = parts.group(1);
    int column = 0;
    for (int i = 0; i < letters.length(); i++) {
      column = 26 * column + Character.toUpperCase(letters.charAt(i)) - 'A' + 1;
    }
    return new CellReference(Integer.parseInt(parts.group(2)), column)
        .inside(reference, name, part);
  }

  CellReference inside(String reference, String name, String part) {
    if (row < 1 || row > MOST_ROWS || column < 1 || column > MOST_COLUMNS) {
      throw outside(reference, name, part);
    }
    return this;
  }

  private static Refusal outside(String reference, String name, String part) {
    String shown = Damage.shortened(reference);
    return Damage.of(
        name,
        part,
        "names the cell " + shown + ", which no sheet has",
        shown,
        "a cell from A1 to XFD1048576");
  }
}
