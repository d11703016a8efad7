package org.griplore.query.tradeoff;

import java.util.Map;
import java.util.Optional;
import org.griplore.query.answer.Missing;
import org.griplore.query.discipline.Difference;
import org.griplore.query.statistics.CrossedCorrelation;
import org.griplore.query.statistics.ErrorCorrectedCorrelation;
import org.griplore.query.statistics.ErrorCorrectedCorrelation.Estimates;
import org.griplore.query.statistics.Interval;
import org.griplore.query.statistics.WithinGroupCorrelation;

/** The three correlations of two disciplines: inside tests, between models, between steps. */
final class Correlations {
  private Correlations() {}

  static Relation of(PairedArms pairs, Axis x, Axis y, StepAxis stepX, StepAxis stepY) {
    Optional<WithinGroupCorrelation> within = pairs.correlation();
    // none for values that stand on one line exactly: too few, or computed from each other
    Optional<CrossedCorrelation> crossed = pairs.crossed();
    Optional<Interval> interval = crossed.map(c -> c.interval(Difference.LEVEL));
    Map<Integer, Integer> counts = pairs.models();
    Optional<ErrorCorrectedCorrelation> models = betweenModels(x, y);
    Optional<ErrorCorrectedCorrelation> steps = betweenSteps(stepX, stepY);
    return new Relation(
        within.map(WithinGroupCorrelation::r).orElse(null),
        interval.map(Interval::low).orElse(null),
        interval.map(Interval::high).orElse(null),
        crossed.map(CrossedCorrelation::p).orElse(null),
        (int) counts.values().stream().filter(n -> n > 1).count(),
        counts.values().stream().filter(n -> n > 1).mapToInt(n -> n).sum(),
        estimate(models),
        models.map(ErrorCorrectedCorrelation::interval).map(Interval::low).orElse(null),
        models.map(ErrorCorrectedCorrelation::interval).map(Interval::high).orElse(null),
        models.map(ErrorCorrectedCorrelation::uncorrected).orElse(null),
        x.effect().length,
        estimate(steps),
        steps.map(ErrorCorrectedCorrelation::interval).map(Interval::low).orElse(null),
        steps.map(ErrorCorrectedCorrelation::interval).map(Interval::high).orElse(null),
        steps.map(ErrorCorrectedCorrelation::uncorrected).orElse(null),
        stepX.step().length);
  }

  private static Optional<ErrorCorrectedCorrelation> betweenModels(Axis x, Axis y) {
    return corrected(
        x.effect(),
        x.variance(),
        y.effect(),
        y.variance(),
        mean(x.variance()) - x.spreadError(),
        mean(y.variance()) - y.spreadError());
  }

  private static Optional<ErrorCorrectedCorrelation> betweenSteps(StepAxis x, StepAxis y) {
    return corrected(x.step(), x.variance(), y.step(), y.variance(), x.shared(), y.shared());
  }

  private static Optional<ErrorCorrectedCorrelation> corrected(
      double[] x,
      double[] xVariance,
      double[] y,
      double[] yVariance,
      double xShared,
      double yShared) {
    if (xVariance == null || yVariance == null) {
      return Optional.empty();
    }
    return ErrorCorrectedCorrelation.of(
        new Estimates(x, xVariance, y, yVariance, null, new double[] {xShared, yShared, 0}),
        Difference.LEVEL);
  }

  private static Double estimate(Optional<ErrorCorrectedCorrelation> of) {
    return of.map(ErrorCorrectedCorrelation::r).map(Missing::orNull).orElse(null);
  }

  private static double mean(double[] values) {
    return values == null || values.length == 0
        ? 0
        : java.util.Arrays.stream(values).sum() / values.length;
  }
}
