package org.griplore.query;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.griplore.query.evidence.Evidence;
import org.griplore.store.archive.EntryColumns;
import org.griplore.store.archive.ModelRecord;
import org.griplore.store.archive.ReportRecord;
import org.griplore.store.archive.ResultColumns;
import org.griplore.store.archive.Snapshot;
import org.griplore.store.archive.TestRecord;
import org.griplore.store.scenario.Scenario;
import org.griplore.store.scenario.ScenarioModel;
import org.griplore.store.scenario.SimulatedEntry;
import org.griplore.store.scenario.SimulatedReport;
import org.griplore.store.scenario.SimulatedResult;
import org.griplore.store.vocabulary.Details;
import org.griplore.store.vocabulary.DisciplineCatalogue;
import org.griplore.store.vocabulary.TestDate;

/** Evidence simulated from the invented scenario, without files or a database. */
public final class SimulatedEvidence {
  private static final DisciplineCatalogue CATALOGUE = DisciplineCatalogue.standard();

  private SimulatedEvidence() {}

  /** One archive's evidence: the scenario's truth, drawn with a seed. */
  public static Evidence of(Scenario scenario, long seed) {
    List<SimulatedReport> reports = scenario.simulate(seed);
    List<ScenarioModel> all = scenario.models();
    Map<String, Integer> position = new HashMap<>();
    all.forEach(model -> position.put(model.fullName(), position.size()));
    List<ModelRecord> models = new ArrayList<>();
    for (ScenarioModel model : all) {
      Integer follows =
          model
              .follows()
              .map(
                  before ->
                      position.getOrDefault(before, position.get(model.maker() + " " + before)))
              .map(i -> i + 1)
              .orElse(null);
      models.add(
          new ModelRecord(
              models.size() + 1,
              model.fullName(),
              model.maker(),
              model.line(),
              String.valueOf(model.generation()),
              new TestDate(String.valueOf(model.launched())),
              model.season(),
              model.segment(),
              follows,
              List.of()));
    }
    List<String> disciplines = CATALOGUE.all().stream().map(d -> d.key()).sorted().toList();
    List<String> units =
        CATALOGUE.all().stream().map(d -> d.unit().symbol()).distinct().sorted().toList();
    Columns columns = new Columns(disciplines, units);
    List<TestRecord> tests = new ArrayList<>();
    List<ReportRecord> told = new ArrayList<>();
    for (SimulatedReport report : reports) {
      int test = tests.size();
      Details details =
          new Details(
              report.title(),
              report.date(),
              report.kind(),
              report.publication(),
              report.size(),
              report.season(),
              null,
              null,
              report.venue(),
              report.surfaceC(),
              report.airC(),
              Map.of());
      tests.add(new TestRecord(test + 1, report.key(), details, List.of(test)));
      told.add(new ReportRecord(test + 1, test, 1, "simulated", details));
      for (SimulatedEntry entry : report.entries()) {
        columns.add(test, position.get(entry.model().fullName()), entry);
      }
    }
    return new Evidence(
        new Snapshot(
            seed, models, tests, told, disciplines, units, columns.entries(), columns.results()),
        CATALOGUE);
  }

  /** Entries and results as they gather. */
  private static final class Columns {
    final List<String> disciplines;
    final List<String> units;
    final List<int[]> entries = new ArrayList<>();
    final List<double[]> results = new ArrayList<>();

    Columns(List<String> disciplines, List<String> units) {
      this.disciplines = disciplines;
      this.units = units;
    }

    void add(int test, int model, SimulatedEntry entry) {
      int number = entries.size();
      entries.add(new int[] {test, model});
      for (Map.Entry<String, SimulatedResult> result : entry.results().entrySet()) {
        int discipline = disciplines.indexOf(result.getKey());
        if (discipline >= 0 && !result.getKey().equals("overall")) {
          String unit = CATALOGUE.get(result.getKey()).unit().symbol();
          SimulatedResult of = result.getValue();
          results.add(
              new double[] {
                number,
                discipline,
                units.indexOf(unit),
                of.value(),
                of.spread().orElse(Double.NaN),
                of.runs(),
                of.place()
              });
        }
      }
    }

    EntryColumns entries() {
      int n = entries.size();
      int[] test = new int[n];
      int[] model = new int[n];
      for (int i = 0; i < n; i++) {
        test[i] = entries.get(i)[0];
        model[i] = entries.get(i)[1];
      }
      return new EntryColumns(test, model, test.clone(), new String[n]);
    }

    ResultColumns results() {
      int n = results.size();
      ResultColumns columns =
          new ResultColumns(
              new long[n],
              new int[n],
              new short[n],
              new short[n],
              new double[n],
              new double[n],
              new int[n],
              new int[n]);
      for (int i = 0; i < n; i++) {
        double[] row = results.get(i);
        columns.id()[i] = i + 1;
        columns.entry()[i] = (int) row[0];
        columns.discipline()[i] = (short) row[1];
        columns.unit()[i] = (short) row[2];
        columns.value()[i] = row[3];
        columns.spread()[i] = row[4];
        columns.runs()[i] = (int) row[5];
        columns.place()[i] = (int) row[6];
      }
      return columns;
    }
  }
}
