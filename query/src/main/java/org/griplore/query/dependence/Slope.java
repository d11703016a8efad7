package org.griplore.query.dependence;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.griplore.query.discipline.ComparisonScale;
import org.griplore.query.discipline.Difference;
import org.griplore.query.statistics.ClusteredRegression;
import org.griplore.query.statistics.ClusteredRegression.Errors;
import org.griplore.query.statistics.ClusteredRegression.Estimate;
import org.griplore.query.statistics.Interval;

/**
 * The regression of the tests' contrasts on one moderator, each test a cluster of its own, or one
 * with those that repeat it.
 *
 * @param slope per step of the moderator, on the discipline's scale
 * @param mean the weighted mean of the moderator
 * @param contrast the contrast there
 */
record Slope(
    ClusteredRegression regression, double step, Estimate slope, double mean, Estimate contrast) {
  private static final int LINE = 25;

  /** No log ratio, dB or point is measured to this. */
  static final double ROUNDING = 1e-9;

  /** Fewer degrees of freedom make an interval that covers too little (Pustejovsky and Tipton). */
  static final double FEW = 4;

  /**
   * Fits it.
   *
   * @return empty for fewer than three tests, a moderator that does not vary, or one that a single
   *     test decides
   */
  static Optional<Slope> of(
      double[] contrast, double[] at, double[] weight, int[] cluster, double step) {
    if (contrast.length < 3) {
      return Optional.empty();
    }
    double[][] columns =
        Arrays.stream(at).mapToObj(v -> new double[] {v / step}).toArray(double[][]::new);
    double sum = 0;
    double total = 0;
    for (int i = 0; i < at.length; i++) {
      sum += weight[i] * at[i];
      total += weight[i];
    }
    double mean = sum / total;
    Optional<ClusteredRegression> fitted =
        ClusteredRegression.of(contrast, columns, weight, cluster);
    Optional<Estimate> slope = fitted.flatMap(fit -> fit.slope(0, Errors.REDUCED_BIAS));
    Optional<Estimate> there = fitted.flatMap(fit -> at(fit, mean / step));
    return slope.isEmpty() || there.isEmpty()
        ? Optional.empty()
        : Optional.of(new Slope(fitted.get(), step, slope.get(), mean, there.get()));
  }

  private static Optional<Estimate> at(ClusteredRegression fit, double steps) {
    return fit.estimate(new double[] {1, steps}, Errors.REDUCED_BIAS);
  }

  /** Whether the tests scatter about the line by more than rounding; else no error is known. */
  boolean scatters() {
    return regression.residualSd() > ROUNDING;
  }

  /** The interval of an estimate; empty when the tests do not scatter. */
  Optional<Interval> interval(Estimate estimate) {
    return scatters() ? Optional.of(estimate.interval(Difference.LEVEL)) : Optional.empty();
  }

  /** The fitted line from one value of the moderator to another, as it is shown. */
  List<FittedPoint> line(double from, double to, ComparisonScale measure) {
    List<FittedPoint> line = new ArrayList<>();
    for (int i = 0; i < LINE; i++) {
      double x = from + (to - from) * i / (LINE - 1);
      at(regression, x / step)
          .ifPresent(
              estimate -> {
                Optional<Interval> interval = interval(estimate);
                line.add(
                    new FittedPoint(
                        x,
                        measure.shown(estimate.value()),
                        measure.shownLow(interval),
                        measure.shownHigh(interval)));
              });
    }
    return line;
  }
}
