package org.griplore.query.outlook;

import java.time.LocalDate;

/**
 * One test in one discipline.
 *
 * @param test position in the evidence
 * @param first the earliest day it can have been run; null when it is not dated
 * @param last the latest
 * @param models positions of its models
 * @param entries positions of its entries
 * @param y results on the discipline's scale, plus is better
 * @param runs runs behind each; 0 when not stated
 * @param scatter variance of single runs of each; NaN when not stated
 */
record TestBlock(
    int test,
    LocalDate first,
    LocalDate last,
    int[] models,
    int[] entries,
    double[] y,
    int[] runs,
    double[] scatter) {
  /** Differences inside it: one less than its models. */
  int contrasts() {
    return models.length - 1;
  }

  double mean() {
    double sum = 0;
    for (double value : y) {
      sum += value;
    }
    return sum / y.length;
  }
}
