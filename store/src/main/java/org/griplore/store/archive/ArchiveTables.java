package org.griplore.store.archive;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.griplore.store.vocabulary.Refusal;

/**
 * The whole archive as tables, at one moment: every reading, superseded ones too. Rows are numbered
 * and ordered by what the archive holds alone, so that the same contents give the same tables. Not
 * thread-safe.
 */
public final class ArchiveTables implements AutoCloseable {
  private final Connection connection;
  private final Map<String, TableQuery> queries = new LinkedHashMap<>();

  private ArchiveTables(Connection connection) {
    this.connection = connection;
    List<TableQuery> all = new ArrayList<>(new SourceTables(connection).all());
    all.addAll(new TestTables(connection).all());
    all.addAll(new ReductionTables(connection).all());
    all.forEach(query -> queries.put(query.table().name(), query));
  }

  /** Opens the archive's tables as they are now; additions made meanwhile are not seen. */
  public static ArchiveTables open(Archive archive) {
    Connection connection = null;
    try {
      connection = archive.ownReading();
      connection.setAutoCommit(false);
      return new ArchiveTables(connection);
    } catch (SQLException e) {
      Refusal refusal = ArchiveFailure.of(e);
      close(connection, refusal);
      throw refusal;
    } catch (RuntimeException e) {
      close(connection, e);
      throw e;
    }
  }

  private static void close(Connection connection, Exception because) {
    try (connection) {
      return;
    } catch (SQLException e) {
      because.addSuppressed(e);
    }
  }

  /** The tables, each after those it refers to. */
  public List<ArchiveTable> all() {
    return queries.values().stream().map(TableQuery::table).toList();
  }

  /**
   * Gives the rows of a table one by one.
   *
   * @throws Refusal when a row cannot be read
   */
  public void rows(ArchiveTable table, ArchiveTable.RowTaker taker) {
    queries.get(table.name()).forEach(connection, taker);
  }

  /** Keys of the disciplines that any result, run or note is of, in their order. */
  public List<String> disciplines() {
    return Sql.list(
        connection,
        "SELECT key FROM discipline WHERE id IN (SELECT discipline FROM result UNION"
            + " SELECT discipline FROM run UNION SELECT discipline FROM note) ORDER BY key",
        row -> row.getString(1));
  }

  /** The name of each original's file, of the first reading made of it, by hash in order. */
  public Map<String, String> originals() {
    Map<String, String> names = new LinkedHashMap<>();
    Sql.forEach(
        connection,
        "SELECT sha256, name, min(id) FROM revision GROUP BY sha256 ORDER BY sha256",
        row -> names.put(row.getString(1), row.getString(2)));
    return names;
  }

  /** How many rows the tables have, or a little more or less: to tell how far a reader is. */
  public long rowsAbout() {
    return Sql.number(
        connection,
        "SELECT sum(n) FROM (SELECT count(*) AS n FROM result UNION ALL SELECT count(*) FROM entry"
            + " UNION ALL SELECT count(*) FROM run UNION ALL SELECT count(*) FROM note"
            + " UNION ALL SELECT count(*) FROM finding)");
  }

  @Override
  public void close() {
    try {
      connection.rollback();
      connection.close();
    } catch (SQLException e) {
      throw ArchiveFailure.of(e);
    }
  }
}
