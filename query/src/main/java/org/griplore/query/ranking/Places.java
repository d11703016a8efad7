package org.griplore.query.ranking;

import java.util.Arrays;
import org.griplore.store.vocabulary.Direction;

/**
 * Standard competition ranking: equal values share the better place and the next place is skipped
 * (1, 2, 2, 4). Values are equal when they are the same number as published.
 */
public final class Places {
  /** Up to here, counting better values directly is faster than sorting. */
  private static final int SMALL = 24;

  private Places() {}

  /**
   * Ranks the first values of an array.
   *
   * @param values NaN for those that are not ranked
   * @param count how many values are looked at
   * @param better which way is better
   * @param places receives the places, 0 for those not ranked; at least {@code count} long
   */
  public static void rank(double[] values, int count, Direction better, int[] places) {
    if (count <= SMALL) {
      byCounting(values, count, better == Direction.HIGH, places);
    } else {
      bySorting(values, count, better.sign(), places);
    }
  }

  /**
   * The places of values all of which are ranked.
   *
   * @throws IllegalArgumentException when one is NaN
   */
  public static int[] of(double[] values, Direction better) {
    for (double value : values) {
      if (Double.isNaN(value)) {
        throw new IllegalArgumentException("a missing value has no place");
      }
    }
    int[] places = new int[values.length];
    rank(values, values.length, better, places);
    return places;
  }

  /**
   * How many entries have each entry's place, itself included.
   *
   * @param places 0 for those not ranked, which get 0
   */
  public static int[] sharers(int[] places) {
    int most = 0;
    for (int place : places) {
      most = Math.max(most, place);
    }
    int[] having = new int[most + 1];
    for (int place : places) {
      having[place]++;
    }
    int[] sharers = new int[places.length];
    for (int i = 0; i < places.length; i++) {
      sharers[i] = places[i] == 0 ? 0 : having[places[i]];
    }
    return sharers;
  }

  private static void byCounting(double[] values, int count, boolean highIsBetter, int[] places) {
    for (int i = 0; i < count; i++) {
      double value = values[i];
      int better = 0;
      for (int j = 0; j < count; j++) {
        if (highIsBetter ? values[j] > value : values[j] < value) {
          better++;
        }
      }
      places[i] = Double.isNaN(value) ? 0 : better + 1;
    }
  }

  private static void bySorting(double[] values, int count, int sign, int[] places) {
    double[] best = new double[count];
    int ranked = 0;
    for (int i = 0; i < count; i++) {
      if (!Double.isNaN(values[i])) {
        best[ranked++] = -sign * values[i];
      }
    }
    Arrays.sort(best, 0, ranked);
    for (int i = 0; i < count; i++) {
      places[i] = Double.isNaN(values[i]) ? 0 : firstIndex(best, ranked, -sign * values[i]) + 1;
    }
  }

  private static int firstIndex(double[] sorted, int count, double value) {
    int low = 0;
    int high = count;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (sorted[middle] < value) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
