package org.griplore.store.archive.database;

import java.sql.Connection;

/** The next number of a table's rows: none that is told to people is given twice. */
public final class NextId {
  private NextId() {}

  public static long of(Connection connection, String table) {
    return Sql.number(
            connection,
            "SELECT max((SELECT coalesce(max(id), 0) FROM "
                + table
                + "), (SELECT coalesce(max(seq), 0) FROM sqlite_sequence WHERE name = ?1),"
                + " (SELECT iif(?1 = 'result', last_result_id, 0) FROM archive_state))",
            table)
        + 1;
  }
}
