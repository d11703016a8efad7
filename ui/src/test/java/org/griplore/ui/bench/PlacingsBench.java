package org.griplore.ui.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.griplore.ingest.Intake;
import org.griplore.ingest.ReadOptions;
import org.griplore.query.Questions;
import org.griplore.query.evidence.Evidence;
import org.griplore.query.evidence.Ranking;
import org.griplore.query.question.QueryContext;
import org.griplore.store.archive.Archive;
import org.griplore.store.vocabulary.DisciplineCatalogue;

/**
 * Ranks a million results within their tests and counts places one to three by model and
 * discipline, from evidence that is loaded, beside DuckDB's window query over the same rows in
 * memory; both must count the same. Then the whole answer for one model, and for all of one
 * discipline, as a page asks for them.
 */
public final class PlacingsBench {
  private static final int TIMES = 9;

  private PlacingsBench() {}

  /** Arguments: the number of rows (1,000,000 when not given). */
  public static void main(String[] arguments) throws IOException, SQLException {
    int rows = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 1_000_000;
    Path folder = Files.createTempDirectory("griplore-bench-");
    Path file = folder.resolve("long.csv");
    LongTableFile.write(file, rows, 2000, 1);
    try (Archive archive = Archive.openOrCreate(folder.resolve("archive"))) {
      new Intake(archive, DisciplineCatalogue.standard(), Clock.systemUTC())
          .add(List.of(file), ReadOptions.NONE, (name, done, total) -> {});
      long start = System.nanoTime();
      try (QueryContext queryContext = new QueryContext(archive, DisciplineCatalogue.standard())) {
        queryContext.evidence();
        System.out.printf("evidence loaded in %.0f ms%n", (System.nanoTime() - start) / 1e6);
        compare(queryContext, file);
        answers(queryContext);
      }
    }
    Folders.remove(folder);
  }

  private static void compare(QueryContext queryContext, Path file) throws SQLException {
    double[] ours = new double[TIMES];
    double[] peers = new double[TIMES];
    Map<String, Integer> counted = Map.of();
    Map<String, Integer> peer = Map.of();
    try (Connection duck = DriverManager.getConnection("jdbc:duckdb:");
        Statement statement = duck.createStatement()) {
      statement.execute(
          "CREATE TABLE r AS SELECT test, model, discipline,"
              + " CASE WHEN discipline = 'straight-aquaplaning' THEN -value ELSE value END AS value"
              + " FROM read_csv('"
              + file
              + "')");
      for (int time = 0; time < TIMES; time++) {
        Evidence fresh = new Evidence(queryContext.evidence().snapshot(), queryContext.catalogue());
        long start = System.nanoTime();
        counted = count(fresh);
        ours[time] = (System.nanoTime() - start) / 1e6;
        start = System.nanoTime();
        peer = duck(statement);
        peers[time] = (System.nanoTime() - start) / 1e6;
      }
    }
    if (!counted.equals(peer)) {
      throw new IllegalStateException("the two do not count the same");
    }
    System.out.printf(
        "rank within test and discipline, count first three: ours %.1f ms, DuckDB %.1f ms, ratio %.2f (medians of %d, the same counts)%n",
        median(ours), median(peers), median(ours) / median(peers), TIMES);
  }

  private static Map<String, Integer> count(Evidence evidence) {
    Map<String, Integer> counts = new HashMap<>();
    for (int discipline = 0; discipline < evidence.disciplines().size(); discipline++) {
      Ranking ranking = evidence.ranking(discipline);
      for (int model = 0; model < evidence.models().size(); model++) {
        int within = 0;
        for (int i = ranking.rowsOfModel().from(model); i < ranking.rowsOfModel().to(model); i++) {
          int row = ranking.rowsOfModel().rows()[i];
          within += ranking.place(row) > 0 && ranking.place(row) <= 3 ? 1 : 0;
        }
        if (within > 0) {
          counts.put(
              evidence.models().get(model).name() + "|" + evidence.disciplines().get(discipline),
              within);
        }
      }
    }
    return counts;
  }

  private static Map<String, Integer> duck(Statement statement) throws SQLException {
    Map<String, Integer> counts = new HashMap<>();
    try (ResultSet rows =
        statement.executeQuery(
            "SELECT model, discipline, count(*) FROM (SELECT model, discipline,"
                + " rank() OVER (PARTITION BY test, discipline ORDER BY value) AS place FROM r)"
                + " WHERE place <= 3 GROUP BY model, discipline")) {
      while (rows.next()) {
        counts.put(rows.getString(1) + "|" + rows.getString(2), rows.getInt(3));
      }
    }
    return counts;
  }

  private static void answers(QueryContext queryContext) {
    String model = queryContext.evidence().models().get(17).name();
    time(
        "placings of one model",
        queryContext,
        Map.of("model", List.of(model), "discipline", List.of("wet-braking")));
    time("placings of all models", queryContext, Map.of("discipline", List.of("wet-braking")));
  }

  private static void time(
      String what, QueryContext queryContext, Map<String, List<String>> options) {
    double[] times = new double[20];
    for (int time = 0; time < times.length; time++) {
      long start = System.nanoTime();
      Questions.ask(Questions.of("placings").orElseThrow(), queryContext, options);
      times[time] = (System.nanoTime() - start) / 1e6;
    }
    System.out.printf(
        "%s in one discipline: %.1f ms (median of %d)%n", what, median(times), times.length);
  }

  private static double median(double[] times) {
    double[] sorted = times.clone();
    Arrays.sort(sorted);
    return sorted[sorted.length / 2];
  }
}
