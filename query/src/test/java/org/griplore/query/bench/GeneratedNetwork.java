package org.griplore.query.bench;

import java.util.SplittableRandom;
import org.griplore.query.network.Arms;

/**
 * A seeded archive of one discipline with a known truth: log ratios of models that improve slowly,
 * per-arm heterogeneity, and run-level errors whose variances differ by arm and are stated.
 *
 * @param arms the results
 * @param truth true effect of each model
 * @param tauSquared true heterogeneity variance per arm
 */
public record GeneratedNetwork(Arms arms, double[] truth, double tauSquared) {

  /** Whether tests pick their models from those on sale then, or from all that ever were. */
  public enum Time {
    LOCAL,
    NONE
  }

  /**
   * @param models number of models
   * @param tests number of tests
   * @param field models in each test
   * @param time LOCAL: a model is on sale for a fifth of the archive's time
   * @param seed of the random numbers
   */
  public static GeneratedNetwork of(int models, int tests, int field, Time time, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    double heterogeneitySd = 0.02;
    double[] truth = new double[models];
    for (int m = 0; m < models; m++) {
      truth[m] = 0.1 * m / models + 0.04 * random.nextGaussian();
    }
    int n = tests * field;
    int[] test = new int[n];
    int[] model = new int[n];
    double[] y = new double[n];
    double[] variance = new double[n];
    int at = 0;
    for (int t = 0; t < tests; t++) {
      double level = random.nextGaussian();
      double typical = 0.008 + 0.012 * random.nextDouble();
      int span = time == Time.LOCAL ? Math.max(field, models / 5) : models;
      int from = (int) ((models - span) * (double) t / Math.max(1, tests - 1));
      int begin = at;
      while (at < begin + field) {
        int m = from + random.nextInt(span);
        boolean taken = false;
        for (int k = begin; k < at; k++) {
          taken |= model[k] == m;
        }
        if (taken) {
          continue;
        }
        double sd = typical * (0.7 + 0.6 * random.nextDouble());
        test[at] = t;
        model[at] = m;
        variance[at] = sd * sd;
        y[at] =
            level + truth[m] + heterogeneitySd * random.nextGaussian() + sd * random.nextGaussian();
        at++;
      }
    }
    return new GeneratedNetwork(
        new Arms(tests, models, test, model, y, variance),
        truth,
        heterogeneitySd * heterogeneitySd);
  }
}
