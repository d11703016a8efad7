package org.griplore.store.archive.reading;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.griplore.store.archive.ReductionRecord;
import org.griplore.store.archive.database.CellColumns;
import org.griplore.store.archive.database.PhraseColumns;
import org.griplore.store.archive.database.Sql;
import org.griplore.store.vocabulary.Direction;
import org.griplore.store.vocabulary.LoggedRun;
import org.griplore.store.vocabulary.ReducedSet;
import org.griplore.store.vocabulary.Reduction;
import org.griplore.store.vocabulary.Unit;

/** Reads how the runs of a test were reduced. */
public final class ReductionReader {
  private final Connection connection;
  private final CellColumns cells;

  private ReductionReader(Connection connection) {
    this.connection = connection;
    this.cells = CellColumns.of(connection);
  }

  /** Of a test's current reports, in the order they were read. */
  public static List<ReductionRecord> ofTest(Connection connection, int test) {
    ReductionReader reader = new ReductionReader(connection);
    return Sql.list(
        connection,
        "SELECT x.*, r.file, d.key, u.symbol FROM reduction x"
            + " JOIN report p ON p.id = x.report_id"
            + " JOIN revision r ON r.id = p.revision_id AND r.superseded_by_id IS NULL"
            + " JOIN discipline d ON d.id = x.discipline_id JOIN unit u ON u.id = x.unit_id"
            + " WHERE p.test_id = ? ORDER BY x.id",
        row ->
            new ReductionRecord(
                row.getInt("report_id"), row.getString("file"), reader.reduction(row)),
        test);
  }

  private Reduction reduction(ResultSet row) throws SQLException {
    Account account = account("reduction", row.getInt("id"));
    return new Reduction(
        row.getString("key"),
        account.one("measure"),
        Unit.ofSymbol(row.getString("symbol")).orElseThrow(),
        row.getInt("by_ratio") == 1,
        Direction.ofWord(row.getString("better")).orElseThrow(),
        row.getString("coast_by"),
        Sql.real(row, "from_kmh"),
        Sql.real(row, "to_kmh"),
        new Reduction.Trace(
            account.one("trace"),
            Sql.real(row, "slope"),
            Sql.real(row, "trend_p"),
            Sql.integer(row, "step_after"),
            Sql.real(row, "step_size"),
            Sql.real(row, "step_p")),
        Sql.real(row, "level"),
        account.one("level"),
        account.all("cycle"),
        account.all("limit"),
        sets(row.getInt("id")));
  }

  private List<ReducedSet> sets(int reduction) {
    return Sql.list(
        connection,
        "SELECT x.*, coalesce(s.name, m.name) AS model_name FROM reduced_set x"
            + " JOIN model m ON m.id = x.model_id LEFT JOIN model s ON s.id = m.same_as_id"
            + " WHERE x.reduction_id = ? ORDER BY x.id",
        row -> {
          Account account = account("reduced_set", row.getInt("id"));
          return new ReducedSet(
              row.getInt("sequence"),
              row.getString("model_name"),
              LoggedRun.Role.ofWord(row.getString("role")).orElseThrow(),
              Sql.integer(row, "cycle"),
              Sql.real(row, "mean"),
              Sql.real(row, "deviation"),
              row.getInt("counted"),
              Sql.real(row, "reference"),
              account.one("reference"),
              Sql.real(row, "effect"),
              Sql.real(row, "effect_error"),
              row.getInt("valid") == 1,
              account.one("standing"),
              account.all("reason"),
              runs(row.getInt("id")));
        },
        reduction);
  }

  private List<ReducedSet.ReducedRun> runs(int set) {
    return Sql.list(
        connection,
        RunReader.SELECT
            + ", y.figure, y.left_out_code, y.left_out_parameters, y.flag_code, y.flag_parameters"
            + " FROM reduced_run y JOIN run x ON x.id = y.run_id"
            + RunReader.WORDS
            + " WHERE y.reduced_set_id = ? ORDER BY y.id",
        row ->
            new ReducedSet.ReducedRun(
                RunReader.run(row, cells),
                Sql.real(row, "figure"),
                PhraseColumns.words(row, "left_out_code", "left_out_parameters"),
                PhraseColumns.words(row, "flag_code", "flag_parameters")),
        set);
  }

  /** What must be said of a reduction or a set, by part. */
  private record Account(Map<String, List<String>> words) {
    String one(String part) {
      List<String> all = all(part);
      return all.isEmpty() ? "" : all.get(0);
    }

    List<String> all(String part) {
      return words.getOrDefault(part, List.of());
    }
  }

  private Account account(String of, int id) {
    Map<String, List<String>> words = new HashMap<>();
    Sql.forEach(
        connection,
        "SELECT part, code, parameters FROM %1$s_account WHERE %1$s_id = ? ORDER BY part, position"
            .formatted(of),
        row ->
            words
                .computeIfAbsent(row.getString("part"), part -> new ArrayList<>())
                .add(PhraseColumns.words(row, "code", "parameters")),
        id);
    return new Account(words);
  }
}
