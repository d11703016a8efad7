package org.griplore.query.network;

import java.util.Optional;
import java.util.OptionalDouble;
import org.griplore.query.statistics.Interval;
import org.griplore.query.statistics.Tails;

/** A pooled estimate with the scatter between the estimates that went into it. Immutable. */
public final class Pooled {
  private final VarianceMethod method;
  private final int count;
  private final double between;
  private final double betweenVariance;
  private final Pooling.Sums sums;
  private final Pooling.Sums zero;
  private final Heterogeneity heterogeneity;

  Pooled(
      VarianceMethod method,
      int count,
      double between,
      double betweenVariance,
      Pooling.Sums sums,
      Heterogeneity heterogeneity,
      Pooling.Sums zero) {
    this.method = method;
    this.count = count;
    this.between = between;
    this.betweenVariance = betweenVariance;
    this.sums = sums;
    this.heterogeneity = heterogeneity;
    this.zero = zero;
  }

  /** How the variance between estimates was found. */
  public VarianceMethod method() {
    return method;
  }

  /** Number of estimates pooled. */
  public int count() {
    return count;
  }

  /** Weighted mean with standard error {@code 1 / sqrt(sum of weights)} and normal interval. */
  public Estimate estimate() {
    return Estimate.normal(sums.mean, 1 / Math.sqrt(sums.weight));
  }

  /**
   * The same mean with the standard error scaled by the weighted scatter around it and a t interval
   * on count - 1 degrees of freedom (Hartung and Knapp 2001; Sidik and Jonkman 2002). Empty for one
   * estimate.
   */
  public Optional<Estimate> scatterEstimate() {
    int df = count - 1;
    if (df < 1) {
      return Optional.empty();
    }
    double se = Math.sqrt(sums.quadratic / df / sums.weight);
    return Optional.of(
        new Estimate(sums.mean, OptionalDouble.of(se), java.util.OptionalInt.of(df)));
  }

  /** Variance between estimates beyond their own. */
  public double between() {
    return between;
  }

  /** Standard error of {@link #between()}; empty for NONE and for one estimate. */
  public OptionalDouble betweenSe() {
    return betweenVariance >= 0
        ? OptionalDouble.of(Math.sqrt(betweenVariance))
        : OptionalDouble.empty();
  }

  /** Q, its degrees of freedom, p, and I-squared by Q alone. */
  public Heterogeneity heterogeneity() {
    return heterogeneity;
  }

  /**
   * Share of scatter that is not run-level error, by the variance between estimates over that plus
   * a typical variance {@code (k - 1) S1 / (S1 S1 - S2)} (Higgins and Thompson 2002). With DL it is
   * {@code max(0, (Q - df) / Q)}.
   */
  public double iSquared() {
    return count < 2 ? 0 : between / (between + (count - 1) / zero.trace);
  }

  /** Prediction interval with a normal quantile. */
  public Interval predictionNormal(double level) {
    return Interval.around(sums.mean, Tails.normal(level) * predictionSd());
  }

  /**
   * Prediction interval with a t quantile.
   *
   * @param level between 0 and 1
   * @param df degrees of freedom: count - 2 by Higgins, Thompson and Spiegelhalter (2009), count -
   *     1 by others; the interval is empty when there are none
   */
  public Optional<Interval> prediction(double level, int df) {
    return df < 1
        ? Optional.empty()
        : Optional.of(Interval.around(sums.mean, Tails.student(level, df) * predictionSd()));
  }

  private double predictionSd() {
    return Math.sqrt(between + 1 / sums.weight);
  }
}
