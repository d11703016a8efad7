package org.griplore.store.archive;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Types;
import java.util.Collections;
import java.util.List;

/** Inserts rows of one table in batches; the caller gives the ids. Not thread-safe. */
final class BatchInsert implements AutoCloseable {
  private static final int ROWS_A_BATCH = 1000;

  private final PreparedStatement statement;
  private List<BatchInsert> parents = List.of();
  private long nextId;
  private int waiting;

  /** Prepares for a table whose first column is {@code id}; ids go on from the highest ever. */
  BatchInsert(Connection connection, String table, String... columns) {
    String marks = String.join(", ", Collections.nCopies(columns.length + 1, "?"));
    String sql =
        "INSERT INTO " + table + " (id, " + String.join(", ", columns) + ") VALUES (" + marks + ")";
    try {
      this.statement = connection.prepareStatement(sql);
    } catch (SQLException e) {
      throw ArchiveFailure.of(e);
    }
    this.nextId = Numbers.next(connection, table);
  }

  /** Names the tables that rows of this one refer to: their waiting rows are sent first. */
  BatchInsert after(BatchInsert... tables) {
    parents = List.of(tables);
    return this;
  }

  /** Adds a row and returns its id. Numbers and text only; null becomes NULL. */
  long add(Object... values) {
    try {
      statement.setLong(1, nextId);
      for (int i = 0; i < values.length; i++) {
        bind(i + 2, values[i]);
      }
      statement.addBatch();
      if (++waiting == ROWS_A_BATCH) {
        flush();
      }
      return nextId++;
    } catch (SQLException e) {
      throw ArchiveFailure.of(e);
    }
  }

  private void bind(int position, Object value) throws SQLException {
    if (value == null) {
      statement.setNull(position, Types.NULL);
    } else if (value instanceof String text) {
      statement.setString(position, text);
    } else if (value instanceof Double number) {
      statement.setDouble(position, number);
    } else if (value instanceof Integer number) {
      statement.setInt(position, number);
    } else if (value instanceof Long number) {
      statement.setLong(position, number);
    } else {
      throw new IllegalArgumentException("cannot store a " + value.getClass());
    }
  }

  /** Sends what waits to the database. */
  void flush() {
    try {
      if (waiting > 0) {
        parents.forEach(BatchInsert::flush);
        statement.executeBatch();
        waiting = 0;
      }
    } catch (SQLException e) {
      throw ArchiveFailure.of(e);
    }
  }

  @Override
  public void close() {
    try {
      statement.close();
    } catch (SQLException e) {
      throw ArchiveFailure.of(e);
    }
  }
}
