package org.griplore.store.archive;

import java.sql.Connection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.griplore.store.vocabulary.Cell;
import org.griplore.store.vocabulary.Finding;

/** The tables an addition writes to, with the words and names they share. */
final class RowWriters implements AutoCloseable {
  final int revision;
  final SharedWords disciplines;
  final SharedWords units;
  final SharedWords rules;
  final SharedWords sheets;
  final BatchInsert tests;
  final BatchInsert reports;
  final BatchInsert entries;
  final BatchInsert results;
  final BatchInsert steps;
  final BatchInsert runs;
  final BatchInsert reductions;
  final BatchInsert reducedSets;
  final BatchInsert reducedRuns;
  final BatchInsert notes;
  final BatchInsert lineage;
  private final BatchInsert models;
  private final BatchInsert findings;
  private final Connection connection;
  private final Map<String, Integer> modelNumbers = new HashMap<>();
  private long findingCount;

  RowWriters(Connection connection, int revision) {
    this.connection = connection;
    this.revision = revision;
    this.disciplines = new SharedWords(connection, "discipline", "key");
    this.units = new SharedWords(connection, "unit", "symbol");
    this.rules = new SharedWords(connection, "rule", "words");
    this.sheets = new SharedWords(connection, "sheet", "name");
    this.models = new BatchInsert(connection, "model", "name");
    this.tests = new BatchInsert(connection, "test", "key");
    this.reports =
        new BatchInsert(
                connection,
                "report",
                "test",
                "revision",
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
                "air_c",
                "details_at")
            .after(tests);
    this.entries =
        new BatchInsert(connection, "entry", "report", "model", "size", "name_at")
            .after(reports, models);
    this.results =
        new BatchInsert(
                connection,
                "result",
                "entry",
                "discipline",
                "value",
                "unit",
                "spread",
                "runs",
                "place",
                "value_at",
                "spread_at",
                "runs_at",
                "place_at",
                "rule")
            .after(entries);
    this.steps =
        new BatchInsert(
                connection,
                "result_step",
                "result",
                "rule",
                "before",
                "before_unit",
                "after",
                "after_unit",
                "label",
                "stands_at")
            .after(results);
    this.runs =
        new BatchInsert(
                connection,
                "run",
                "report",
                "discipline",
                "sequence",
                "model",
                "role",
                "run",
                "from_kmh",
                "to_kmh",
                "distance_m",
                "time_s",
                "level_db",
                "value",
                "unit",
                "surface_c",
                "air_c",
                "remark",
                "stands_at")
            .after(reports, models);
    this.reductions =
        new BatchInsert(
                connection,
                "reduction",
                "report",
                "discipline",
                "measure",
                "unit",
                "by_ratio",
                "better",
                "coast_by",
                "from_kmh",
                "to_kmh",
                "level",
                "level_words",
                "trace",
                "slope",
                "trend_p",
                "step_after",
                "step_size",
                "step_p",
                "cycles",
                "limits")
            .after(reports);
    this.reducedSets =
        new BatchInsert(
                connection,
                "reduced_set",
                "reduction",
                "sequence",
                "model",
                "role",
                "cycle",
                "mean",
                "deviation",
                "counted",
                "reference",
                "reference_words",
                "effect",
                "effect_error",
                "valid",
                "standing",
                "reasons")
            .after(reductions, models);
    this.reducedRuns =
        new BatchInsert(
                connection, "reduced_run", "reduced_set", "run", "figure", "left_out", "flag")
            .after(reducedSets, runs);
    this.notes =
        new BatchInsert(connection, "note", "report", "model", "discipline", "words", "stands_at")
            .after(reports, models);
    this.lineage =
        new BatchInsert(
                connection,
                "lineage",
                "revision",
                "model",
                "maker",
                "line",
                "generation",
                "launched",
                "season",
                "segment",
                "follows",
                "aliases",
                "stands_at")
            .after(models);
    this.findings =
        new BatchInsert(
            connection, "finding", "revision", "kind", "stands_at", "found", "expected", "remedy");
    Sql.list(
            connection,
            "SELECT name, id FROM model",
            row -> Map.entry(row.getString(1), row.getInt(2)))
        .forEach(model -> modelNumbers.put(model.getKey(), model.getValue()));
  }

  /** The number of the model with this name, which is added when it is new. */
  int model(String name) {
    return modelNumbers.computeIfAbsent(name, added -> (int) models.add(added));
  }

  String at(Cell cell) {
    return CellText.write(cell, sheets);
  }

  void finding(Finding finding) {
    findings.add(
        revision,
        finding.kind().name(),
        at(finding.cell()),
        finding.found(),
        finding.expected(),
        finding.remedy());
    findingCount++;
  }

  long findings() {
    return findingCount;
  }

  void read(String name, String means, ReadingOfName how) {
    int from = model(name);
    int to = model(means);
    if (from == to) {
      throw new IllegalArgumentException(name + " cannot be settled as itself");
    }
    flush();
    Sql.execute(
        connection,
        "INSERT OR REPLACE INTO reading_of_name (revision, name, means, how) VALUES (?, ?, ?, ?)",
        revision,
        from,
        to,
        how.name());
  }

  private List<BatchInsert> inOrder() {
    return List.of(
        models,
        tests,
        reports,
        entries,
        results,
        steps,
        runs,
        reductions,
        reducedSets,
        reducedRuns,
        notes,
        lineage,
        findings);
  }

  /** Sends all waiting rows, parents first. */
  void flush() {
    inOrder().forEach(BatchInsert::flush);
  }

  @Override
  public void close() {
    inOrder().forEach(BatchInsert::close);
  }
}
