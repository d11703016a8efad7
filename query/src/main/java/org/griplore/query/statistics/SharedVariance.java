package org.griplore.query.statistics;

import java.util.Optional;
import org.hipparchus.special.Gamma;

/**
 * What many sample variances say together of one more: true variances scatter as a scaled inverse
 * chi-squared with {@code df} degrees of freedom around {@code variance}, so that a sample variance
 * s² on d degrees of freedom is drawn to (df variance + d s²) / (df + d) and counts df + d degrees
 * of freedom (Smyth 2004, Statistical Applications in Genetics and Molecular Biology 3:3, whose
 * moments of log s² give both figures). The error of the mean of the logs, which few variances make
 * large, counts as scatter too.
 *
 * @param df degrees of freedom that the others are worth, not above the sum of theirs
 * @param variance the variance they stand around, above 0
 */
public record SharedVariance(double df, double variance) {
  /** With fewer sample variances nothing is shared. */
  public static final int FEWEST = 3;

  /** The excess scatter of log variances is blended with one observation of this one. */
  private static final double USUAL_EXCESS = 1;

  private static final double LEAST_EXCESS = 1e-4;

  /**
   * From sample variances.
   *
   * @param variances the sample variances; those of zero tell nothing and are passed over
   * @param dfs degrees of freedom of each, above 0
   * @return empty with fewer than {@link #FEWEST} that are above zero
   */
  public static Optional<SharedVariance> of(double[] variances, double[] dfs) {
    Checks.sameLength("variances and degrees of freedom", variances.length, dfs.length);
    Checks.finite("variance", variances);
    Checks.positive("degrees of freedom", dfs);
    int n = 0;
    double sum = 0;
    double expected = 0;
    double most = 0;
    double[] logs = new double[variances.length];
    for (int i = 0; i < variances.length; i++) {
      if (variances[i] > 0) {
        double half = dfs[i] / 2;
        logs[n] = Math.log(variances[i]) - Gamma.digamma(half) + Math.log(half);
        sum += logs[n++];
        expected += Gamma.trigamma(half);
        most += dfs[i];
      }
    }
    if (n < FEWEST) {
      return Optional.empty();
    }
    double mean = sum / n;
    double squares = 0;
    for (int i = 0; i < n; i++) {
      squares += (logs[i] - mean) * (logs[i] - mean);
    }
    double seen = Math.max(0, squares - expected * (n - 1) / n);
    double excess = Math.max(LEAST_EXCESS, (seen + USUAL_EXCESS) / n);
    double ofMean = (excess + expected / n) / n;
    double df = Math.min(most, 2 * trigammaInverse(excess + ofMean));
    return Optional.of(
        new SharedVariance(df, Math.exp(mean + Gamma.digamma(df / 2) - Math.log(df / 2))));
  }

  /** A sample variance drawn towards the others. */
  public double drawn(double sample, double sampleDf) {
    return (df * variance + sampleDf * sample) / (df + sampleDf);
  }

  /** The y with trigamma(y) = x, by Newton's steps on 1/trigamma, which is nearly a line. */
  static double trigammaInverse(double x) {
    double y = 0.5 + 1 / x;
    for (int step = 0; step < 50; step++) {
      double tri = Gamma.trigamma(y);
      double h = 1e-5 * y;
      double slope = (Gamma.trigamma(y + h) - Gamma.trigamma(y - h)) / (2 * h);
      double move = tri * (1 - tri / x) / slope;
      y += move;
      if (Math.abs(move) < 1e-10 * y) {
        break;
      }
    }
    return y;
  }
}
