package org.griplore.store.tyre;

import java.util.Map;
import java.util.OptionalInt;
import java.util.TreeMap;

/**
 * The load index of a tyre: the greatest load one tyre carries.
 *
 * <p>Source of the table: ISO 4000-1 and UN Regulation No. 30 annex 4, read in two public tables
 * that agree for 71 to 110; the rest in one. It follows 45 x 10^(LI/80) kg within 1.5 %, which
 * shows typing errors in tables taken from elsewhere.
 */
public final class LoadIndex {
  private static final int FIRST = 70;
  private static final int[] KG = {
    335, 345, 355, 365, 375, 387, 400, 412, 425, 437, // 70 to 79
    450, 462, 475, 487, 500, 515, 530, 545, 560, 580, // 80 to 89
    600, 615, 630, 650, 670, 690, 710, 730, 750, 775, // 90 to 99
    800, 825, 850, 875, 900, 925, 950, 975, 1000, 1030, // 100 to 109
    1060, 1090, 1120, 1150, 1180, 1215 // 110 to 115
  };
  private static final double TYPING_ERROR = 0.015;

  private LoadIndex() {}

  /** The load in kg; empty outside 70 to 115, which the table does not cover. */
  public static OptionalInt kilograms(int index) {
    int position = index - FIRST;
    return position < 0 || position >= KG.length
        ? OptionalInt.empty()
        : OptionalInt.of(KG[position]);
  }

  /**
   * The entries of a table from elsewhere that cannot be right: further than 1.5 % from the
   * geometric law.
   *
   * @param table kilograms by load index
   * @return the doubtful entries, with the load that the law gives, rounded to a kilogram
   */
  public static Map<Integer, Integer> doubtful(Map<Integer, Integer> table) {
    Map<Integer, Integer> doubtful = new TreeMap<>();
    table.forEach(
        (index, kilograms) -> {
          double law = 45 * Math.pow(10, index / 80.0);
          if (Math.abs(kilograms - law) > TYPING_ERROR * law) {
            doubtful.put(index, (int) Math.round(law));
          }
        });
    return doubtful;
  }
}
