package org.griplore.store.archive.names;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.griplore.store.archive.ModelRecord;
import org.griplore.store.archive.database.Sql;

/**
 * What follows from sources and decisions together and is kept beside them, so that one query gives
 * it: the details of tests, and the descent of models. Names are {@link Meanings}' part.
 */
public final class Settled {
  private static final List<String> DETAILS =
      List.of(
          "title",
          "publication",
          "source_kind",
          "date",
          "size",
          "season",
          "vehicle",
          "vehicle_mass_kg",
          "venue",
          "surface_c",
          "air_c");

  private static final List<String> DESCENT =
      List.of("maker", "line", "generation", "launched", "season", "segment", "follows_id");

  private Settled() {}

  /**
   * Settles what a new revision, and its taking another's place, may have changed.
   *
   * @param renamed whether names changed their meaning
   */
  public static void after(
      Connection connection, int revision, Optional<Integer> superseded, boolean renamed) {
    String revisions = "(%d, %d)".formatted(revision, superseded.orElse(revision));
    tests(connection, "id IN (SELECT test_id FROM report WHERE revision_id IN " + revisions + ")");
    if (renamed || speaksOfDescent(connection, revisions)) {
      models(connection);
    }
  }

  private static boolean speaksOfDescent(Connection connection, String revisions) {
    return Sql.first(
            connection,
            "SELECT 1 FROM lineage WHERE revision_id IN "
                + revisions
                + " UNION ALL SELECT 1 FROM decision WHERE topic <> 'meaning'",
            row -> row.getInt(1))
        .isPresent();
  }

  /** Settles the tests with these numbers and all models. */
  public static void afterUndo(Connection connection, List<Integer> tests) {
    String numbers = tests.stream().map(String::valueOf).collect(Collectors.joining(", "));
    tests(connection, "id IN (" + numbers + ")");
    models(connection);
  }

  /** Settles everything. */
  public static void all(Connection connection) {
    tests(connection, "true");
    models(connection);
  }

  /** Of each detail the first that a current report states, of the tests of a condition. */
  private static void tests(Connection connection, String which) {
    String told =
        DETAILS.stream()
            .map(
                detail ->
                    ("%1$s = (SELECT p.%1$s FROM report p JOIN revision r ON r.id = p.revision_id"
                            + " WHERE p.test_id = test.id AND r.superseded_by_id IS NULL"
                            + " AND p.%1$s IS NOT NULL ORDER BY p.id LIMIT 1)")
                        .formatted(detail))
            .collect(Collectors.joining(", "));
    Sql.execute(connection, "UPDATE test SET " + told + " WHERE " + which);
  }

  /** The descent of models; a name that means another model has none of its own. */
  public static void models(Connection connection) {
    Map<Integer, List<Object>> told = new HashMap<>();
    ModelReader.all(connection).forEach(model -> told.put(model.id(), descent(model)));
    Map<Integer, List<Object>> kept = new HashMap<>();
    Sql.forEach(connection, "SELECT * FROM model", row -> kept.put(row.getInt("id"), descent(row)));
    List<Object> none = Arrays.asList(new Object[DESCENT.size()]);
    String update =
        DESCENT.stream()
            .map(column -> column + " = ?")
            .collect(Collectors.joining(", ", "UPDATE model SET ", " WHERE id = ?"));
    kept.forEach(
        (id, before) -> {
          List<Object> now = told.getOrDefault(id, none);
          if (!now.equals(before)) {
            Sql.execute(connection, update, Stream.concat(now.stream(), Stream.of(id)).toArray());
          }
        });
  }

  private static List<Object> descent(ModelRecord model) {
    return Arrays.asList(
        model.maker(),
        model.line(),
        model.generation(),
        model.launched() == null ? null : model.launched().text(),
        model.season() == null ? null : model.season().key(),
        model.segment(),
        model.follows());
  }

  private static List<Object> descent(ResultSet row) throws SQLException {
    Object[] values = new Object[DESCENT.size()];
    for (int i = 0; i < values.length - 1; i++) {
      values[i] = row.getString(DESCENT.get(i));
    }
    values[values.length - 1] = Sql.integer(row, "follows_id");
    return Arrays.asList(values);
  }
}
