package org.griplore.store.archive;

import java.sql.Connection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.griplore.store.archive.database.Sql;
import org.griplore.store.vocabulary.Details;
import org.griplore.store.vocabulary.TestDate;

/** The tests that current sources other than one tell, looked up by their keys and figures. */
public final class ToldTests {
  private static final String CURRENT =
      " FROM test t JOIN report p ON p.test_id = t.id JOIN revision v ON v.id = p.revision_id"
          + " JOIN source o ON o.id = v.source_id"
          + " WHERE v.superseded_by_id IS NULL AND o.origin <> ?";

  private static final int MOST_HOLDING = 50;

  private final Archive archive;
  private final Connection connection;
  private final String origin;
  private final Set<String> keys;

  ToldTests(Archive archive, Connection connection, String origin) {
    this.archive = archive;
    this.connection = connection;
    this.origin = origin;
    this.keys =
        new HashSet<>(
            Sql.list(
                connection, "SELECT DISTINCT t.key" + CURRENT, row -> row.getString(1), origin));
  }

  static List<String> ofRevision(Connection connection, int revision) {
    return Sql.list(
        connection,
        "SELECT t.key FROM report p JOIN test t ON t.id = p.test_id WHERE p.revision_id = ?"
            + " ORDER BY p.id",
        row -> row.getString(1),
        revision);
  }

  /** Whether there is a test of this key. */
  public boolean has(String key) {
    return keys.contains(key);
  }

  /** What each source says of a test as a whole: title, date, size and vehicle alone. */
  public List<Details> details(String key) {
    return Sql.list(
        connection,
        "SELECT p.title, p.date, p.size, p.vehicle" + CURRENT + " AND t.key = ? ORDER BY p.id",
        row ->
            new Details(
                row.getString(1),
                row.getString(2) == null ? null : new TestDate(row.getString(2)),
                null,
                null,
                row.getString(3),
                null,
                row.getString(4),
                null,
                null,
                null,
                null,
                java.util.Map.of()),
        origin,
        key);
  }

  /** The figures told of a test. */
  public FigureFeed figures(String key) {
    return FigureFeed.ofTest(archive, key, origin);
  }

  /** Keys of tests in which a model has a figure; at most 50. */
  public List<String> holding(String model, String discipline, double value) {
    return Sql.list(
        connection,
        "SELECT DISTINCT t.key FROM model m JOIN entry e ON e.model_id = m.id"
            + " JOIN result x ON x.entry_id = e.id AND x.value = ?"
            + " JOIN discipline d ON d.id = x.discipline_id AND d.key = ?"
            + " JOIN report p ON p.id = e.report_id JOIN test t ON t.id = p.test_id"
            + " JOIN revision v ON v.id = p.revision_id JOIN source o ON o.id = v.source_id"
            + " WHERE m.name = ? AND v.superseded_by_id IS NULL AND o.origin <> ? LIMIT "
            + MOST_HOLDING,
        row -> row.getString(1),
        value,
        discipline,
        model,
        origin);
  }
}
