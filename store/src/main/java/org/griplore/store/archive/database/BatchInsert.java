package org.griplore.store.archive.database;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Types;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.griplore.store.vocabulary.Cell;
import org.griplore.store.vocabulary.Phrase;

/**
 * Inserts rows of one table in batches. A column {@code NAME:cell} stands for the four columns of a
 * cell, {@code NAME:phrase} for the two of a phrase; without a name they have no prefix. Not
 * thread-safe.
 */
public final class BatchInsert implements AutoCloseable {
  private static final int ROWS_A_BATCH = 1000;

  private final PreparedStatement statement;
  private final SharedWords sheets;
  private final int[] widths;
  private final boolean numbered;
  private List<BatchInsert> parents = List.of();
  private long nextId;
  private int waiting;

  private BatchInsert(
      Connection connection,
      SharedWords sheets,
      boolean numbered,
      String table,
      String... columns) {
    this.sheets = sheets;
    this.numbered = numbered;
    this.widths = new int[columns.length];
    List<String> names = new ArrayList<>();
    if (numbered) {
      names.add("id");
    }
    for (int i = 0; i < columns.length; i++) {
      List<String> own = names(columns[i]);
      widths[i] = own.size();
      names.addAll(own);
    }
    String marks = String.join(", ", Collections.nCopies(names.size(), "?"));
    String sql =
        "INSERT INTO " + table + " (" + String.join(", ", names) + ") VALUES (" + marks + ")";
    try {
      this.statement = connection.prepareStatement(sql);
    } catch (SQLException e) {
      throw ArchiveFailure.of(e);
    }
    this.nextId = numbered ? NextId.of(connection, table) : 0;
  }

  /** For a table with a column {@code id}: ids go on from the highest ever. */
  public static BatchInsert numbered(
      Connection connection, SharedWords sheets, String table, String... columns) {
    return new BatchInsert(connection, sheets, true, table, columns);
  }

  /** For a table whose rows are told apart by what they hold. */
  public static BatchInsert into(
      Connection connection, SharedWords sheets, String table, String... columns) {
    return new BatchInsert(connection, sheets, false, table, columns);
  }

  private static List<String> names(String column) {
    int colon = column.indexOf(':');
    if (colon < 0) {
      return List.of(column);
    }
    String prefix = colon == 0 ? "" : column.substring(0, colon) + "_";
    if (column.endsWith(":phrase")) {
      return List.of(prefix + "code", prefix + "parameters");
    }
    return colon == 0
        ? List.of("sheet_id", "row", "\"column\"", "cell_text")
        : List.of(prefix + "sheet_id", prefix + "row", prefix + "column", prefix + "text");
  }

  /** Names the tables that rows of this one refer to: their waiting rows are sent first. */
  public BatchInsert after(BatchInsert... tables) {
    parents = List.of(tables);
    return this;
  }

  /** Adds a row and returns its id. Numbers, texts, cells and phrases; null becomes NULL. */
  public long add(Object... values) {
    try {
      int position = 1;
      if (numbered) {
        statement.setLong(position++, nextId);
      }
      for (int i = 0; i < values.length; i++) {
        bind(position, values[i], widths[i]);
        position += widths[i];
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

  private void bind(int position, Object value, int width) throws SQLException {
    if (value == null) {
      for (int i = 0; i < width; i++) {
        statement.setNull(position + i, Types.NULL);
      }
    } else if (value instanceof String text) {
      statement.setString(position, text);
    } else if (value instanceof Double number) {
      statement.setDouble(position, number);
    } else if (value instanceof Integer number) {
      statement.setInt(position, number);
    } else if (value instanceof Long number) {
      statement.setLong(position, number);
    } else if (value instanceof Cell cell) {
      statement.setInt(position, sheets.number(cell.sheet()));
      statement.setInt(position + 1, cell.row());
      statement.setInt(position + 2, cell.column());
      statement.setString(position + 3, cell.found());
    } else if (value instanceof Phrase phrase) {
      statement.setString(position, phrase.code());
      statement.setString(position + 1, PhraseColumns.json(phrase.parameters()));
    } else {
      throw new IllegalArgumentException("cannot store a " + value.getClass());
    }
  }

  /** The highest number given; 0 when there was never a row. */
  public long highest() {
    return nextId - 1;
  }

  /** Sends what waits to the database. */
  public void flush() {
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
