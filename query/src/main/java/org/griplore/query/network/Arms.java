package org.griplore.query.network;

import java.util.Arrays;

/**
 * Results of one discipline, a column a quantity, a row an arm (one model in one test).
 *
 * <p>A variance is that of the arm's mean from its own runs. NaN says that it is unknown. Zero is
 * taken as unknown too: a spread of nothing says that the reading was too coarse, not that the run
 * was perfect; {@link #zeroVariances()} counts them. A test and model may meet only once; repeated
 * results of one model in one test are combined before they come here.
 */
public final class Arms {
  private final int tests;
  private final int models;
  private final int[] test;
  private final int[] model;
  private final double[] y;
  private final double[] variance;
  private final double[] varianceDf;
  private final int zeroVariances;

  /** Arms whose run-level variances, where known, are known exactly. */
  public Arms(int tests, int models, int[] test, int[] model, double[] y, double[] variance) {
    this(tests, models, test, model, y, variance, nowhere(variance.length));
  }

  private static double[] nowhere(int length) {
    double[] none = new double[length];
    Arrays.fill(none, Double.NaN);
    return none;
  }

  /**
   * @param tests number of tests; test numbers run from 0
   * @param models number of models; model numbers run from 0
   * @param test test of each arm
   * @param model model of each arm
   * @param y result of each arm, plus is better, on a scale where differences mean something (log
   *     ratio, dB, points)
   * @param variance run-level variance of each arm in the square of that scale, NaN when unknown
   * @param varianceDf degrees of freedom that each variance rests on, NaN when it is exact or
   *     unknown; intervals of the runs alone use them
   * @throws IllegalArgumentException when columns differ in length, a number is out of range, a
   *     result is not finite, a variance is negative or infinite
   */
  public Arms(
      int tests,
      int models,
      int[] test,
      int[] model,
      double[] y,
      double[] variance,
      double[] varianceDf) {
    int n = y.length;
    if (test.length != n || model.length != n || variance.length != n || varianceDf.length != n) {
      throw new IllegalArgumentException(
          "Columns of an arm table differ in length: "
              + test.length
              + ", "
              + model.length
              + ", "
              + n
              + ", "
              + variance.length
              + ", "
              + varianceDf.length
              + ".");
    }
    int zeros = 0;
    for (int i = 0; i < n; i++) {
      if (test[i] < 0 || test[i] >= tests) {
        throw new IllegalArgumentException(
            "Arm " + i + " has the test " + test[i] + ", expected 0 to " + (tests - 1) + ".");
      }
      if (model[i] < 0 || model[i] >= models) {
        throw new IllegalArgumentException(
            "Arm " + i + " has the model " + model[i] + ", expected 0 to " + (models - 1) + ".");
      }
      if (!Double.isFinite(y[i])) {
        throw new IllegalArgumentException(
            "Arm " + i + " has the result " + y[i] + ", expected a finite number.");
      }
      if (variance[i] < 0 || Double.isInfinite(variance[i])) {
        throw new IllegalArgumentException(
            "Arm "
                + i
                + " has the variance "
                + variance[i]
                + ", expected none or a positive number.");
      }
      if (variance[i] == 0) {
        zeros++;
      }
    }
    this.tests = tests;
    this.models = models;
    this.test = test.clone();
    this.model = model.clone();
    this.y = y.clone();
    this.variance = variance.clone();
    this.varianceDf = varianceDf.clone();
    this.zeroVariances = zeros;
  }

  /** Number of arms. */
  public int size() {
    return y.length;
  }

  /** Number of tests, those without arms included. */
  public int tests() {
    return tests;
  }

  /** Number of models, those without arms included. */
  public int models() {
    return models;
  }

  /** Number of arms that state a variance of zero and are taken as unknown. */
  public int zeroVariances() {
    return zeroVariances;
  }

  int test(int arm) {
    return test[arm];
  }

  int model(int arm) {
    return model[arm];
  }

  double y(int arm) {
    return y[arm];
  }

  /** Positive, or NaN when unknown. */
  double variance(int arm) {
    return variance[arm] > 0 ? variance[arm] : Double.NaN;
  }

  /** Degrees of freedom behind a variance; infinite where it is exact, unknown or not stated. */
  double varianceDf(int arm) {
    return varianceDf[arm] > 0 ? varianceDf[arm] : Double.POSITIVE_INFINITY;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Arms its
        && tests == its.tests
        && models == its.models
        && Arrays.equals(test, its.test)
        && Arrays.equals(model, its.model)
        && Arrays.equals(y, its.y)
        && Arrays.equals(variance, its.variance)
        && Arrays.equals(varianceDf, its.varianceDf);
  }

  @Override
  public int hashCode() {
    int places = 31 * Arrays.hashCode(test) + Arrays.hashCode(model);
    return 31 * (31 * places + Arrays.hashCode(y)) + Arrays.hashCode(variance);
  }
}
