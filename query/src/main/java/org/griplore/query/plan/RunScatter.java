package org.griplore.query.plan;

import java.util.HashSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.griplore.query.discipline.ComparisonScale;
import org.griplore.query.discipline.DisciplineArms;
import org.griplore.query.evidence.Citations;
import org.griplore.query.evidence.Evidence;
import org.griplore.query.evidence.Exclusions;
import org.griplore.query.evidence.Filter;
import org.griplore.query.statistics.Tails;
import org.griplore.store.vocabulary.Discipline;
import org.griplore.store.vocabulary.Repeatability;
import org.griplore.store.vocabulary.Unit;

/**
 * How far single runs of one set scatter.
 *
 * @param value a coefficient of variation for ratio disciplines, else a standard deviation in the
 *     unit
 * @param low lower end of its 95 % interval; null when it was not measured here
 * @param high upper end
 * @param source where it comes from, in words
 */
record RunScatter(double value, Double low, Double high, String source) {
  private static final double LEVEL = 0.95;

  /** As the user states it. */
  static RunScatter stated(double value) {
    return new RunScatter(value, null, null, "as stated");
  }

  /**
   * Pooled within sets: √(Σ(n - 1)s² / Σ(n - 1)) over results with a spread and at least two runs.
   * A spread of 0 says that the reading was too coarse; it is left out.
   */
  static Optional<RunScatter> measured(
      Evidence evidence, String key, Filter filter, Exclusions excluded, Citations citations) {
    DisciplineArms arms = DisciplineArms.of(evidence, key, filter);
    arms.excluded().list().forEach(left -> excluded.add(left.reason(), left.count()));
    double squares = 0;
    int df = 0;
    int results = 0;
    Set<Integer> tests = new HashSet<>();
    for (int i = 0; i < arms.size(); i++) {
      int runs = evidence.results().runs()[arms.result()[i]];
      double variance = arms.variance()[i] * runs;
      if (runs < 2 || Double.isNaN(variance)) {
        excluded.add("results without the spread of their runs");
      } else if (variance == 0) {
        excluded.add("results whose runs do not differ: read too coarsely");
      } else {
        squares += (runs - 1) * variance;
        df += runs - 1;
        results++;
        tests.add(arms.test()[i]);
        citations.citeEntry(arms.entry()[i]);
      }
    }
    if (df == 0) {
      return Optional.empty();
    }
    double sd = Math.sqrt(squares / df);
    String source =
        String.format(
            Locale.ROOT,
            "this archive: %d results of %d tests, %d degrees of freedom",
            results,
            tests.size(),
            df);
    return Optional.of(
        new RunScatter(
            sd,
            sd * Math.sqrt(df / Tails.chiSquaredBelow((1 + LEVEL) / 2, df)),
            sd * Math.sqrt(df / Tails.chiSquaredBelow((1 - LEVEL) / 2, df)),
            source));
  }

  /**
   * What the catalogue holds for typical. A standard deviation of a ratio discipline is set over
   * the mean of the archive's own values in its unit; empty where there are none.
   */
  static Optional<RunScatter> typical(Evidence evidence, Discipline discipline, Filter filter) {
    Repeatability known = discipline.repeatability();
    if (known == null) {
      return Optional.empty();
    }
    boolean ratio = new ComparisonScale(discipline).isRatio();
    if (ratio == (known.kind() == Repeatability.Kind.CV)) {
      return Optional.of(catalogued(known.value(), known));
    }
    return ratio
        ? mean(evidence, discipline, filter).map(mean -> catalogued(known.value() / mean, known))
        : Optional.empty();
  }

  private static RunScatter catalogued(double value, Repeatability known) {
    return new RunScatter(value, null, null, "the catalogue: " + known.source());
  }

  private static Optional<Double> mean(Evidence evidence, Discipline discipline, Filter filter) {
    DisciplineArms arms = DisciplineArms.of(evidence, discipline.key(), filter);
    double sum = 0;
    int count = 0;
    for (int row : arms.result()) {
      Unit unit = Unit.ofSymbol(evidence.units().get(evidence.results().unit()[row])).orElseThrow();
      if (unit == discipline.unit()) {
        sum += evidence.results().value()[row];
        count++;
      }
    }
    return count == 0 ? Optional.empty() : Optional.of(sum / count);
  }
}
