package org.griplore.query.statistics;

import java.util.Arrays;
import java.util.Optional;

/** Agreement of two orders of the same things. */
public final class RankCorrelation {
  private RankCorrelation() {}

  /**
   * Ranks from 1 for the lowest, equal values sharing the mean of their ranks.
   *
   * @throws IllegalArgumentException when a value is not finite
   */
  public static double[] midranks(double[] values) {
    Checks.finite("value", values);
    double[] sorted = values.clone();
    for (int i = 0; i < sorted.length; i++) {
      sorted[i] += 0.0; // -0 equals 0, yet sorts before it
    }
    Arrays.sort(sorted);
    double[] ranks = new double[values.length];
    for (int i = 0; i < values.length; i++) {
      int first = Arrays.binarySearch(sorted, values[i] + 0.0);
      int last = first;
      while (first > 0 && sorted[first - 1] == values[i]) {
        first--;
      }
      while (last < sorted.length - 1 && sorted[last + 1] == values[i]) {
        last++;
      }
      ranks[i] = (first + last) / 2.0 + 1;
    }
    return ranks;
  }

  /** Spearman's rho: Pearson's correlation of the midranks; empty when one side does not vary. */
  public static Optional<Double> spearman(double[] x, double[] y) {
    Checks.sameLength("values", x.length, y.length);
    double[] rx = midranks(x);
    double[] ry = midranks(y);
    double middle = (x.length + 1) / 2.0;
    double xx = 0;
    double yy = 0;
    double xy = 0;
    for (int i = 0; i < rx.length; i++) {
      xx += (rx[i] - middle) * (rx[i] - middle);
      yy += (ry[i] - middle) * (ry[i] - middle);
      xy += (rx[i] - middle) * (ry[i] - middle);
    }
    return xx == 0 || yy == 0
        ? Optional.empty()
        : Optional.of(Math.max(-1, Math.min(1, xy / Math.sqrt(xx * yy))));
  }

  /**
   * Kendall's tau-b (Kendall 1945, Biometrika 33:239): pairs in the same order less pairs in
   * opposite order, over √((pairs not tied in x)(pairs not tied in y)). Empty when one side does
   * not vary.
   */
  public static Optional<Double> kendall(double[] x, double[] y) {
    Checks.sameLength("values", x.length, y.length);
    Checks.finite("x", x);
    Checks.finite("y", y);
    long agreement = 0;
    long inX = 0;
    long inY = 0;
    for (int i = 0; i < x.length; i++) {
      for (int j = 0; j < i; j++) {
        int sx = x[i] > x[j] ? 1 : x[i] < x[j] ? -1 : 0;
        int sy = y[i] > y[j] ? 1 : y[i] < y[j] ? -1 : 0;
        agreement += (long) sx * sy;
        inX += sx * sx;
        inY += sy * sy;
      }
    }
    return inX == 0 || inY == 0
        ? Optional.empty()
        : Optional.of(Math.max(-1, Math.min(1, agreement / Math.sqrt((double) inX * inY))));
  }
}
