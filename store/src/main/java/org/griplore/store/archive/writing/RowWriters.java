package org.griplore.store.archive.writing;

import java.sql.Connection;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.griplore.store.archive.NameTaken;
import org.griplore.store.archive.database.BatchInsert;
import org.griplore.store.archive.database.SharedWords;
import org.griplore.store.archive.database.Sql;
import org.griplore.store.vocabulary.Finding;
import org.griplore.store.vocabulary.Phrase;
import org.griplore.store.wording.PhraseBook;

/** The tables an addition writes to, with the words and names they share. */
public final class RowWriters implements AutoCloseable {
  public final int revision;
  public final SharedWords disciplines;
  public final SharedWords units;
  public final Rules rules;
  public final Circumstances circumstances;
  public final SharedWords sheets;
  public final BatchInsert tests;
  public final BatchInsert reports;
  public final BatchInsert details;
  public final BatchInsert weights;
  public final BatchInsert entries;
  public final BatchInsert prices;
  public final BatchInsert results;
  public final BatchInsert steps;
  public final BatchInsert runs;
  public final BatchInsert reductions;
  public final BatchInsert reductionAccounts;
  public final BatchInsert reducedSets;
  public final BatchInsert setAccounts;
  public final BatchInsert reducedRuns;
  public final BatchInsert notes;
  public final BatchInsert lineage;
  public final BatchInsert aliases;
  public final BatchInsert drafts;
  private final BatchInsert models;
  private final BatchInsert findings;
  private final Connection connection;
  private final Map<String, Integer> modelNumbers = new HashMap<>();
  private final List<BatchInsert> inOrder = new ArrayList<>();
  private long findingCount;

  public RowWriters(Connection connection, int revision) {
    this.connection = connection;
    this.revision = revision;
    this.disciplines = new SharedWords(connection, "discipline", "key");
    this.units = new SharedWords(connection, "unit", "symbol");
    this.rules = new Rules(connection);
    this.circumstances = new Circumstances(connection);
    this.sheets = new SharedWords(connection, "sheet", "name");
    this.models = numbered("model", "name");
    this.tests = numbered("test", "key");
    this.reports =
        numbered(
                "report",
                "test_id",
                "revision_id",
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
                "air_c")
            .after(tests);
    this.details = unnumbered("report_detail", "report_id", "detail", ":cell").after(reports);
    this.weights =
        unnumbered("report_weight", "report_id", "discipline_id", "weight", ":cell").after(reports);
    this.entries =
        numbered(
                "entry",
                "report_id",
                "model_id",
                "size",
                "state",
                "tread_mm",
                "mileage_km",
                "age_years",
                "ev",
                "extra_load",
                "run_flat",
                "seal",
                ":cell")
            .after(reports, models);
    this.prices =
        numbered("price", "entry_id", "amount", "currency", "day", "per", "size", "shop", ":cell")
            .after(entries);
    this.results =
        numbered(
                "result",
                "entry_id",
                "discipline_id",
                "circumstance_id",
                "repeat",
                "sequence",
                "value",
                "unit_id",
                "spread",
                "runs",
                "place",
                "rule_id",
                "value:cell",
                "spread:cell",
                "runs:cell",
                "place:cell")
            .after(entries);
    this.steps =
        numbered(
                "result_step",
                "result_id",
                ":phrase",
                "before",
                "before_unit_id",
                "after",
                "after_unit_id",
                "label:phrase",
                ":cell")
            .after(results);
    this.runs =
        numbered(
                "run",
                "report_id",
                "discipline_id",
                "sequence",
                "model_id",
                "role",
                "run",
                "from_kmh",
                "to_kmh",
                "distance_m",
                "time_s",
                "level_db",
                "value",
                "unit_id",
                "surface_c",
                "air_c",
                "remark",
                ":cell")
            .after(reports, models);
    this.reductions =
        numbered(
                "reduction",
                "report_id",
                "discipline_id",
                "unit_id",
                "by_ratio",
                "better",
                "coast_by",
                "from_kmh",
                "to_kmh",
                "level",
                "slope",
                "trend_p",
                "step_after",
                "step_size",
                "step_p")
            .after(reports);
    this.reductionAccounts =
        unnumbered("reduction_account", "reduction_id", "part", "position", ":phrase")
            .after(reductions);
    this.reducedSets =
        numbered(
                "reduced_set",
                "reduction_id",
                "sequence",
                "model_id",
                "role",
                "cycle",
                "mean",
                "deviation",
                "counted",
                "reference",
                "effect",
                "effect_error",
                "valid")
            .after(reductions, models);
    this.setAccounts =
        unnumbered("reduced_set_account", "reduced_set_id", "part", "position", ":phrase")
            .after(reducedSets);
    this.reducedRuns =
        numbered(
                "reduced_run",
                "reduced_set_id",
                "run_id",
                "figure",
                "left_out:phrase",
                "flag:phrase")
            .after(reducedSets, runs);
    this.notes =
        numbered("note", "report_id", "model_id", "discipline_id", "text", ":cell")
            .after(reports, models);
    this.lineage =
        numbered(
                "lineage",
                "revision_id",
                "model_id",
                "maker",
                "line",
                "generation",
                "launched",
                "season",
                "segment",
                "follows_id",
                ":cell")
            .after(models);
    this.aliases = unnumbered("lineage_alias", "lineage_id", "position", "name").after(lineage);
    this.drafts =
        numbered(
            "draft",
            "revision_id",
            "sheet_id",
            "first_row",
            "last_row",
            "first_column",
            "last_column",
            "readings");
    this.findings =
        numbered(
            "finding", "revision_id", "kind", "found", "expected:phrase", "remedy:phrase", ":cell");
    Sql.list(
            connection,
            "SELECT name, id FROM model",
            row -> Map.entry(row.getString(1), row.getInt(2)))
        .forEach(model -> modelNumbers.put(model.getKey(), model.getValue()));
  }

  private BatchInsert numbered(String table, String... columns) {
    return keep(BatchInsert.numbered(connection, sheets, table, columns));
  }

  private BatchInsert unnumbered(String table, String... columns) {
    return keep(BatchInsert.into(connection, sheets, table, columns));
  }

  private BatchInsert keep(BatchInsert insert) {
    inOrder.add(insert);
    return insert;
  }

  /** The number of the model with this name, which is added when it is new. */
  public int model(String name) {
    return modelNumbers.computeIfAbsent(name, added -> (int) models.add(added));
  }

  /** The words as a phrase; null stays null. */
  public static Phrase phrase(String words) {
    return words == null ? null : PhraseBook.phrase(words);
  }

  public void finding(Finding finding) {
    findings.add(
        revision,
        finding.kind().word(),
        finding.found(),
        phrase(finding.expected()),
        phrase(finding.remedy()),
        finding.cell());
    findingCount++;
  }

  public long findings() {
    return findingCount;
  }

  public void take(String name, String means, NameTaken how) {
    int from = model(name);
    int to = model(means);
    if (from == to) {
      throw new IllegalArgumentException(name + " cannot be settled as itself");
    }
    flush();
    Sql.execute(
        connection,
        "INSERT OR REPLACE INTO name_taken (revision_id, model_id, means_id, how)"
            + " VALUES (?, ?, ?, ?)",
        revision,
        from,
        to,
        how.word());
  }

  /** Sends all waiting rows, parents first. */
  public void flush() {
    inOrder.forEach(BatchInsert::flush);
  }

  @Override
  public void close() {
    inOrder.forEach(BatchInsert::close);
  }
}
