package org.griplore.ingest.demo;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import org.griplore.store.scenario.DisciplineTruth;
import org.griplore.store.scenario.SimulatedEntry;
import org.griplore.store.scenario.SimulatedReport;
import org.griplore.store.scenario.SimulatedResult;
import org.griplore.store.vocabulary.Scale;
import org.griplore.store.vocabulary.Unit;

/**
 * A result as a table prints it, and what it is worth.
 *
 * @param figure the figure printed
 * @param canonical the same in the canonical unit; equal to the figure where it does not convert
 * @param unit the unit of {@code canonical}
 */
record Printed(BigDecimal figure, BigDecimal canonical, Unit unit) {
  /** The rate at which Swedish prices of the scenario are told. */
  private static final double KRONOR_PER_EURO = 11;

  private static final RoundingMode HALF = RoundingMode.HALF_UP;

  /** In a unit of the tester's choice, with decimals that keep the tester's resolution. */
  static Printed value(DisciplineTruth d, SimulatedResult result, Unit in) {
    if (in == Unit.KRONA) {
      BigDecimal kronor = BigDecimal.valueOf(KRONOR_PER_EURO * result.value()).setScale(0, HALF);
      return new Printed(kronor, kronor, d.unit());
    }
    if (in == d.unit() || !d.unit().convertsTo(in)) {
      BigDecimal figure = BigDecimal.valueOf(result.value()).setScale(d.digits(), HALF);
      return new Printed(figure, figure, d.unit());
    }
    int digits = in == Unit.FOOT ? 0 : in == Unit.STANDARD_GRAVITY ? 3 : 1;
    BigDecimal figure =
        BigDecimal.valueOf(d.unit().convert(result.value(), in)).setScale(digits, HALF);
    double back = in.convert(figure.doubleValue(), d.unit());
    return new Printed(figure, BigDecimal.valueOf(back), d.unit());
  }

  /** A school mark to 0.1: the best gets 1.2, one more for each 2.5 line standard deviations. */
  static Printed mark(SimulatedReport report, DisciplineTruth d, SimulatedResult result) {
    double behind = best(report, d) - d.shown(result.printed());
    double mark = 1.2 + behind / (2.5 * d.lineSd());
    BigDecimal figure = BigDecimal.valueOf(Math.min(6, mark)).setScale(1, HALF);
    return new Printed(figure, figure, Unit.SCHOOL_MARK);
  }

  /** Per cent of the best performance of the table, to 0.1. */
  static Printed percentOfBest(SimulatedReport report, DisciplineTruth d, SimulatedResult result) {
    return percent(d, best(report, d), result, Unit.PERCENT_OF_BEST);
  }

  /** Per cent of the performance of a reference entry, to 0.1; empty where it has no result. */
  static Optional<Printed> percentOf(
      SimulatedEntry reference, DisciplineTruth d, SimulatedResult result) {
    return Optional.ofNullable(reference.results().get(d.key()))
        .map(r -> percent(d, d.shown(r.printed()), result, Unit.PERCENT_OF_REFERENCE));
  }

  private static Printed percent(
      DisciplineTruth d, double against, SimulatedResult result, Unit unit) {
    if (d.scale() != Scale.RATIO) {
      throw new IllegalArgumentException("no per cent of " + d.key());
    }
    double ratio = StrictMath.exp(d.shown(result.printed()) - against);
    BigDecimal figure = BigDecimal.valueOf(100 * ratio).setScale(1, HALF);
    return new Printed(figure, figure, unit);
  }

  private static double best(SimulatedReport report, DisciplineTruth d) {
    return report.entries().stream()
        .filter(e -> e.results().containsKey(d.key()))
        .mapToDouble(e -> d.shown(e.results().get(d.key()).printed()))
        .max()
        .orElseThrow();
  }
}
