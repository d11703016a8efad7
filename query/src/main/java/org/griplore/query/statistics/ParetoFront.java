package org.griplore.query.statistics;

import java.util.Arrays;
import org.griplore.store.vocabulary.Direction;

/**
 * The models that no other beats in two disciplines at once. One beats another when it is at least
 * as good in both and better in one; so equal pairs of values stand or fall together.
 */
public final class ParetoFront {
  private ParetoFront() {}

  /**
   * Which points are on the front, by sorting.
   *
   * @param x values in the first discipline, NaN where missing
   * @param y values in the second, NaN where missing
   * @return false where a value is missing
   * @throws IllegalArgumentException when the lengths differ
   */
  public static boolean[] of(double[] x, double[] y, Direction xBetter, Direction yBetter) {
    Checks.sameLength("points", x.length, y.length);
    Integer[] order = new Integer[x.length];
    int present = 0;
    for (int i = 0; i < x.length; i++) {
      if (!Double.isNaN(x[i]) && !Double.isNaN(y[i])) {
        order[present++] = i;
      }
    }
    double xSign = xBetter.sign();
    double ySign = yBetter.sign();
    Arrays.sort(
        order,
        0,
        present,
        (a, b) -> {
          int byX = Double.compare(xSign * x[b] + 0.0, xSign * x[a] + 0.0);
          return byX != 0 ? byX : Double.compare(ySign * y[b] + 0.0, ySign * y[a] + 0.0);
        });
    boolean[] front = new boolean[x.length];
    double best = Double.NEGATIVE_INFINITY;
    for (int from = 0; from < present; ) {
      int first = order[from];
      int to = from;
      double top = ySign * y[first];
      while (to < present && x[order[to]] == x[first]) {
        front[order[to]] = ySign * y[order[to]] == top && top > best;
        to++;
      }
      best = Math.max(best, top);
      from = to;
    }
    return front;
  }
}
