package org.griplore.store.archive.reading;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import org.griplore.store.archive.RunRecord;
import org.griplore.store.archive.database.CellColumns;
import org.griplore.store.archive.database.Sql;
import org.griplore.store.vocabulary.LoggedRun;
import org.griplore.store.vocabulary.Unit;

/** Reads the logged runs of a test or of a revision. */
public final class RunReader {
  /** The columns of a run {@code x}, with the words of {@link #WORDS}. */
  public static final String SELECT =
      "SELECT x.*, coalesce(s.name, m.name) AS model_name, d.key, u.symbol";

  /** The words that a run refers to. */
  public static final String WORDS =
      " JOIN model m ON m.id = x.model_id LEFT JOIN model s ON s.id = m.same_as_id"
          + " JOIN discipline d ON d.id = x.discipline_id LEFT JOIN unit u ON u.id = x.unit_id";

  private RunReader() {}

  public static List<RunRecord> ofTest(Connection connection, int test) {
    return read(connection, "r.superseded_by_id IS NULL AND p.test_id = ?", test);
  }

  public static List<RunRecord> ofRevision(Connection connection, int revision) {
    return read(connection, "p.revision_id = ?", revision);
  }

  private static List<RunRecord> read(Connection connection, String which, int number) {
    CellColumns cells = CellColumns.of(connection);
    return Sql.list(
        connection,
        SELECT
            + ", r.file FROM run x JOIN report p ON p.id = x.report_id"
            + " JOIN revision r ON r.id = p.revision_id"
            + WORDS
            + " WHERE "
            + which
            + " ORDER BY x.id",
        row -> new RunRecord(row.getInt("report_id"), row.getString("file"), run(row, cells)),
        number);
  }

  /** The run of a row of {@link #SELECT}. */
  public static LoggedRun run(ResultSet row, CellColumns cells) throws SQLException {
    return new LoggedRun(
        row.getString("key"),
        row.getInt("sequence"),
        row.getString("model_name"),
        LoggedRun.Role.ofWord(row.getString("role")).orElseThrow(),
        Sql.integer(row, "run"),
        Sql.real(row, "from_kmh"),
        Sql.real(row, "to_kmh"),
        Sql.real(row, "distance_m"),
        Sql.real(row, "time_s"),
        Sql.real(row, "level_db"),
        Sql.real(row, "value"),
        row.getString("symbol") == null
            ? null
            : Unit.ofSymbol(row.getString("symbol")).orElseThrow(),
        Sql.real(row, "surface_c"),
        Sql.real(row, "air_c"),
        row.getString("remark"),
        cells.read(row));
  }
}
