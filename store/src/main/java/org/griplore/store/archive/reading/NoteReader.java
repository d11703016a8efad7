package org.griplore.store.archive.reading;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.griplore.store.archive.ModelRecord;
import org.griplore.store.archive.NoteFeed;
import org.griplore.store.archive.NoteRecord;
import org.griplore.store.archive.database.ArchiveFailure;
import org.griplore.store.archive.database.CellColumns;
import org.griplore.store.archive.database.NumberedWords;
import org.griplore.store.archive.database.Sql;
import org.griplore.store.archive.names.ModelReader;
import org.griplore.store.vocabulary.SourceKind;
import org.griplore.store.vocabulary.TestDate;

/**
 * Reads the notes of current reports that may have changed since an earlier moment. What a report
 * does not state of its test is taken from the test's first report that does.
 */
public final class NoteReader {
  private static final String CURRENT_NOTES =
      " FROM note n JOIN report p ON p.id = n.report_id"
          + " JOIN revision r ON r.id = p.revision_id AND r.superseded_by_id IS NULL"
          + " LEFT JOIN model m ON m.id = n.model_id WHERE ";

  private final Connection connection;
  private final boolean all;
  private final String tests;
  private final String models;

  /** A reader of the notes that may have changed since an earlier moment. */
  public NoteReader(Connection connection, NoteFeed.Moment since) {
    this.connection = connection;
    this.all = since.revision() == 0;
    String newer =
        "SELECT id FROM revision WHERE id > %1$d OR superseded_by_id > %1$d"
            .formatted(since.revision());
    String renamed = "m.renamed_at > " + since.stamp();
    this.tests =
        "SELECT test_id FROM report WHERE revision_id IN ("
            + newer
            + ") UNION SELECT p.test_id FROM model m JOIN entry e ON e.model_id = m.id"
            + " JOIN report p ON p.id = e.report_id WHERE "
            + renamed;
    this.models =
        "SELECT coalesce(m.same_as_id, m.id) FROM lineage l JOIN model m ON m.id = l.model_id"
            + " WHERE l.revision_id IN ("
            + newer
            + ") UNION SELECT coalesce(m.same_as_id, m.id) FROM model m WHERE "
            + renamed;
  }

  /** What is said of a test as a whole. */
  private static final class Told {
    String key;
    String title;
    String date;
    String size;
    String source;
  }

  /** A report's own words and, where it is silent, its test's. */
  private record Report(Told test, String title, String date, String size, String source) {}

  public long count() {
    return Sql.number(connection, "SELECT count(*)" + CURRENT_NOTES + changed());
  }

  /** The condition on a note. Notes by their models are only looked for where a name did change. */
  private String changed() {
    if (all) {
      return "true";
    }
    String ofTests = "p.test_id IN (" + tests + ")";
    boolean renamed = Sql.first(connection, models, row -> row.getInt(1)).isPresent();
    return renamed
        ? "(" + ofTests + " OR coalesce(m.same_as_id, m.id) IN (" + models + "))"
        : ofTests;
  }

  public List<String> tests() {
    return Sql.list(
        connection,
        "SELECT key FROM test WHERE id IN (" + tests + ") ORDER BY id",
        row -> row.getString(1));
  }

  public void forEach(NoteFeed.Taker taker) {
    Map<Integer, Report> reports = reports();
    Map<Integer, List<String>> tested = tested();
    Map<Integer, List<String>> names = modelNames();
    Map<Integer, String> disciplines =
        NumberedWords.read(connection, "SELECT id, key FROM discipline");
    CellColumns cells = CellColumns.of(connection);
    try (PreparedStatement statement =
        connection.prepareStatement(
            "SELECT n.id, n.report_id, p.test_id, r.file,"
                + " coalesce(m.same_as_id, m.id), n.discipline_id, n.text, n.sheet_id, n.row,"
                + " n.\"column\", n.cell_text, (SELECT CASE WHEN count(*) = 1 THEN max(e.size) END"
                + " FROM entry e WHERE e.report_id = n.report_id AND e.model_id = n.model_id)"
                + CURRENT_NOTES
                + changed()
                + " ORDER BY n.id")) {
      try (ResultSet row = statement.executeQuery()) {
        while (row.next()) {
          Report report = reports.get(row.getInt(2));
          int model = row.getInt(5);
          String date = either(report.date(), report.test().date);
          String source = either(report.source(), report.test().source);
          taker.take(
              new NoteRecord(
                  row.getLong(1),
                  row.getInt(2),
                  row.getString(4),
                  report.test().key,
                  either(report.title(), report.test().title),
                  date == null ? null : new TestDate(date),
                  either(row.getString(12), either(report.size(), report.test().size)),
                  source == null ? null : SourceKind.ofKey(source).orElseThrow(),
                  model == 0 ? null : names.get(model).get(0),
                  disciplines.get(row.getInt(6)),
                  row.getString(7),
                  cells.read(row, 8)),
              model == 0
                  ? tested.getOrDefault(row.getInt(3), List.of())
                  : names.getOrDefault(model, List.of()));
        }
      }
    } catch (SQLException e) {
      throw ArchiveFailure.of(e);
    }
  }

  private static String either(String own, String other) {
    return own == null ? other : own;
  }

  /** Reports of all tests that have one of the notes wanted. */
  private Map<Integer, Report> reports() {
    Map<Integer, Told> tests = new HashMap<>();
    Map<Integer, Report> reports = new HashMap<>();
    Sql.list(
        connection,
        "SELECT p.id, p.test_id, t.key, p.title, p.date, p.size, p.source_kind FROM report p"
            + " JOIN test t ON t.id = p.test_id"
            + " JOIN revision r ON r.id = p.revision_id AND r.superseded_by_id IS NULL"
            + " WHERE p.test_id IN (SELECT p.test_id"
            + CURRENT_NOTES
            + changed()
            + ") ORDER BY p.id",
        row -> {
          Told test = tests.computeIfAbsent(row.getInt(2), id -> new Told());
          test.key = row.getString(3);
          test.title = either(test.title, row.getString(4));
          test.date = either(test.date, row.getString(5));
          test.size = either(test.size, row.getString(6));
          test.source = either(test.source, row.getString(7));
          return reports.put(
              row.getInt(1),
              new Report(
                  test, row.getString(4), row.getString(5), row.getString(6), row.getString(7)));
        });
    return reports;
  }

  /** Names of the models in those tests that have a note about the test as a whole. */
  private Map<Integer, List<String>> tested() {
    Map<Integer, List<String>> tested = new HashMap<>();
    Sql.list(
        connection,
        "SELECT DISTINCT q.test_id, coalesce(s.name, k.name) FROM entry e"
            + " JOIN report q ON q.id = e.report_id"
            + " JOIN revision v ON v.id = q.revision_id AND v.superseded_by_id IS NULL"
            + " JOIN model k ON k.id = e.model_id LEFT JOIN model s ON s.id = k.same_as_id"
            + " WHERE q.test_id IN (SELECT p.test_id"
            + CURRENT_NOTES
            + "n.model_id IS NULL AND "
            + changed()
            + ") ORDER BY 1, 2",
        row ->
            tested.computeIfAbsent(row.getInt(1), test -> new ArrayList<>()).add(row.getString(2)));
    return tested;
  }

  /** A model's name, then its aliases. */
  private Map<Integer, List<String>> modelNames() {
    Map<Integer, List<String>> names = new HashMap<>();
    for (ModelRecord model : ModelReader.all(connection)) {
      List<String> all = new ArrayList<>();
      all.add(model.name());
      all.addAll(model.aliases());
      names.put(model.id(), all);
    }
    return names;
  }
}
