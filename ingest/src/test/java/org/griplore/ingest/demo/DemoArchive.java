package org.griplore.ingest.demo;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.griplore.ingest.demo.Look.UnitPlace;
import org.griplore.store.scenario.Scenario;
import org.griplore.store.scenario.SimulatedReport;

/**
 * All files of the demo archive that a generator can make, by path, with what they should yield.
 */
final class DemoArchive {
  private final Scenario scenario = Scenario.stated();
  private final Remarks remarks = Remarks.read();
  private final Expectations expectations = new Expectations();
  private final List<RunExpectation> runs = new ArrayList<>();
  private final Map<String, byte[]> files = new TreeMap<>();
  private final Map<String, SimulatedReport> reports;

  /** Disciplines of a report that stand in a run log and therefore not in its table. */
  private final Map<String, List<String>> logged = new LinkedHashMap<>();

  private DemoArchive() {
    reports =
        scenario.simulate(Scenario.STATED).stream()
            .collect(
                Collectors.toMap(
                    SimulatedReport::key, Function.identity(), (a, b) -> a, LinkedHashMap::new));
  }

  /** Renders everything. */
  static DemoArchive rendered() {
    DemoArchive archive = new DemoArchive();
    archive.files.put("lineage.csv", LineageTable.write(archive.scenario));
    new OwnFiles(archive).render();
    new PublishedFiles(archive).render();
    new MakerFiles(archive).render();
    return archive;
  }

  /** File contents by path below the archive's folder. */
  Map<String, byte[]> files() {
    return files;
  }

  Expectations expectations() {
    return expectations;
  }

  List<RunExpectation> runs() {
    return runs;
  }

  Remarks remarks() {
    return remarks;
  }

  /** The simulated reports by key, in order of date. */
  Map<String, SimulatedReport> reports() {
    return reports;
  }

  SimulatedReport report(String key) {
    SimulatedReport report = reports.get(key);
    if (report == null) {
      throw new IllegalArgumentException("no report " + key);
    }
    return report;
  }

  void put(String path, byte[] bytes) {
    if (files.put(path, bytes) != null) {
      throw new IllegalStateException("written twice: " + path);
    }
  }

  /** A run log; its discipline is then left out of the report's table. */
  void log(String path, String key, String discipline, double drift) {
    List<String> lines = new RunLog(scenario, report(key), discipline, drift).lines();
    runs.addAll(RunExpectation.of(path, lines));
    logged.computeIfAbsent(key, k -> new ArrayList<>()).add(discipline);
    put(path, Delimited.COMMA.bytes(lines));
  }

  /** The one table of a report in a look. */
  Sheet sheet(String path, String key, Look look, String form) {
    ReportTable table = table(path, key, look);
    table.expectReport(form);
    List<String> shown = new ArrayList<>(table.shown());
    shown.removeAll(logged.getOrDefault(key, List.of()));
    return table.sheet("Results", shown, true);
  }

  void delimited(String path, String key, Delimited dress, Look look, String... below) {
    Sheet sheet = below(sheet(path, key, look, form(look, "delimited text")), below);
    put(path, dress.write(sheet, look.lingo()));
  }

  void page(String path, String key, Look look, boolean footnotes, String... below) {
    Sheet sheet = below(sheet(path, key, look, form(look, "saved page")), below);
    put(path, SavedPage.write(report(key), sheet, look.lingo(), footnotes));
  }

  void wideJson(String path, String key) {
    Look look = Look.in(Lingo.EN).gaps("");
    put(path, JsonForm.wide(report(key), sheet(path, key, look, "JSON, an object a tyre")));
  }

  void narrowJson(String path, String key) {
    int before = expectations.results.size();
    sheet(path, key, Look.in(Lingo.EN), "JSON, an object a result");
    List<Expectations.ExpectedResult> mine =
        expectations.results.subList(before, expectations.results.size());
    put(path, JsonForm.narrow(report(key), List.copyOf(mine)));
  }

  /** A workbook with the total on the first sheet and the disciplines on further ones. */
  void workbook(String path, String key, Look look, String looseName, String... loose) {
    ReportTable table = table(path, key, look);
    table.expectReport("workbook of several sheets");
    List<Sheet> sheets = new ArrayList<>();
    sheets.add(table.sheet(SheetGroup.overview(look.lingo()), List.of(), true));
    ReportTable further = table(path, key, look.remarks() ? look.withoutRemarks() : look);
    for (SheetGroup group : SheetGroup.values()) {
      List<String> shown = table.shown().stream().filter(group::holds).toList();
      if (!shown.isEmpty()) {
        Sheet one = further.sheet(group.name(look.lingo()), shown, false);
        sheets.add(group == SheetGroup.WET ? one : one.untitled());
      }
    }
    put(path, WorkbookForm.write(sheets, look.lingo(), looseName, List.of(loose)));
  }

  /** A workbook with everything on one sheet. */
  void singleSheet(String path, String key, Look look, String... below) {
    Sheet sheet = below(sheet(path, key, look, "workbook of one sheet"), below);
    put(path, WorkbookForm.write(List.of(sheet), look.lingo(), "", List.of()));
  }

  void longTable(String path, String... keys) {
    List<SimulatedReport> several = new ArrayList<>();
    for (String key : keys) {
      several.add(report(key));
    }
    put(path, LongTable.write(scenario, several, remarks, path, expectations));
  }

  private ReportTable table(String path, String key, Look look) {
    return new ReportTable(scenario, report(key), look, remarks, path, expectations);
  }

  private static String form(Look look, String form) {
    String unitRow = look.unitPlace() == UnitPlace.OWN_ROW ? ", units in a row" : "";
    return form
        + unitRow
        + switch (look.figures()) {
          case VALUES -> "";
          case SCHOOL_MARKS -> ", school marks";
          case PERCENT_OF_BEST -> ", per cent of best";
          case PERCENT_OF_REFERENCE -> ", per cent of a reference";
          case PLACES -> ", places only";
        };
  }

  private static Sheet below(Sheet s, String... lines) {
    return new Sheet(
        s.name(), s.title(), s.details(), s.header(), s.units(), s.rows(), List.of(lines));
  }
}
