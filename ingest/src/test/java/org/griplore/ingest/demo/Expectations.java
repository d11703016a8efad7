package org.griplore.ingest.demo;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.griplore.store.scenario.SimulatedReport;

/** What a reader should find in the files: collected while they are written. */
final class Expectations {
  /** One test in one file. The date is as exact as the file tells it. */
  record ExpectedReport(
      String file, String form, SimulatedReport report, boolean key, String date) {}

  /**
   * One result in one file.
   *
   * @param written the tyre as the file writes it
   * @param value in the canonical unit where the printed unit converts; else as printed
   * @param unit the symbol that goes with the value
   */
  record ExpectedResult(
      String file,
      String test,
      String written,
      String model,
      String discipline,
      Optional<BigDecimal> value,
      String unit,
      Optional<Integer> place) {}

  final List<ExpectedReport> reports = new ArrayList<>();
  final List<ExpectedResult> results = new ArrayList<>();

  /** The reports as CSV. */
  String reportsCsv() {
    StringBuilder b =
        new StringBuilder(
            "file,form,test,key_given,title,date,source_kind,publication,size,season,vehicle,"
                + "vehicle_mass_kg,venue,field\n");
    for (ExpectedReport e : reports) {
      SimulatedReport r = e.report();
      b.append(
          Delimited.line(
              ",",
              List.of(
                  e.file(),
                  e.form(),
                  r.key(),
                  e.key() ? "yes" : "no",
                  r.title(),
                  e.date(),
                  r.kind().key(),
                  r.publication(),
                  r.size(),
                  r.season().key(),
                  r.vehicle().description(),
                  Integer.toString(r.vehicle().massKg()),
                  r.venue(),
                  Integer.toString(r.entries().size()))));
      b.append('\n');
    }
    return b.toString();
  }

  /** The results as CSV. */
  String resultsCsv() {
    StringBuilder b = new StringBuilder("file,test,written,model,discipline,value,unit,place\n");
    for (ExpectedResult e : results) {
      b.append(
          Delimited.line(
              ",",
              List.of(
                  e.file(),
                  e.test(),
                  e.written(),
                  e.model(),
                  e.discipline(),
                  e.value().map(v -> v.stripTrailingZeros().toPlainString()).orElse(""),
                  e.unit(),
                  e.place().map(p -> Integer.toString(p)).orElse(""))));
      b.append('\n');
    }
    return b.toString();
  }
}
