package org.griplore.query.retold;

/**
 * To which step figures are rounded, as far as they show it: the decimals that the one with the
 * most of them has, and then whether all are multiples of five or two such steps (half points).
 */
final class Rounding {
  private static final int MOST_DECIMALS = 6;

  private Rounding() {}

  /** The step of some figures. */
  static double step(double[] values) {
    double step = Math.pow(10, -decimals(values));
    for (double larger : new double[] {5 * step, 2 * step}) {
      if (areMultiples(values, larger)) {
        return larger;
      }
    }
    return step;
  }

  private static int decimals(double[] values) {
    for (int decimals = 0; decimals < MOST_DECIMALS; decimals++) {
      if (areMultiples(values, Math.pow(10, -decimals))) {
        return decimals;
      }
    }
    return MOST_DECIMALS;
  }

  private static boolean areMultiples(double[] values, double step) {
    for (double value : values) {
      double steps = value / step;
      if (Math.abs(steps - Math.rint(steps)) > 1e-6 * Math.max(1, Math.abs(steps))) {
        return false;
      }
    }
    return true;
  }
}
