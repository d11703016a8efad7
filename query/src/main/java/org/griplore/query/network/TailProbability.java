package org.griplore.query.network;

import org.hipparchus.distribution.continuous.TDistribution;
import org.hipparchus.special.Erf;
import org.hipparchus.special.Gamma;

/** Tails and quantiles of the normal, t and chi-square distributions, precise far out. */
final class TailProbability {
  private static final double ROOT_TWO = Math.sqrt(2);

  private TailProbability() {}

  /** Probability that a standard normal value lies below z. */
  static double normalBelow(double z) {
    return Erf.erfc(-z / ROOT_TWO) / 2;
  }

  /** Probability that a standard normal value lies further from zero than z. */
  static double normalBeyond(double z) {
    return Erf.erfc(Math.abs(z) / ROOT_TWO);
  }

  /** Probability that a t value lies further from zero than this one. */
  static double tBeyond(double t, int df) {
    return 2 * new TDistribution(df).cumulativeProbability(-Math.abs(t));
  }

  /** Probability that a chi-square value exceeds x; 1 when there are no degrees of freedom. */
  static double chiSquareAbove(double x, double df) {
    return df <= 0 || x <= 0 ? 1 : Gamma.regularizedGammaQ(df / 2, x / 2);
  }

  /** Factor of the standard error in a normal interval of this level. */
  static double normalFactor(double level) {
    return ROOT_TWO * Erf.erfcInv(1 - checked(level));
  }

  /** Factor of the standard error in a t interval of this level. */
  static double tFactor(double level, int df) {
    return new TDistribution(df).inverseCumulativeProbability((1 + checked(level)) / 2);
  }

  private static double checked(double level) {
    if (!(level > 0 && level < 1)) {
      throw new IllegalArgumentException("The level is " + level + ", expected between 0 and 1.");
    }
    return level;
  }
}
