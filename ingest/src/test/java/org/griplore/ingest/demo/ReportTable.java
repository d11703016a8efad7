package org.griplore.ingest.demo;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.griplore.ingest.demo.Expectations.ExpectedReport;
import org.griplore.ingest.demo.Expectations.ExpectedResult;
import org.griplore.ingest.demo.Look.Figures;
import org.griplore.ingest.demo.Look.Overall;
import org.griplore.ingest.demo.Look.UnitPlace;
import org.griplore.store.scenario.DisciplineTruth;
import org.griplore.store.scenario.Scenario;
import org.griplore.store.scenario.SimulatedEntry;
import org.griplore.store.scenario.SimulatedReport;
import org.griplore.store.scenario.SimulatedResult;
import org.griplore.store.vocabulary.Scale;
import org.griplore.store.vocabulary.Unit;

/** Lays a simulated report out as a table in some look, and notes what a reader should find. */
final class ReportTable {
  private final Scenario scenario;
  private final SimulatedReport report;
  private final Look look;
  private final Remarks remarks;
  private final String file;
  private final Expectations expectations;

  ReportTable(
      Scenario scenario,
      SimulatedReport report,
      Look look,
      Remarks remarks,
      String file,
      Expectations expectations) {
    this.scenario = scenario;
    this.report = report;
    this.look = look;
    this.remarks = remarks;
    this.file = file;
    this.expectations = expectations;
  }

  /** Disciplines that this look can show. */
  List<String> shown() {
    boolean ratioOnly =
        look.figures() == Figures.PERCENT_OF_BEST || look.figures() == Figures.PERCENT_OF_REFERENCE;
    return report.disciplines().stream()
        .filter(d -> !ratioOnly || scenario.discipline(d).scale() == Scale.RATIO)
        .filter(d -> look.figures() != Figures.SCHOOL_MARKS || !d.equals("price"))
        .toList();
  }

  /** Notes that the file tells of this report. */
  void expectReport(String form) {
    String date = report.date().text();
    expectations.reports.add(
        new ExpectedReport(
            file, form, report, look.key(), look.monthOnly() ? date.substring(0, 7) : date));
  }

  /** The table of some disciplines. */
  Sheet sheet(String name, List<String> disciplines, boolean withOverall) {
    Lingo lingo = look.lingo();
    List<String> header = new ArrayList<>();
    List<String> units = new ArrayList<>();
    if (look.makerColumn()) {
      header.add(word("maker"));
      header.add(word("model"));
      units.add("");
    } else {
      header.add(word("tyre"));
    }
    units.add("");
    if (withOverall) {
      header.add(word("place"));
      units.add("");
    }
    for (String key : disciplines) {
      String unit = unitText(scenario.discipline(key));
      header.add(headed(key, unit));
      units.add(unit);
    }
    if (withOverall && look.overall() != Overall.PLACE_ONLY) {
      String unit = overallUnit();
      header.add(headed("overall", unit));
      units.add(unit);
    }
    if (look.remarks()) {
      header.add(word("remark"));
      units.add("");
    }
    List<SimulatedEntry> entries = new ArrayList<>(report.entries());
    if (look.byName()) {
      entries.sort(Comparator.comparing(e -> e.model().fullName()));
    }
    List<List<DemoCell>> rows = new ArrayList<>();
    entries.forEach(e -> rows.add(row(e, disciplines, withOverall)));
    return new Sheet(
        name,
        report.title(),
        new Details(report, look, lingo).lines(),
        header,
        look.unitPlace() == UnitPlace.OWN_ROW ? units : List.of(),
        rows,
        List.of());
  }

  private List<DemoCell> row(SimulatedEntry entry, List<String> disciplines, boolean withOverall) {
    String written = look.names().write(entry.model());
    List<DemoCell> row = new ArrayList<>();
    if (look.makerColumn()) {
      String maker = written.substring(0, entry.model().maker().length());
      row.add(DemoCell.words(maker));
      row.add(DemoCell.words(written.substring(maker.length() + 1)));
    } else {
      row.add(DemoCell.words(written));
    }
    if (withOverall) {
      int place = entry.results().get("overall").place();
      row.add(DemoCell.words(Integer.toString(place)));
    }
    int gap = 0;
    for (String key : disciplines) {
      SimulatedResult result = entry.results().get(key);
      Optional<DemoCell> cell =
          result == null
              ? Optional.empty()
              : cell(entry, scenario.discipline(key), result, written);
      String missing = look.gaps().get((gap + entry.results().size()) % look.gaps().size());
      row.add(cell.orElse(DemoCell.words(missing)));
      gap += cell.isPresent() ? 0 : 1;
    }
    if (withOverall) {
      overall(entry, written).ifPresent(row::add);
    }
    if (look.remarks()) {
      row.add(DemoCell.words(remarks.of(report.key(), entry.model().fullName())));
    }
    return row;
  }

