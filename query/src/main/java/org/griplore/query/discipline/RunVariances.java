package org.griplore.query.discipline;

import java.util.Optional;
import org.griplore.query.statistics.SharedVariance;

/**
 * Variances of results by their own runs, each drawn towards those of the discipline's other
 * results (Smyth 2004): a spread of three or four runs is a poor guess of its own, and weights made
 * from it alone would let a lucky result outweigh the rest.
 *
 * @param variance of the mean of an arm's runs; NaN where spread or runs are not known
 * @param df degrees of freedom that it rests on; NaN with it
 */
record RunVariances(double[] variance, double[] df) {

  /**
   * @param variance of the mean of each arm's runs, NaN where not known
   * @param runs of each arm
   */
  static RunVariances of(double[] variance, int[] runs) {
    int n = variance.length;
    double[] perRun = new double[n];
    double[] own = new double[n];
    int known = 0;
    for (int i = 0; i < n; i++) {
      if (variance[i] > 0 && runs[i] > 1) {
        perRun[known] = variance[i] * runs[i];
        own[known++] = runs[i] - 1;
      }
    }
    Optional<SharedVariance> shared =
        SharedVariance.of(
            java.util.Arrays.copyOf(perRun, known), java.util.Arrays.copyOf(own, known));
    double[] drawn = variance.clone();
    double[] df = new double[n];
    for (int i = 0; i < n; i++) {
      boolean counts = variance[i] > 0 && runs[i] > 1;
      df[i] = counts ? runs[i] - 1 : Double.NaN;
      if (counts && shared.isPresent()) {
        drawn[i] = shared.get().drawn(variance[i] * runs[i], df[i]) / runs[i];
        df[i] += shared.get().df();
      }
    }
    return new RunVariances(drawn, df);
  }
}
