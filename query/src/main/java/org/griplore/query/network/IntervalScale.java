package org.griplore.query.network;

import org.griplore.query.statistics.Tails;

/**
 * From a standard error to an interval, and to every chance that stands beside it: both by one
 * distribution, so that they never contradict each other.
 *
 * @param widening factor of the standard error, 0 or more
 * @param df degrees of freedom of Student's t; infinite for the normal distribution
 */
public record IntervalScale(double widening, double df) {
  /** The normal distribution over the standard error as it is. */
  public static final IntervalScale NORMAL = new IntervalScale(1, Double.POSITIVE_INFINITY);

  /** Student's t over the standard error as it is. */
  public static IntervalScale student(double df) {
    return new IntervalScale(1, df);
  }

  /**
   * @throws IllegalArgumentException when the factor is negative or the degrees of freedom are not
   *     positive
   */
  public IntervalScale {
    if (!(widening >= 0) || Double.isInfinite(widening) || !(df > 0)) {
      throw new IllegalArgumentException(
          "An interval's scale is " + widening + " on " + df + " degrees of freedom.");
    }
  }

  /** Whether intervals are normal ones. */
  public boolean isNormal() {
    return Double.isInfinite(df);
  }

  /** How many standard errors an interval reaches to each side. */
  public double reach(double level) {
    return widening * quantile(level);
  }

  /**
   * Factor of the standard error for use as that of a normal distribution, chosen so that 95 %
   * intervals agree.
   */
  public double normalFactor() {
    return isNormal() ? widening : reach(0.95) / Tails.normal(0.95);
  }

  /** The quantile that leaves {@code 1 - level} outside plus and minus itself. */
  public double quantile(double level) {
    return isNormal() ? Tails.normal(level) : Tails.student(level, df);
  }

  /**
   * Chance of so large an estimate when the truth is zero, two-sided.
   *
   * @param z the estimate over its standard error
   */
  public double twoSided(double z) {
    double wide = z / widening;
    if (Double.isNaN(wide) || Double.isInfinite(wide)) {
      return z == 0 ? 1 : 0;
    }
    return isNormal() ? Tails.normalTwoSided(wide) : Tails.studentTwoSided(wide, df);
  }

  /** The chance that the truth lies above zero, z as in {@link #twoSided}. */
  public double above(double z) {
    double half = twoSided(z) / 2;
    return z > 0 ? 1 - half : half;
  }
}
