package org.griplore.store.archive.reading;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.griplore.store.archive.EntryColumns;
import org.griplore.store.archive.ModelRecord;
import org.griplore.store.archive.ReportRecord;
import org.griplore.store.archive.Snapshot;
import org.griplore.store.archive.TestRecord;
import org.griplore.store.archive.database.ArchiveFailure;
import org.griplore.store.archive.database.CellColumns;
import org.griplore.store.archive.database.Sql;
import org.griplore.store.archive.names.ModelReader;
import org.griplore.store.archive.names.TestDecisions;
import org.griplore.store.archive.writing.Circumstances;
import org.griplore.store.vocabulary.Cell;
import org.griplore.store.vocabulary.Circumstance;
import org.griplore.store.vocabulary.Details;
import org.griplore.store.vocabulary.SourceKind;
import org.griplore.store.vocabulary.TestDate;

/** Loads the current contents in one read transaction, so that all parts belong together. */
public final class SnapshotLoader {
  private final Connection connection;
  private final Map<Integer, Integer> modelPositions = new HashMap<>();
  private final Map<Integer, Integer> reportPositions = new HashMap<>();

  private SnapshotLoader(Connection connection) {
    this.connection = connection;
  }

  public static Snapshot load(Connection connection) {
    synchronized (connection) {
      try {
        connection.setAutoCommit(false);
        try {
          return new SnapshotLoader(connection).load();
        } finally {
          connection.rollback();
          connection.setAutoCommit(true);
        }
      } catch (SQLException e) {
        throw ArchiveFailure.of(e);
      }
    }
  }

  private Snapshot load() throws SQLException {
    long stamp = Sql.number(connection, "SELECT stamp FROM archive_state");
    List<ModelRecord> models = ModelReader.all(connection);
    for (int i = 0; i < models.size(); i++) {
      modelPositions.put(models.get(i).id(), i);
    }
    Sql.list(
            connection,
            "SELECT id, same_as_id FROM model WHERE same_as_id IS NOT NULL",
            row -> Map.entry(row.getInt(1), row.getInt(2)))
        .forEach(same -> modelPositions.put(same.getKey(), modelPositions.get(same.getValue())));
    List<StoredReport> stored = storedReports();
    List<TestRecord> tests = tests(stored);
    Map<Integer, Integer> testPositions = new HashMap<>();
    for (int i = 0; i < tests.size(); i++) {
      testPositions.put(tests.get(i).id(), i);
    }
    List<ReportRecord> reports = new ArrayList<>();
    for (StoredReport report : stored) {
      reportPositions.put(report.id(), reports.size());
      reports.add(
          new ReportRecord(
              report.id(),
              testPositions.get(report.test()),
              report.revision(),
              report.file(),
              report.details()));
    }
    Words disciplines = new Words("SELECT id, key FROM discipline ORDER BY key");
    Words units = new Words("SELECT id, symbol FROM unit ORDER BY symbol");
    List<Circumstance> circumstances = new ArrayList<>();
    Map<Integer, Integer> circumstancePositions = new HashMap<>();
    Circumstances.all(connection)
        .forEach(
            (number, circumstance) -> {
              circumstancePositions.put(number, circumstances.size());
              circumstances.add(circumstance);
            });
    ColumnLoader columns =
        new ColumnLoader(connection, disciplines.positions, units.positions, circumstancePositions);
    EntryColumns entries = columns.entries(reports, reportPositions, modelPositions);
    return new Snapshot(
        stamp,
        models,
        tests,
        List.copyOf(reports),
        disciplines.words,
        units.words,
        List.copyOf(circumstances),
        TestDecisions.standing(connection),
        entries,
        columns.results());
  }

  /** Words in order, and their position by database number. */
  private final class Words {
    final List<String> words = new ArrayList<>();
    final Map<Integer, Integer> positions = new HashMap<>();

    Words(String sql) {
      Sql.list(connection, sql, row -> Map.entry(row.getInt(1), row.getString(2)))
          .forEach(
              word -> {
                positions.put(word.getKey(), words.size());
                words.add(word.getValue());
              });
    }
  }

  private record StoredReport(
      int id, int test, String key, int revision, String file, Details details) {}

  private List<StoredReport> storedReports() {
    Map<Integer, Map<String, Cell>> cells = detailCells();
    return Sql.list(
        connection,
        "SELECT p.*, t.key, r.file FROM report p JOIN test t ON t.id = p.test_id"
            + " JOIN revision r ON r.id = p.revision_id AND r.superseded_by_id IS NULL"
            + " ORDER BY p.id",
        row ->
            new StoredReport(
                row.getInt("id"),
                row.getInt("test_id"),
                row.getString("key"),
                row.getInt("revision_id"),
                row.getString("file"),
                details(row, cells.getOrDefault(row.getInt("id"), Map.of()))));
  }

  /** Where the details of all reports stand, by the report's number. */
  private Map<Integer, Map<String, Cell>> detailCells() {
    CellColumns cells = CellColumns.of(connection);
    Map<Integer, Map<String, Cell>> all = new HashMap<>();
    Sql.forEach(
        connection,
        "SELECT * FROM report_detail",
        row ->
            all.computeIfAbsent(row.getInt("report_id"), report -> new HashMap<>())
                .put(row.getString("detail"), cells.read(row)));
    return all;
  }

  private static Details details(ResultSet row, Map<String, Cell> cells) throws SQLException {
    String kind = row.getString("source_kind");
    String date = row.getString("date");
    return new Details(
        row.getString("title"),
        date == null ? null : new TestDate(date),
        kind == null ? null : SourceKind.ofKey(kind).orElseThrow(),
        row.getString("publication"),
        row.getString("size"),
        ModelReader.season(row.getString("season")),
        row.getString("vehicle"),
        Sql.real(row, "vehicle_mass_kg"),
        row.getString("venue"),
        Sql.real(row, "surface_c"),
        Sql.real(row, "air_c"),
        cells);
  }

  private static List<TestRecord> tests(List<StoredReport> stored) {
    Map<Integer, TestRecord> byId = new LinkedHashMap<>();
    for (int i = 0; i < stored.size(); i++) {
      StoredReport report = stored.get(i);
      TestRecord told =
          new TestRecord(report.test(), report.key(), report.details().withoutCells(), List.of(i));
      byId.merge(report.test(), told, SnapshotLoader::together);
    }
    List<TestRecord> tests = new ArrayList<>(byId.values());
    Comparator<TestDate> undatedLast = Comparator.nullsLast(Comparator.naturalOrder());
    tests.sort(
        Comparator.comparing((TestRecord test) -> test.details().date(), undatedLast)
            .thenComparing(TestRecord::key));
    return List.copyOf(tests);
  }

  private static TestRecord together(TestRecord first, TestRecord second) {
    List<Integer> reports = new ArrayList<>(first.reports());
    reports.addAll(second.reports());
    return new TestRecord(
        first.id(), first.key(), first.details().orElse(second.details()), List.copyOf(reports));
  }
}
