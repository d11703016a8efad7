package org.griplore.query.statistics;

import org.hipparchus.distribution.continuous.ChiSquaredDistribution;
import org.hipparchus.distribution.continuous.TDistribution;
import org.hipparchus.special.Beta;
import org.hipparchus.special.Erf;
import org.hipparchus.special.Gamma;

/**
 * Tail probabilities formed directly, never as one minus a probability near one, so that a small
 * tail keeps its digits.
 */
public final class Tails {
  private static final double ACCURACY = 1e-15;

  private Tails() {}

  /** P(Z &gt; z) of the standard normal. */
  public static double normalAbove(double z) {
    return 0.5 * Erf.erfc(z / Math.sqrt(2));
  }

  /** P(|Z| &gt; |z|) of the standard normal. */
  public static double normalTwoSided(double z) {
    return Erf.erfc(Math.abs(z) / Math.sqrt(2));
  }

  /** P(|T| &gt; |t|) of Student's t with {@code df} degrees of freedom, not necessarily whole. */
  public static double studentTwoSided(double t, double df) {
    return Beta.regularizedBeta(df / (df + t * t), df / 2, 0.5);
  }

  /** The t that leaves {@code 1 - level} outside plus and minus itself. */
  public static double student(double level, double df) {
    Checks.level(level);
    return new TDistribution(df, ACCURACY).inverseCumulativeProbability((1 + level) / 2);
  }

  /** The z that leaves {@code 1 - level} outside plus and minus itself. */
  public static double normal(double level) {
    Checks.level(level);
    return Math.sqrt(2) * Erf.erfInv(level);
  }

  /** P(F &gt; f). */
  public static double fisherAbove(double f, double df1, double df2) {
    return f <= 0 ? 1 : Beta.regularizedBeta(df2 / (df2 + df1 * f), df2 / 2, df1 / 2);
  }

  /** The value that chi-squared with {@code df} degrees of freedom lies below with this chance. */
  public static double chiSquaredBelow(double chance, double df) {
    Checks.level(chance);
    return new ChiSquaredDistribution(df, ACCURACY).inverseCumulativeProbability(chance);
  }

  /** P(X &gt; x) of chi-squared. */
  public static double chiSquaredAbove(double x, double df) {
    return x <= 0 ? 1 : Gamma.regularizedGammaQ(df / 2, x / 2);
  }
}
