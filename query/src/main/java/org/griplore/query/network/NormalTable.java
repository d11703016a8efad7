package org.griplore.query.network;

import org.griplore.query.statistics.Tails;

/**
 * The normal distribution function for very many calls: a table of exact values, 32 a unit, and the
 * Taylor polynomial of fifth degree from the nearest. Its absolute error is below 1e-13, enough for
 * means of probabilities and not for far tails, which {@link Tails} gives.
 */
final class NormalTable {
  private static final int PER_UNIT = 32;
  private static final int REACH = 9;
  private static final double[] BELOW = new double[2 * REACH * PER_UNIT + 1];
  private static final double[] DENSITY = new double[BELOW.length];

  static {
    for (int i = 0; i < BELOW.length; i++) {
      double a = (double) i / PER_UNIT - REACH;
      BELOW[i] = Tails.normalAbove(-a);
      DENSITY[i] = Math.exp(-a * a / 2) / Math.sqrt(2 * Math.PI);
    }
  }

  private NormalTable() {}

  static double below(double z) {
    if (z <= -REACH) {
      return 0;
    }
    if (z >= REACH) {
      return 1;
    }
    int i = (int) Math.round((z + REACH) * PER_UNIT);
    double a = (double) i / PER_UNIT - REACH;
    double h = z - a;
    double aa = a * a;
    double c3 = (aa - 1) / 6;
    double c4 = a * (3 - aa) / 24;
    double c5 = (aa * (aa - 6) + 3) / 120;
    return BELOW[i] + DENSITY[i] * h * (1 + h * (-a / 2 + h * (c3 + h * (c4 + h * c5))));
  }
}
