package org.griplore.query.statistics;

/**
 * The difference of two means with its t interval.
 *
 * @param difference first mean less second
 * @param se its standard error
 * @param df degrees of freedom, not necessarily whole
 */
public record MeanDifference(double difference, double se, double df) {
  /**
   * Two independent samples with spreads of their own (Welch 1947, Biometrika 34:28).
   *
   * @throws IllegalArgumentException for a sample of fewer than two, or when neither varies
   */
  public static MeanDifference welch(double[] first, double[] second) {
    Checks.atLeast(first.length, 2, "values in the first sample");
    Checks.atLeast(second.length, 2, "values in the second sample");
    Summary a = Summary.of(first);
    Summary b = Summary.of(second);
    double va = a.variance() / a.count();
    double vb = b.variance() / b.count();
    double df = satterthwaite(va, a.count() - 1, vb, b.count() - 1);
    return new MeanDifference(a.mean() - b.mean(), Math.sqrt(va + vb), df);
  }

  /**
   * Pairs, such as the same tyre on two days.
   *
   * @throws IllegalArgumentException for fewer than two pairs, or when the differences do not vary
   */
  public static MeanDifference paired(double[] first, double[] second) {
    Checks.sameLength("pairs", first.length, second.length);
    Checks.atLeast(first.length, 2, "pairs");
    double[] differences = new double[first.length];
    for (int i = 0; i < differences.length; i++) {
      differences[i] = first[i] - second[i];
    }
    Summary summary = Summary.of(differences);
    requireSpread(summary.sumOfSquares());
    return new MeanDifference(summary.mean(), summary.standardError(), first.length - 1.0);
  }

  /**
   * Degrees of freedom of a sum of two independent variances (Satterthwaite 1946, Biometrics
   * Bulletin 2:110).
   *
   * @throws IllegalArgumentException when both variances are 0
   */
  public static double satterthwaite(double first, double df1, double second, double df2) {
    requireSpread(first + second);
    double share = first / (first + second);
    return 1 / (share * share / df1 + (1 - share) * (1 - share) / df2);
  }

  private static void requireSpread(double spread) {
    if (!(spread > 0)) {
      throw new IllegalArgumentException("nothing varies, so there is no standard error");
    }
  }

  /** The difference in standard errors. */
  public double t() {
    return difference / se;
  }

  /** Two-sided probability of a difference as large by chance. */
  public double p() {
    return Tails.studentTwoSided(t(), df);
  }

  /** The t interval. */
  public Interval interval(double level) {
    return Interval.around(difference, Tails.student(level, df) * se);
  }
}
