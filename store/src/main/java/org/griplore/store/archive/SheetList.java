package org.griplore.store.archive;

import java.sql.Connection;

/** The names of sheets by their numbers. */
final class SheetList {
  private SheetList() {}

  static CellText.SheetNames of(Connection connection) {
    return NumberedWords.read(connection, "SELECT id, name FROM sheet")::get;
  }
}
