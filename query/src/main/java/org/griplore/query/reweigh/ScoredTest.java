package org.griplore.query.reweigh;

import org.griplore.query.ranking.Places;
import org.griplore.store.vocabulary.Direction;

/**
 * One past test under the user's weights.
 *
 * @param test position in the evidence
 * @param entries the tyres ranked, by position in the evidence
 * @param scores a row a tyre, a column a discipline: difference from the test's mean over the usual
 *     spread within tests, plus is better; NaN where missing
 * @param weights one a discipline, 0 where the test does not have it
 */
record ScoredTest(int test, int[] entries, double[][] scores, double[] weights) {
  /** How many tyres are ranked. */
  int field() {
    return entries.length;
  }

  /** Places by the weighted mean of the scores that a tyre has; equal ones share the better. */
  int[] places() {
    double[] totals = new double[entries.length];
    for (int i = 0; i < totals.length; i++) {
      totals[i] = total(scores[i]);
    }
    int[] places = new int[totals.length];
    Places.rank(totals, totals.length, Direction.HIGH, places);
    return places;
  }

  private double total(double[] own) {
    double sum = 0;
    double weight = 0;
    for (int d = 0; d < own.length; d++) {
      if (!Double.isNaN(own[d])) {
        sum += weights[d] * own[d];
        weight += weights[d];
      }
    }
    return sum / weight;
  }
}
