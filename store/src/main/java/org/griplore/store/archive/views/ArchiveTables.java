package org.griplore.store.archive.views;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.griplore.store.archive.database.ArchiveFailure;
import org.griplore.store.archive.database.Sql;
import org.griplore.store.vocabulary.Refusal;

/**
 * The archive's views at one moment, as tables that can be given away: each row of {@code SELECT *
 * FROM} the view, in the order of its key. Not thread-safe.
 */
public final class ArchiveTables implements AutoCloseable {
  private final Connection connection;

  private ArchiveTables(Connection connection) {
    this.connection = connection;
  }

  /**
   * Reads them as they are now on a connection of its own, which it closes: additions made
   * meanwhile are not seen.
   */
  public static ArchiveTables on(Connection own) {
    try {
      own.setAutoCommit(false);
      return new ArchiveTables(own);
    } catch (SQLException e) {
      Refusal refusal = ArchiveFailure.of(e);
      try (own) {
        throw refusal;
      } catch (SQLException closing) {
        refusal.addSuppressed(closing);
        throw refusal;
      }
    }
  }

  /** The tables, each after those it refers to. */
  public List<ArchiveTable> all() {
    return ViewSheet.tables();
  }

  /**
   * Gives the rows of a table one by one: a {@link Double} for a number with a point, else a text;
   * null, too, for an empty text, which a table cannot tell from none.
   *
   * @throws Refusal when a row cannot be read
   */
  public void rows(ArchiveTable table, ArchiveTable.RowTaker taker) {
    new WideRows(table).forEach(connection, taker);
  }

  /** Keys of the disciplines that any result, run or note is of, in their order. */
  public List<String> disciplines() {
    return Sql.list(
        connection,
        "SELECT key FROM discipline WHERE id IN (SELECT discipline_id FROM result UNION"
            + " SELECT discipline_id FROM run UNION SELECT discipline_id FROM note UNION"
            + " SELECT discipline_id FROM report_weight UNION"
            + " SELECT discipline_id FROM report_omission) ORDER BY key",
        row -> row.getString(1));
  }

  /** The name of each original's file, of the first revision made of it, by hash in order. */
  public Map<String, String> originals() {
    Map<String, String> names = new LinkedHashMap<>();
    Sql.forEach(
        connection,
        "SELECT sha256, file, min(id) FROM revision GROUP BY sha256 ORDER BY sha256",
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
