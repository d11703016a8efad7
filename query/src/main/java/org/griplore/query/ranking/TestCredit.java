package org.griplore.query.ranking;

import java.util.Arrays;

/**
 * What being among the first k of one test is worth to its entries, with the ties that the test
 * has, and so what chance alone gives one of them: any of the field with the same probability.
 *
 * <p>Places 1, 2, 3, 3, 5, 6 and the first three: four of six count WHOLE; SHARED two of six count
 * as one and two of six as a half.
 *
 * @param field entries ranked, named or not
 * @param whole entries that count as one
 * @param open places within the first k that entries tie for, a number for each such tie
 * @param sharers entries that tie for them, each counting as open/sharers, below one
 */
public record TestCredit(int field, int whole, int[] open, int[] sharers) {
  private static final int[] NONE = {};

  /**
   * The credits of a test.
   *
   * @param places places of the entries that are named, 0 for those without; where fewer are named
   *     than the field has, the places within the first k that nobody named has are taken by others
   * @param top the k of the first k
   * @param ties WHOLE or SHARED
   * @throws IllegalArgumentException when the field or {@code top} is below 1, or for another way
   *     to count ties
   */
  public static TestCredit of(int[] places, int field, int top, TopShare ties) {
    if (ties != TopShare.WHOLE && ties != TopShare.SHARED) {
      throw new IllegalArgumentException("credits of tests count ties whole or shared: " + ties);
    }
    double expected = field * TopShare.chance(field, top);
    int[] sharers = Places.sharers(places);
    int whole = 0;
    double sum = 0;
    int[] open = NONE;
    int[] sharing = NONE;
    int named = 0;
    for (int i = 0; i < places.length; i++) {
      if (places[i] == 0) {
        continue;
      }
      named++;
      double credit = ties.of(places[i], sharers[i], top);
      sum += credit;
      if (credit == 1) {
        whole++;
      } else if (credit > 0 && first(places, i)) {
        open = with(open, top - places[i] + 1);
        sharing = with(sharing, sharers[i]);
      }
    }
    int others = named < field ? (int) Math.max(0, Math.round(expected - sum)) : 0;
    return new TestCredit(field, Math.min(field, whole + others), open, sharing);
  }

  private static boolean first(int[] places, int i) {
    for (int j = 0; j < i; j++) {
      if (places[j] == places[i]) {
        return false;
      }
    }
    return true;
  }

  private static int[] with(int[] values, int value) {
    int[] more = Arrays.copyOf(values, values.length + 1);
    more[values.length] = value;
    return more;
  }

  /** What a place counts in this test. */
  public double of(int place, int top, TopShare ties) {
    int room = top - place + 1;
    for (int k = 0; ties == TopShare.SHARED && k < open.length; k++) {
      if (open[k] == room) {
        return (double) room / sharers[k];
      }
    }
    return place <= top ? 1 : 0;
  }

  /** What chance alone gives an entry on average. */
  public double expected() {
    double sum = whole;
    for (int tie : open) {
      sum += tie;
    }
    return sum / field;
  }

  /** Whether some entries count as less than one. */
  boolean isShared() {
    return open.length > 0;
  }
}
