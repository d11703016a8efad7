package org.griplore.query.statistics;

/**
 * Mean and spread of a sample.
 *
 * @param count number of values
 * @param mean arithmetic mean
 * @param sumOfSquares sum of squared deviations from the mean
 */
public record Summary(int count, double mean, double sumOfSquares) {
  /**
   * Two passes: the mean by a compensated sum, then the squared deviations, corrected for what is
   * left of their sum (Chan, Golub and LeVeque 1983, The American Statistician 37:242).
   *
   * @throws IllegalArgumentException when empty, or a value is not finite
   */
  public static Summary of(double... values) {
    Checks.atLeast(values.length, 1, "values");
    Checks.finite("value", values);
    // Counted from the first value, so that a large common level costs no digits.
    double level = values[0];
    Sums shifted = new Sums();
    for (double value : values) {
      shifted.add(value - level);
    }
    double shift = shifted.total() / values.length;
    Sums squares = new Sums();
    Sums left = new Sums();
    for (double value : values) {
      double deviation = (value - level) - shift;
      squares.add(deviation * deviation);
      left.add(deviation);
    }
    double correction = left.total() * left.total() / values.length;
    return new Summary(values.length, level + shift, Math.max(0, squares.total() - correction));
  }

  /**
   * Variance with n - 1.
   *
   * @throws IllegalArgumentException for a single value, which has no spread
   */
  public double variance() {
    Checks.atLeast(count, 2, "values");
    return sumOfSquares / (count - 1);
  }

  /** Standard deviation with n - 1; refused for a single value. */
  public double sd() {
    return Math.sqrt(variance());
  }

  /** Standard error of the mean; refused for a single value. */
  public double standardError() {
    return Math.sqrt(variance() / count);
  }

  /**
   * Coefficient of variation, sd / |mean|; refused for a single value and a mean of 0.
   *
   * @throws IllegalArgumentException as said
   */
  public double cv() {
    if (mean == 0) {
      throw new IllegalArgumentException("a mean of 0 has no coefficient of variation");
    }
    return sd() / Math.abs(mean);
  }
}
