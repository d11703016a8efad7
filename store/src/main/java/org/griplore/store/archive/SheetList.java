package org.griplore.store.archive;

import java.sql.Connection;
import java.util.HashMap;
import java.util.Map;

/** The names of sheets by their numbers. */
final class SheetList {
  private SheetList() {}

  static CellText.SheetNames of(Connection connection) {
    Map<Integer, String> names = new HashMap<>();
    Sql.list(
            connection,
            "SELECT id, name FROM sheet",
            row -> Map.entry(row.getInt(1), row.getString(2)))
        .forEach(sheet -> names.put(sheet.getKey(), sheet.getValue()));
    return names::get;
  }
}
