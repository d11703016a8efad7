package org.griplore.query.ranking;

import org.hipparchus.distribution.continuous.BetaDistribution;
import org.hipparchus.distribution.continuous.NormalDistribution;

/** What the intervals of a share have in common: checks and quantiles. */
final class ShareLevel {
  /** The usual case without loading a distribution, which a quick command line feels. */
  private static final double Z_95 = 1.959963984540054;

  private static final double ACCURACY = 1e-15;

  private ShareLevel() {}

  static void check(double successes, int trials, double level) {
    if (trials < 1 || !(successes >= 0 && successes <= trials) || !(level > 0 && level < 1)) {
      throw new IllegalArgumentException(successes + " of " + trials + " at level " + level);
    }
  }

  /** The two-sided standard normal quantile. */
  static double normal(double level) {
    return level == 0.95
        ? Z_95
        : new NormalDistribution(0, 1).inverseCumulativeProbability((1 + level) / 2);
  }

  static double beta(double alpha, double beta, double probability) {
    return new BetaDistribution(alpha, beta, ACCURACY).inverseCumulativeProbability(probability);
  }
}
