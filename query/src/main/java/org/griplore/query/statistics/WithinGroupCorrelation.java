package org.griplore.query.statistics;

import java.util.Arrays;
import java.util.Optional;

/**
 * Whether two disciplines move together within tests: both are centred on the mean of their test,
 * so that a hard day or a fast track cannot make a correlation (Bland and Altman 1995, BMJ
 * 310:446).
 *
 * @param r correlation of the centred values
 * @param df values less groups less one
 * @param slope of y on x within groups
 * @param slopeSe its standard error
 * @param groups how many groups have two or more values, the others say nothing
 * @param count values in those groups
 */
public record WithinGroupCorrelation(
    double r, int df, double slope, double slopeSe, int groups, int count) {
  /**
   * From values in groups.
   *
   * @param group a number from 0 for each value
   * @return empty when fewer than one degree of freedom is left or one side does not vary
   * @throws IllegalArgumentException when the lengths differ or a value is not finite
   */
  public static Optional<WithinGroupCorrelation> of(int[] group, double[] x, double[] y) {
    Checks.sameLength("values", x.length, y.length);
    Checks.sameLength("groups of values", group.length, x.length);
    Checks.finite("x", x);
    Checks.finite("y", y);
    int most = Arrays.stream(group).max().orElse(-1) + 1;
    int[] size = new int[most];
    double[] meanX = new double[most];
    double[] meanY = new double[most];
    for (int i = 0; i < x.length; i++) {
      int g = group[i];
      size[g]++;
      meanX[g] += (x[i] - meanX[g]) / size[g];
      meanY[g] += (y[i] - meanY[g]) / size[g];
    }
    int groups = 0;
    int count = 0;
    for (int n : size) {
      groups += n > 1 ? 1 : 0;
      count += n > 1 ? n : 0;
    }
    Sums xx = new Sums();
    Sums yy = new Sums();
    Sums xy = new Sums();
    for (int i = 0; i < x.length; i++) {
      double dx = x[i] - meanX[group[i]];
      double dy = y[i] - meanY[group[i]];
      xx.add(dx * dx);
      yy.add(dy * dy);
      xy.add(dx * dy);
    }
    int df = count - groups - 1;
    if (df < 1 || !varies(xx.total(), meanX) || !varies(yy.total(), meanY)) {
      return Optional.empty();
    }
    double r = xy.total() / Math.sqrt(xx.total() * yy.total());
    r = Math.max(-1, Math.min(1, r));
    double slope = xy.total() / xx.total();
    double residual = Math.max(0, yy.total() * (1 - r * r));
    return Optional.of(
        new WithinGroupCorrelation(
            r, df, slope, Math.sqrt(residual / df / xx.total()), groups, count));
  }

  /** More spread than rounding of the means alone leaves. */
  private static boolean varies(double squares, double[] means) {
    double largest = 0;
    for (double mean : means) {
      largest = Math.max(largest, Math.abs(mean));
    }
    double rounding = 8 * Math.ulp(largest);
    return squares > rounding * rounding * means.length;
  }

  /** F with 1 and df degrees of freedom; empty for a perfect correlation. */
  public Optional<Double> f() {
    return Math.abs(r) == 1 ? Optional.empty() : Optional.of(r * r / (1 - r * r) * df);
  }

  /** Two-sided probability of a correlation as large by chance. */
  public double p() {
    return f().map(f -> Tails.fisherAbove(f, 1, df)).orElse(0.0);
  }

  /** Fisher's z interval with the standard error 1/√(df - 1); empty when df is below 2. */
  public Optional<Interval> interval(double level) {
    return FisherZ.interval(r, 1.0 / Math.sqrt(df - 1.0), level);
  }
}
