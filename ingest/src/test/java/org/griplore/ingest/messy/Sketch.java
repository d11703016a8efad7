package org.griplore.ingest.messy;

import java.util.List;

/**
 * A table before it is written in a format: rows of texts.
 *
 * @param name the sheet's name
 * @param above lines over the table: titles and details
 * @param headers how many of the table's rows head it
 * @param below lines under the table
 */
record Sketch(
    String name,
    List<List<String>> above,
    List<List<String>> table,
    int headers,
    List<List<String>> below) {
  /** A cell that is one with the cell at its left. */
  static final String LEFT = "\u2190";

  /** A cell that is one with the cell above it. */
  static final String UP = "\u2191";

  int width() {
    return table.stream().mapToInt(List::size).max().orElse(1);
  }

  /** A cell's text where cells cannot be joined. */
  static String plain(String cell) {
    return cell.equals(LEFT) || cell.equals(UP) ? "" : cell;
  }
}
