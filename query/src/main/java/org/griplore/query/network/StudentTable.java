package org.griplore.query.network;

import org.griplore.query.statistics.Tails;
import org.hipparchus.special.Gamma;

/**
 * The distribution function of Student's t for very many calls: values 32 a unit, joined by cubics
 * that have the density as slope (error below 1e-7); beyond the table the tail itself.
 */
final class StudentTable {
  private static final int PER_UNIT = 32;
  private static final int REACH = 12;

  /** Node of the Gauss-Legendre rule of three points. */
  private static final double GAUSS = Math.sqrt(0.6);

  private final double df;
  private final double[] above = new double[REACH * PER_UNIT + 1];
  private final double[] density = new double[above.length];

  /**
   * @param df degrees of freedom, above 0, not necessarily whole
   */
  StudentTable(double df) {
    this.df = df;
    double constant =
        Math.exp(Gamma.logGamma((df + 1) / 2) - Gamma.logGamma(df / 2)) / Math.sqrt(df * Math.PI);
    for (int i = 0; i < above.length; i++) {
      density[i] = density(constant, (double) i / PER_UNIT);
    }
    above[above.length - 1] = Tails.studentTwoSided(REACH, df) / 2;
    double half = 0.5 / PER_UNIT;
    for (int i = above.length - 2; i >= 0; i--) {
      double middle = (double) i / PER_UNIT + half;
      double sides =
          density(constant, middle - GAUSS * half) + density(constant, middle + GAUSS * half);
      above[i] = above[i + 1] + half * (5 * sides + 8 * density(constant, middle)) / 9;
    }
  }

  private double density(double constant, double t) {
    return constant * Math.exp(-(df + 1) / 2 * Math.log1p(t * t / df));
  }

  double below(double t) {
    double tail = tail(Math.abs(t));
    return t < 0 ? tail : 1 - tail;
  }

  private double tail(double t) {
    double at = t * PER_UNIT;
    int i = (int) at;
    if (i >= above.length - 1) {
      return df > 60 ? 0 : Tails.studentTwoSided(t, df) / 2;
    }
    double x = at - i;
    double h = 1.0 / PER_UNIT;
    double y0 = above[i];
    double y1 = above[i + 1];
    double s0 = -density[i] * h;
    double s1 = -density[i + 1] * h;
    double c = y1 - y0;
    return y0 + x * (s0 + x * (3 * c - 2 * s0 - s1 + x * (s0 + s1 - 2 * c)));
  }
}
