package org.griplore.query.network;

import java.util.Arrays;

/**
 * The arms that carry information on models, sorted by test and, inside a test, by model, so that
 * the order of the input changes nothing. Tests with a single arm are left out and counted.
 */
final class TestRows {
  /** Number of tests that hold at least two arms. */
  final int tests;

  /** Number of arms in those tests. */
  final int arms;

  /** Tests whose only arm says nothing about models. */
  final int singleArmTests;

  /** First arm of each kept test; one longer than the number of tests. */
  final int[] start;

  /** Number of each kept test in the input. */
  final int[] testNumber;

  final int[] model;
  final double[] y;

  /** Positive, or NaN when unknown. */
  final double[] variance;

  /** Degrees of freedom behind each variance; infinite where it is exact or unknown. */
  final double[] varianceDf;

  /** True for each model of the input that has any arm at all. */
  final boolean[] seen;

  /**
   * @throws IllegalArgumentException when one test holds the same model twice
   */
  TestRows(Arms input) {
    int n = input.size();
    seen = new boolean[input.models()];
    int[] byModel = countingOrder(n, input.models(), null, input, false);
    int[] order = countingOrder(n, input.tests(), byModel, input, true);
    int[] size = new int[input.tests()];
    for (int i = 0; i < n; i++) {
      size[input.test(i)]++;
      seen[input.model(i)] = true;
    }
    int kept = 0;
    int single = 0;
    int total = 0;
    for (int s : size) {
      if (s >= 2) {
        kept++;
        total += s;
      } else if (s == 1) {
        single++;
      }
    }
    tests = kept;
    arms = total;
    singleArmTests = single;
    start = new int[kept + 1];
    testNumber = new int[kept];
    model = new int[total];
    y = new double[total];
    variance = new double[total];
    varianceDf = new double[total];
    int at = 0;
    int t = 0;
    for (int i = 0; i < n; ) {
      int test = input.test(order[i]);
      int end = i + size[test];
      if (size[test] >= 2) {
        start[t] = at;
        testNumber[t++] = test;
        for (int j = i; j < end; j++) {
          int arm = order[j];
          if (j > i && input.model(arm) == input.model(order[j - 1])) {
            throw new IllegalArgumentException(
                "Test "
                    + test
                    + " holds model "
                    + input.model(arm)
                    + " twice; results of one model in one test are combined first.");
          }
          model[at] = input.model(arm);
          y[at] = input.y(arm);
          varianceDf[at] = input.varianceDf(arm);
          variance[at++] = input.variance(arm);
        }
      }
      i = end;
    }
    start[kept] = at;
  }

  private static int[] countingOrder(int n, int keys, int[] from, Arms input, boolean byTest) {
    int[] next = new int[keys + 1];
    for (int i = 0; i < n; i++) {
      next[(byTest ? input.test(i) : input.model(i)) + 1]++;
    }
    for (int k = 0; k < keys; k++) {
      next[k + 1] += next[k];
    }
    int[] order = new int[n];
    for (int i = 0; i < n; i++) {
      int arm = from == null ? i : from[i];
      order[next[byTest ? input.test(arm) : input.model(arm)]++] = arm;
    }
    return order;
  }

  /** Number of known variances. */
  int knownVariances() {
    int known = 0;
    for (double v : variance) {
      if (v > 0) {
        known++;
      }
    }
    return known;
  }

  /** Median of the known variances; there must be one. */
  double medianVariance() {
    double[] known = Arrays.stream(variance).filter(v -> v > 0).sorted().toArray();
    int half = known.length / 2;
    return known.length % 2 == 1 ? known[half] : (known[half - 1] + known[half]) / 2;
  }
}
