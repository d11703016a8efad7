package org.griplore.store.archive;

import java.sql.Connection;
import java.util.Arrays;
import java.util.List;
import org.griplore.store.vocabulary.SourceKind;

/** What is given away of tests: reports, entries, results, runs and notes. */
final class TestTables {
  private static final String FROM_REPORT =
      " JOIN report p ON p.id = x.report JOIN test t ON t.id = p.test"
          + " JOIN revision r ON r.id = p.revision";

  private final CellText.SheetNames sheets;
  private final DenseNumbers readings;
  private final DenseNumbers reports;
  private final DenseNumbers entries;
  private final DenseNumbers results;

  TestTables(Connection connection) {
    sheets = SheetList.of(connection);
    readings = DenseNumbers.ofTable(connection, "revision");
    reports = DenseNumbers.ofTable(connection, "report");
    entries = DenseNumbers.ofTable(connection, "entry");
    results = DenseNumbers.ofTable(connection, "result");
  }

  List<TableQuery> all() {
    return List.of(tests(), reports(), details(), entries(), results(), steps(), runs(), notes());
  }

  private TableQuery tests() {
    return new TableQuery(
            "tests",
            "Tests",
            "A test, known by its key across sources. Its details are those of the first report"
                + " that counts and states them.")
        .text("test", "Its key")
        .always()
        .text("title", "Its title")
        .text("date", "When it was tested: a day, a month or a year")
        .text("size", "The size tested")
        .key("test")
        .from(
            "SELECT t.key, "
                + told("title")
                + ", "
                + told("date")
                + ", "
                + told("size")
                + " FROM test t ORDER BY t.key");
  }

  private static String told(String detail) {
    return "(SELECT p.%1$s FROM report p JOIN revision r ON r.id = p.revision WHERE p.test = t.id"
            .formatted(detail)
        + " AND r.superseded_by IS NULL AND p.%1$s IS NOT NULL ORDER BY p.id LIMIT 1)"
            .formatted(detail);
  }

  private TableQuery reports() {
    return new TableQuery("reports", "Reports", "A test as one reading of one source tells it.")
        .numbered("report", reports::of, "Its number, in the order of adding")
        .always()
        .text("test", "The test's key")
        .always()
        .to("tests", "test")
        .numbered("reading", readings::of, "The reading")
        .always()
        .to("readings", "reading")
        .flag("current", "Whether it counts: its reading is not superseded")
        .text("title", "The title it gives the test")
        .text("publication", "Who published it")
        .text("source_kind", "Who stands behind it")
        .oneOf(Arrays.stream(SourceKind.values()).map(SourceKind::key).toList())
        .text("date", "When it was tested: a day, a month or a year")
        .text("size", "The size tested")
        .text("season", "The season class tested")
        .oneOf(SourceTables.SEASONS)
        .text("vehicle", "The vehicle")
        .real("vehicle_mass_kg", "Its mass, kg")
        .text("venue", "The proving ground")
        .real("surface_c", "Temperature of the surface, degrees Celsius")
        .real("air_c", "Temperature of the air, degrees Celsius")
        .key("report")
        .from(
            "SELECT p.id, t.key, p.revision, r.superseded_by IS NULL, p.title, p.publication, "
                + SourceTables.word("p.source_kind")
                + ", p.date, p.size, "
                + SourceTables.word("p.season")
                + ", p.vehicle, p.vehicle_mass_kg, p.venue, p.surface_c, p.air_c FROM report p"
                + " JOIN test t ON t.id = p.test JOIN revision r ON r.id = p.revision"
                + " ORDER BY p.id");
  }

  private TableQuery details() {
    return new TableQuery(
            "report_details", "Where details stand", "Where a report states a detail of its test.")
        .numbered("report", reports::of, "The report")
        .always()
        .to("reports", "report")
        .detail("detail", sheets, "Which detail")
        .key("report", "detail")
        .from("SELECT id, details_at FROM report ORDER BY id");
  }

  private TableQuery entries() {
    return new TableQuery("entries", "Entries", "A model in a report.")
        .numbered("entry", entries::of, "Its number, in the order of adding")
        .always()
        .numbered("report", reports::of, "The report")
        .always()
        .to("reports", "report")
        .text("named", "The model by the name it was first taken for")
        .always()
        .to("models", "model")
        .text("model", "The model that it counts for")
        .always()
        .to("models", "model")
        .text("size", "Its size, where it has one of its own")
        .cell("name_", sheets, "the name")
        .key("entry")
        .from(
            "SELECT e.id, e.report, m.name, coalesce(s.name, m.name), e.size, e.name_at"
                + " FROM entry e JOIN model m ON m.id = e.model"
                + " LEFT JOIN model s ON s.id = m.same_as ORDER BY e.id");
  }

