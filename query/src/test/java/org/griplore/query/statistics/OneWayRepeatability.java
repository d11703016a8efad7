package org.griplore.query.statistics;

import org.hipparchus.distribution.continuous.ChiSquaredDistribution;

/**
 * Precision of a measurement from repeats: each group is one tyre (or one day, one driver) measured
 * several times. Terms as in ISO 5725-2: repeatability within a group, reproducibility over groups.
 *
 * <p>Where the groups are different tyres, the spread between them is the tyres', and only the
 * repeatability speaks of the measurement.
 *
 * @param oneWay the analysis behind it
 * @param meanSize n0, the group size that unequal groups are worth: (N - Σn²/N) / (groups - 1)
 * @param repeatability s_r, the sd within a group
 * @param between s_L, the sd between groups by moments, 0 where the moments give less
 * @param reproducibility s_R, from s_R² = s_r² + s_L²
 */
public record OneWayRepeatability(
    OneWay oneWay, double meanSize, double repeatability, double between, double reproducibility) {
  private static final double ACCURACY = 1e-15;

  /**
   * From repeats.
   *
   * @param values a row a group, unequal lengths allowed
   * @throws IllegalArgumentException as {@link OneWay#of}
   */
  public static OneWayRepeatability of(double[][] values) {
    OneWay oneWay = OneWay.of(values);
    double squares = 0;
    for (double[] group : values) {
      squares += (double) group.length * group.length;
    }
    double meanSize = (oneWay.count() - squares / oneWay.count()) / oneWay.betweenDf();
    double within = oneWay.withinMeanSquare();
    double between = Math.max(0, (oneWay.betweenMeanSquare() - within) / meanSize);
    return new OneWayRepeatability(
        oneWay, meanSize, Math.sqrt(within), Math.sqrt(between), Math.sqrt(within + between));
  }

  /** The interval of s_r from the chi-squared quantiles of df s_r². */
  public Interval repeatabilityInterval(double level) {
    Checks.level(level);
    ChiSquaredDistribution chi = new ChiSquaredDistribution(oneWay.withinDf(), ACCURACY);
    double upper = chi.inverseCumulativeProbability((1 + level) / 2);
    double lower = chi.inverseCumulativeProbability((1 - level) / 2);
    return new Interval(Math.sqrt(oneWay.within() / upper), Math.sqrt(oneWay.within() / lower));
  }

  /**
   * What two results of one tyre stay within 95 times in 100: z √2 s_r with z 1.95996, about 2.8
   * s_r.
   */
  public double repeatabilityLimit() {
    return Tails.normal(0.95) * Math.sqrt(2) * repeatability;
  }

  /** Share of the variance that is between groups; refused when nothing varies. */
  public double intraclass() {
    if (reproducibility == 0) {
      throw new IllegalArgumentException("nothing varies");
    }
    return between * between / (reproducibility * reproducibility);
  }
}
