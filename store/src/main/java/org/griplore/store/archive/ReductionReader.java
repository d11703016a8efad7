package org.griplore.store.archive;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import org.griplore.store.vocabulary.Direction;
import org.griplore.store.vocabulary.LoggedRun;
import org.griplore.store.vocabulary.ReducedSet;
import org.griplore.store.vocabulary.Reduction;
import org.griplore.store.vocabulary.Unit;

/** Reads how the runs of a test were reduced. */
final class ReductionReader {
  private final Connection connection;
  private final CellText.SheetNames sheets;

  private ReductionReader(Connection connection) {
    this.connection = connection;
    this.sheets = SheetList.of(connection);
  }

  /** Of a test's current reports, in the order they were read. */
  static List<ReductionRecord> ofTest(Connection connection, int test) {
    ReductionReader reader = new ReductionReader(connection);
    return Sql.list(
        connection,
        "SELECT x.*, r.name AS file, d.key, u.symbol FROM reduction x"
            + " JOIN report p ON p.id = x.report"
            + " JOIN revision r ON r.id = p.revision AND r.superseded_by IS NULL"
            + " JOIN discipline d ON d.id = x.discipline JOIN unit u ON u.id = x.unit"
            + " WHERE p.test = ? ORDER BY x.id",
        row ->
            new ReductionRecord(row.getInt("report"), row.getString("file"), reader.reduction(row)),
        test);
  }

  private Reduction reduction(ResultSet row) throws SQLException {
    return new Reduction(
        row.getString("key"),
        row.getString("measure"),
        Unit.ofSymbol(row.getString("symbol")).orElseThrow(),
        row.getInt("by_ratio") == 1,
        Direction.valueOf(row.getString("better")),
        row.getString("coast_by"),
        Sql.real(row, "from_kmh"),
        Sql.real(row, "to_kmh"),
        new Reduction.Trace(
            row.getString("trace"),
            Sql.real(row, "slope"),
            Sql.real(row, "trend_p"),
            Sql.integer(row, "step_after"),
            Sql.real(row, "step_size"),
            Sql.real(row, "step_p")),
        Sql.real(row, "level"),
        row.getString("level_words"),
        lines(row.getString("cycles")),
        lines(row.getString("limits")),
        sets(row.getInt("id")));
  }

  private List<ReducedSet> sets(int reduction) {
    return Sql.list(
        connection,
        "SELECT x.*, coalesce(s.name, m.name) AS model_name FROM reduced_set x"
            + " JOIN model m ON m.id = x.model LEFT JOIN model s ON s.id = m.same_as"
            + " WHERE x.reduction = ? ORDER BY x.id",
        row ->
            new ReducedSet(
                row.getInt("sequence"),
                row.getString("model_name"),
                LoggedRun.Role.valueOf(row.getString("role")),
                Sql.integer(row, "cycle"),
                Sql.real(row, "mean"),
                Sql.real(row, "deviation"),
                row.getInt("counted"),
                Sql.real(row, "reference"),
                row.getString("reference_words"),
                Sql.real(row, "effect"),
                Sql.real(row, "effect_error"),
                row.getInt("valid") == 1,
                row.getString("standing"),
                lines(row.getString("reasons")),
                runs(row.getInt("id"))),
        reduction);
  }

  private List<ReducedSet.ReducedRun> runs(int set) {
    return Sql.list(
        connection,
        RunReader.SELECT
            + ", y.figure, y.left_out, y.flag FROM reduced_run y JOIN run x ON x.id = y.run"
            + RunReader.WORDS
            + " WHERE y.reduced_set = ? ORDER BY y.id",
        row ->
            new ReducedSet.ReducedRun(
                RunReader.run(row, sheets),
                Sql.real(row, "figure"),
                row.getString("left_out"),
                row.getString("flag")),
        set);
  }

  private static List<String> lines(String text) {
    return text.isEmpty() ? List.of() : text.lines().toList();
  }
}