  private Optional<DemoCell> cell(
      SimulatedEntry entry, DisciplineTruth d, SimulatedResult result, String written) {
    if (look.figures() == Figures.PLACES) {
      expect(written, entry, d.key(), Optional.empty(), "", Optional.of(result.place()));
      return Optional.of(DemoCell.words(Integer.toString(result.place())));
    }
    Optional<Printed> printed =
        switch (look.figures()) {
          case VALUES, PLACES -> Optional.of(Printed.value(d, result, unit(d)));
          case SCHOOL_MARKS -> Optional.of(Printed.mark(report, d, result));
          case PERCENT_OF_BEST -> Optional.of(Printed.percentOfBest(report, d, result));
          case PERCENT_OF_REFERENCE -> Printed.percentOf(reference(report), d, result);
        };
    printed.ifPresent(
        p ->
            expect(
                written,
                entry,
                d.key(),
                Optional.of(p.canonical()),
                p.unit().symbol(),
                Optional.empty()));
    String suffix = look.unitPlace() == UnitPlace.CELL ? " " + unitText(d) : "";
    return printed.map(p -> new DemoCell.Figure(p.figure(), suffix));
  }

  /** The tyre that stands for 100 per cent: the last of the field. */
  static SimulatedEntry reference(SimulatedReport report) {
    return report.entries().get(report.entries().size() - 1);
  }

  private Optional<DemoCell> overall(SimulatedEntry entry, String written) {
    SimulatedResult total = entry.results().get("overall");
    Optional<BigDecimal> figure =
        switch (look.overall()) {
          case POINTS -> Optional.of(decimal(total.value(), 2));
          case OF_100 -> Optional.of(decimal(10 * total.value(), 1));
          case SCHOOL_MARK -> Optional.of(decimal(1.2 + (9.5 - total.value()) * 0.9, 1));
          case PLACE_ONLY -> Optional.empty();
        };
    String unit = figure.isEmpty() ? "" : overallSymbol().symbol();
    expect(written, entry, "overall", figure, unit, Optional.of(total.place()));
    return figure.map(DemoCell::figure);
  }

  private static BigDecimal decimal(double value, int digits) {
    return BigDecimal.valueOf(value).setScale(digits, RoundingMode.HALF_UP);
  }

  private void expect(
      String written,
      SimulatedEntry entry,
      String discipline,
      Optional<BigDecimal> value,
      String unit,
      Optional<Integer> place) {
    expectations.results.add(
        new ExpectedResult(
            file, report.key(), written, entry.model().fullName(), discipline, value, unit, place));
  }

  private String word(String key) {
    return HeaderWords.of(key, look.lingo(), look.variant());
  }

  private String headed(String key, String unit) {
    String word = word(key);
    if (unit.isEmpty()) {
      return word;
    }
    return switch (look.unitPlace()) {
      case BRACKETS -> word + " [" + unit + "]";
      case PARENTHESES -> word + " (" + unit + ")";
      case OWN_ROW, CELL -> word;
    };
  }

  private Unit unit(DisciplineTruth d) {
    Unit own = d.key().equals("price") && look.lingo() == Lingo.SV ? Unit.KRONA : d.unit();
    return look.units().getOrDefault(d.key(), own);
  }

  private String unitText(DisciplineTruth d) {
    return switch (look.figures()) {
      case VALUES -> UnitWords.of(unit(d), look.lingo());
      case SCHOOL_MARKS -> UnitWords.of(Unit.SCHOOL_MARK, look.lingo());
      case PERCENT_OF_BEST -> UnitWords.of(Unit.PERCENT_OF_BEST, look.lingo());
      case PERCENT_OF_REFERENCE -> UnitWords.of(Unit.PERCENT_OF_REFERENCE, look.lingo());
      case PLACES -> "";
    };
  }

  private Unit overallSymbol() {
    return switch (look.overall()) {
      case POINTS, PLACE_ONLY -> Unit.POINTS_10;
      case OF_100 -> Unit.POINTS_100;
      case SCHOOL_MARK -> Unit.SCHOOL_MARK;
    };
  }

  private String overallUnit() {
    return UnitWords.of(overallSymbol(), look.lingo());
  }

  /** The day of the report. */
  static LocalDate day(SimulatedReport report) {
    return report.date().firstDay();
  }
}
