package org.griplore.ingest.demo;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.griplore.ingest.demo.Expectations.ExpectedReport;
import org.griplore.ingest.demo.Expectations.ExpectedResult;
import org.griplore.store.scenario.DisciplineTruth;
import org.griplore.store.scenario.Scenario;
import org.griplore.store.scenario.SimulatedEntry;
import org.griplore.store.scenario.SimulatedReport;
import org.griplore.store.scenario.SimulatedResult;

/** The long table: a row a result, several tests in one file, with spread, runs, place and note. */
final class LongTable {
  private static final List<String> HEADER =
      List.of(
          "test",
          "date",
          "source",
          "source_kind",
          "title",
          "size",
          "season",
          "vehicle",
          "vehicle_mass_kg",
          "venue",
          "model",
          "discipline",
          "value",
          "unit",
          "spread",
          "runs",
          "place",
          "note");

  private LongTable() {}

  static byte[] write(
      Scenario scenario,
      List<SimulatedReport> reports,
      Remarks remarks,
      String file,
      Expectations expectations) {
    List<String> lines = new ArrayList<>();
    lines.add(Delimited.line(",", HEADER));
    for (SimulatedReport r : reports) {
      expectations.reports.add(new ExpectedReport(file, "long table", r, true, r.date().text()));
      for (SimulatedEntry entry : r.entries()) {
        entry
            .results()
            .forEach(
                (key, result) -> {
                  Optional<DisciplineTruth> d =
                      key.equals("overall")
                          ? Optional.empty()
                          : Optional.of(scenario.discipline(key));
                  lines.add(line(r, entry, key, d, result, remarks));
                  expectations.results.add(
                      new ExpectedResult(
                          file,
                          r.key(),
                          entry.model().fullName(),
                          entry.model().fullName(),
                          key,
                          Optional.of(
                              decimal(result.value(), d.map(DisciplineTruth::digits).orElse(2))),
                          d.map(t -> t.unit().symbol()).orElse("points"),
                          Optional.of(result.place())));
                });
      }
    }
    return Delimited.COMMA.bytes(lines);
  }

  private static String line(
      SimulatedReport r,
      SimulatedEntry entry,
      String key,
      Optional<DisciplineTruth> d,
      SimulatedResult result,
      Remarks remarks) {
    int digits = d.map(DisciplineTruth::digits).orElse(2);
    String spread =
        result.spread().isPresent()
            ? decimal(result.spread().getAsDouble(), Math.max(0, digits) + 1).toPlainString()
            : "";
    return Delimited.line(
        ",",
        List.of(
            r.key(),
            r.date().text(),
            r.publication(),
            r.kind().key(),
            r.title(),
            r.size(),
            r.season().key(),
            r.vehicle().description(),
            Integer.toString(r.vehicle().massKg()),
            r.venue(),
            entry.model().fullName(),
            key,
            decimal(result.value(), digits).toPlainString(),
            d.map(t -> t.unit().symbol()).orElse("points"),
            spread,
            result.runs() == 0 ? "" : Integer.toString(result.runs()),
            Integer.toString(result.place()),
            key.equals("overall") ? remarks.of(r.key(), entry.model().fullName()) : ""));
  }

  private static BigDecimal decimal(double value, int digits) {
    return BigDecimal.valueOf(value).setScale(digits, RoundingMode.HALF_UP);
  }
}
