package org.griplore.ingest.demo;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.griplore.ingest.demo.Look.Figures;
import org.griplore.ingest.demo.Sheet.Detail;
import org.griplore.store.scenario.SimulatedReport;

/** The lines above a table that say what was tested where. */
final class Details {
  private final SimulatedReport report;
  private final Look look;
  private final Lingo lingo;

  Details(SimulatedReport report, Look look, Lingo lingo) {
    this.report = report;
    this.look = look;
    this.lingo = lingo;
  }

  List<Detail> lines() {
    List<Detail> lines = new ArrayList<>();
    if (look.key()) {
      add(lines, lingo.test, report.key());
    }
    if (look.monthOnly()) {
      Locale locale = Locale.forLanguageTag(report.language());
      String month =
          DateTimeFormatter.ofPattern("MMMM yyyy", locale).format(ReportTable.day(report));
      add(lines, lingo.date, month);
    } else {
      lines.add(new Detail(lingo.date, new DemoCell.Day(ReportTable.day(report))));
    }
    if (!report.publication().isEmpty()) {
      add(lines, lingo.source, report.publication());
    }
    add(lines, lingo.sourceKind, lingo.word(report.kind()));
    add(lines, lingo.size, report.size());
    add(lines, lingo.season, lingo.word(report.season()));
    add(lines, lingo.vehicle, vehicle() + ", " + lingo.kilograms(report.vehicle().massKg()));
    add(lines, lingo.venue, report.venue());
    add(lines, lingo.air, degrees(report.airC()));
    add(lines, lingo.surface, degrees(report.surfaceC()));
    if (look.figures() == Figures.PERCENT_OF_REFERENCE) {
      String reference = ReportTable.reference(report).model().fullName();
      add(lines, lingo == Lingo.DE ? "Referenz" : "Reference", reference);
    }
    return lines;
  }

  /** The vehicle in the report's language; described in English where there are no other words. */
  private String vehicle() {
    return lingo == Lingo.DE ? report.vehicle().german() : report.vehicle().description();
  }

  private String degrees(double celsius) {
    String number = String.format(Locale.ROOT, "%.1f", celsius);
    return (lingo == Lingo.EN ? number : number.replace('.', ',')) + " \u00b0C";
  }

  private static void add(List<Detail> lines, String name, String value) {
    lines.add(new Detail(name, DemoCell.words(value)));
  }
}
