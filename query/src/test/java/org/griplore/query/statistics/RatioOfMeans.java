package org.griplore.query.statistics;

import java.util.Optional;

/**
 * The ratio of two independent means, such as a candidate's mean deceleration to the reference's.
 *
 * @param ratio first mean over second
 * @param se its standard error by the delta method: √(v₁ + r² v₂) / |m₂|, v the variances of the
 *     means
 * @param df Satterthwaite's for that sum
 * @param first mean of the first sample
 * @param second mean of the second sample
 * @param firstVariance variance of the first mean
 * @param secondVariance variance of the second mean
 */
public record RatioOfMeans(
    double ratio,
    double se,
    double df,
    double first,
    double second,
    double firstVariance,
    double secondVariance) {
  /**
   * From two samples.
   *
   * @throws IllegalArgumentException for a sample of fewer than two, a second mean of 0, or when
   *     neither sample varies
   */
  public static RatioOfMeans of(double[] first, double[] second) {
    Checks.atLeast(first.length, 2, "values in the first sample");
    Checks.atLeast(second.length, 2, "values in the second sample");
    Summary a = Summary.of(first);
    Summary b = Summary.of(second);
    if (b.mean() == 0) {
      throw new IllegalArgumentException("a mean of 0 cannot be compared with");
    }
    double va = a.variance() / a.count();
    double vb = b.variance() / b.count();
    double ratio = a.mean() / b.mean();
    double df = MeanDifference.satterthwaite(va, a.count() - 1, ratio * ratio * vb, b.count() - 1);
    double se = Math.sqrt(va + ratio * ratio * vb) / Math.abs(b.mean());
    return new RatioOfMeans(ratio, se, df, a.mean(), b.mean(), va, vb);
  }

  /** Ratio plus and minus t standard errors. */
  public Interval interval(double level) {
    return Interval.around(ratio, Tails.student(level, df) * se);
  }

  /**
   * The interval formed on the log of the ratio and turned back, which is the same whichever mean
   * is divided by which.
   *
   * @throws IllegalArgumentException when the means are of different sign
   */
  public Interval logInterval(double level) {
    if (!(ratio > 0)) {
      throw new IllegalArgumentException("a ratio of " + ratio + " has no log");
    }
    double half = Tails.student(level, df) * se / ratio;
    return new Interval(ratio * Math.exp(-half), ratio * Math.exp(half));
  }

  /**
   * The exact interval of a ratio of normal means (Fieller 1954, J Royal Statistical Society B
   * 16:175) at {@code quantile}, a t or normal quantile; empty where the second mean cannot be told
   * from 0, as the ratio is then unbounded.
   */
  public Optional<Interval> fieller(double quantile) {
    double q2 = quantile * quantile;
    double g = q2 * secondVariance / (second * second);
    if (g >= 1) {
      return Optional.empty();
    }
    double root =
        Math.sqrt((1 - g) * firstVariance + ratio * ratio * secondVariance) / Math.abs(second);
    double middle = ratio / (1 - g);
    return Optional.of(Interval.around(middle, quantile * root / (1 - g)));
  }
}
