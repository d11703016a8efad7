package org.griplore.store.archive;

import org.griplore.store.vocabulary.Cell;

/** Writes a cell into one column and reads it back: {@code sheet number:row:column:text found}. */
final class CellText {
  private CellText() {}

  static String write(Cell cell, SharedWords sheets) {
    if (cell == null) {
      return null;
    }
    return new StringBuilder(24 + cell.found().length())
        .append(sheets.number(cell.sheet()))
        .append(':')
        .append(cell.row())
        .append(':')
        .append(cell.column())
        .append(':')
        .append(cell.found())
        .toString();
  }

  static Cell read(String written, SheetNames sheets) {
    if (written == null) {
      return null;
    }
    int first = written.indexOf(':');
    int second = written.indexOf(':', first + 1);
    int third = written.indexOf(':', second + 1);
    return new Cell(
        sheets.name(Integer.parseInt(written.substring(0, first))),
        Integer.parseInt(written.substring(first + 1, second)),
        Integer.parseInt(written.substring(second + 1, third)),
        written.substring(third + 1));
  }

  /** A sheet's name by its number. */
  interface SheetNames {
    String name(int number);
  }
}
