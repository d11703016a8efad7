package org.griplore.store.archive;

import java.sql.Connection;

/** The next number of a table's rows: none is given twice, even when its row was taken back. */
final class Numbers {
  private Numbers() {}

  static long next(Connection connection, String table) {
    return next(connection, table, table, "id");
  }

  static int nextDelivery(Connection connection) {
    return (int) next(connection, "delivery", "revision", "delivery");
  }

  /** Remembers the highest number of a table before rows of it are taken back. */
  static void keep(Connection connection, String table) {
    keep(connection, table, next(connection, table) - 1);
  }

  static void keepDelivery(Connection connection) {
    keep(connection, "delivery", nextDelivery(connection) - 1);
  }

  private static long next(Connection connection, String name, String table, String column) {
    return Sql.number(
        connection,
        "SELECT max((SELECT coalesce(max("
            + column
            + "), 0) FROM "
            + table
            + "), (SELECT coalesce(max(highest), 0) FROM number_used WHERE name = ?)) + 1",
        name);
  }

  private static void keep(Connection connection, String name, long highest) {
    Sql.execute(
        connection,
        "INSERT OR REPLACE INTO number_used (name, highest) VALUES (?, ?)",
        name,
        highest);
  }
}