  private TableQuery results() {
    return new TableQuery(
            "results",
            "Results",
            "A figure of an entry in a discipline, with the cells it was read from and the rule"
                + " applied.")
        .numbered("result", results::of, "Its number, in the order of adding")
        .always()
        .numbered("entry", entries::of, "The entry")
        .always()
        .to("entries", "entry")
        .text("test", "The test's key")
        .always()
        .to("tests", "test")
        .text("model", "The model that it counts for")
        .always()
        .to("models", "model")
        .flag("current", "Whether it counts: its reading is not superseded")
        .text("discipline", "What was measured or rated")
        .always()
        .to("disciplines", "discipline")
        .real("value", "The value, in the unit")
        .text("unit", "The unit")
        .real("spread", "Standard deviation of the runs, in the unit")
        .integer("runs", "Number of runs")
        .integer("place", "Place as published, 1 for the best")
        .text("rule", "The rule that was applied to what was found")
        .cell("value_", sheets, "the value")
        .cell("spread_", sheets, "the spread")
        .cell("runs_", sheets, "the number of runs")
        .cell("place_", sheets, "the place")
        .key("result")
        .from(
            "SELECT f.id, f.entry, t.key, coalesce(s.name, m.name), r.superseded_by IS NULL, d.key,"
                + " f.value, u.symbol, f.spread, f.runs, f.place, w.words, f.value_at, f.spread_at,"
                + " f.runs_at, f.place_at FROM result f JOIN entry x ON x.id = f.entry"
                + FROM_REPORT
                + " JOIN model m ON m.id = x.model LEFT JOIN model s ON s.id = m.same_as"
                + " JOIN discipline d ON d.id = f.discipline LEFT JOIN unit u ON u.id = f.unit"
                + " LEFT JOIN rule w ON w.id = f.rule ORDER BY f.id");
  }

  private TableQuery steps() {
    return new TableQuery(
            "result_steps",
            "Steps to results",
            "One step from what was found to a result, where they are more than reading its"
                + " number.")
        .numbered("result", results::of, "The result")
        .always()
        .to("results", "result")
        .integer("position", "Place of the step, from 1")
        .always()
        .text("rule", "What was done")
        .always()
        .real("before", "The figure before; empty where a text or many figures went in")
        .text("before_unit", "Its unit")
        .real("after", "The figure after")
        .always()
        .text("after_unit", "Its unit")
        .text("label", "How sure the rule is, or what else must be said with it")
        .cell("", sheets, "what went in")
        .key("result", "position")
        .from(
            "SELECT x.result, row_number() OVER (PARTITION BY x.result ORDER BY x.id), x.rule,"
                + " x.before, b.symbol, x.after, a.symbol, x.label, x.stands_at FROM result_step x"
                + " LEFT JOIN unit b ON b.id = x.before_unit JOIN unit a ON a.id = x.after_unit"
                + " ORDER BY x.result, x.id");
  }

  private TableQuery runs() {
    return new TableQuery("runs", "Logged runs", "One run of a run log as it stands there.")
        .numbered("report", reports::of, "The report")
        .always()
        .to("reports", "report")
        .integer("position", "Place of the run within the report, from 1")
        .always()
        .text("test", "The test's key")
        .always()
        .to("tests", "test")
        .flag("current", "Whether it counts: its reading is not superseded")
        .text("discipline", "What was measured")
        .always()
        .to("disciplines", "discipline")
        .integer("sequence", "Place of the set in the order of the day, from 1")
        .always()
        .text("model", "The model that it counts for")
        .always()
        .to("models", "model")
        .text("role", "What the set is there for")
        .always()
        .oneOf(List.of("reference", "candidate"))
        .integer("run", "Number of the run within its set")
        .real("from_kmh", "Speed at the start of the measured window, km/h")
        .real("to_kmh", "Speed at its end, km/h")
        .real("distance_m", "Distance covered in the window, m")
        .real("time_s", "Time, s")
        .real("level_db", "Sound level, dB(A)")
        .real("value", "Any other measured figure, in the unit")
        .text("unit", "Unit of the value")
        .real("surface_c", "Temperature of the surface, degrees Celsius")
        .real("air_c", "Temperature of the air, degrees Celsius")
        .text("remark", "The log's remark")
        .cell("", sheets, "the run's tyre")
        .key("report", "position")
        .from(
            "SELECT x.report, row_number() OVER (PARTITION BY x.report ORDER BY x.id), t.key,"
                + " r.superseded_by IS NULL, d.key, x.sequence, coalesce(s.name, m.name),"
                + " lower(x.role), x.run, x.from_kmh, x.to_kmh, x.distance_m, x.time_s, x.level_db,"
                + " x.value, u.symbol, x.surface_c, x.air_c, x.remark, x.stands_at FROM run x"
                + FROM_REPORT
                + " JOIN model m ON m.id = x.model LEFT JOIN model s ON s.id = m.same_as"
                + " JOIN discipline d ON d.id = x.discipline LEFT JOIN unit u ON u.id = x.unit"
                + " ORDER BY x.id");
  }

  private TableQuery notes() {
    return new TableQuery("notes", "Notes", "What a report says in words.")
        .numbered("report", reports::of, "The report")
        .always()
        .to("reports", "report")
        .integer("position", "Place of the note within the report, from 1")
        .always()
        .text("test", "The test's key")
        .always()
        .to("tests", "test")
        .flag("current", "Whether it counts: its reading is not superseded")
        .text("model", "The model it is about; empty when about the test as a whole")
        .to("models", "model")
        .text("discipline", "The discipline it is about")
        .to("disciplines", "discipline")
        .text("words", "The note")
        .always()
        .cell("", sheets, "it")
        .key("report", "position")
        .from(
            "SELECT x.report, row_number() OVER (PARTITION BY x.report ORDER BY x.id), t.key,"
                + " r.superseded_by IS NULL, coalesce(s.name, m.name), d.key, x.words, x.stands_at"
                + " FROM note x"
                + FROM_REPORT
                + " LEFT JOIN model m ON m.id = x.model LEFT JOIN model s ON s.id = m.same_as"
                + " LEFT JOIN discipline d ON d.id = x.discipline ORDER BY x.id");
  }
}
