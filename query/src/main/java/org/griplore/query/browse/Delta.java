package org.griplore.query.browse;

import java.util.List;
import org.griplore.store.vocabulary.Direction;
import org.griplore.store.vocabulary.Discipline;
import org.griplore.store.vocabulary.Scale;
import org.griplore.store.vocabulary.Unit;

/**
 * A figure against another of its test, plus is better: by ratio where the discipline has one in
 * this unit, else by difference.
 *
 * @param logDifference natural logarithm of the ratio, turned where less is better; null for levels
 *     and points
 * @param delta the same in per cent, 100 (e^log - 1), or the difference in the unit
 * @param unit {@code %}, or the unit's symbol
 */
record Delta(Double logDifference, double delta, String unit) {
  /** Of two figures in one unit; null where no ratio can be formed. Zero has no sign. */
  static Delta of(Discipline discipline, Unit unit, double value, double base) {
    int sign = discipline.directionOf(unit).sign();
    if (discipline.scaleOf(unit) != Scale.RATIO) {
      return new Delta(null, sign * (value - base) + 0.0, unit.symbol());
    }
    if (value <= 0 || base <= 0) {
      return null;
    }
    double log = sign * Math.log(value / base) + 0.0;
    return new Delta(log, 100 * Math.expm1(log), "%");
  }

  /**
   * The steps that lead from the value to this.
   *
   * @param to what the other figure is, in words
   */
  List<ProvenanceStep> steps(
      Discipline discipline, Unit unit, double value, double base, String to) {
    boolean less = discipline.directionOf(unit) == Direction.LOW;
    String symbol = unit.symbol();
    String other = to + ", " + ProvenanceStep.told(base) + " " + symbol;
    if (logDifference == null) {
      String rule =
          "difference to "
              + other
              + (less ? ", turned as less is better" : "")
              + ": plus is better";
      return List.of(ProvenanceStep.of(rule, value, symbol, delta, symbol));
    }
    String ratio = "natural logarithm of the ratio to " + other;
    String turned = less ? ", turned as less is better" : "";
    return List.of(
        ProvenanceStep.of(ratio + turned, value, symbol, logDifference, ""),
        ProvenanceStep.of(
            "in per cent, 100 (e^x - 1), of " + of(unit, less) + ": plus is better",
            logDifference,
            "",
            delta,
            "%"));
  }

  /** What the per cent are of: where less is better they are of the inverse. */
  private static String of(Unit unit, boolean less) {
    return (less ? "1 / " : "") + "the figure in " + unit.symbol();
  }
}
