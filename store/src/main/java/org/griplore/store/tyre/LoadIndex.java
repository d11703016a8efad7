package org.griplore.store.tyre;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.TreeMap;
import org.griplore.store.vocabulary.Problem;

/**
 * Load indices and the load on one tyre in kg, as tabulated in ISO 4000-1 and UN Regulation No. 30,
 * annex 4. The table follows 45 * 10^(index/80) kg within 1.5 %.
 */
public final class LoadIndex {
  private static final int FIRST = 70;
  private static final int[] KILOGRAMS = {
    335, 345, 355, 365, 375, 387, 400, 412, 425, 437, // 70 to 79
    450, 462, 475, 487, 500, 515, 530, 545, 560, 580, // 80 to 89
    600, 615, 630, 650, 670, 690, 710, 730, 750, 775, // 90 to 99
    800, 825, 850, 875, 900, 925, 950, 975, 1000, 1030, // 100 to 109
    1060, 1090, 1120, 1150, 1180, 1215 // 110 to 115
  };
  private static final double TOLERANCE = 0.015;

  private LoadIndex() {}

  /** The load in kg; empty outside 70 to 115. */
  public static OptionalInt kilograms(int index) {
    int place = index - FIRST;
    return place < 0 || place >= KILOGRAMS.length
        ? OptionalInt.empty()
        : OptionalInt.of(KILOGRAMS[place]);
  }

  /** The load that the law of the table gives, in kg: 45 * 10^(index/80). */
  public static double smoothKilograms(int index) {
    return 45 * Math.pow(10, index / 80.0);
  }

  /**
   * Typing errors in a table from elsewhere: entries that differ from the table here, and, beyond
   * it, entries further than 1.5 % from the smooth law.
   *
   * @param table load in kg by index
   */
  public static List<Problem> problemsIn(Map<Integer, Integer> table) {
    List<Problem> problems = new ArrayList<>();
    for (Map.Entry<Integer, Integer> entry : new TreeMap<>(table).entrySet()) {
      int index = entry.getKey();
      int found = entry.getValue();
      OptionalInt known = kilograms(index);
      double smooth = smoothKilograms(index);
      if (known.isPresent() && known.getAsInt() != found) {
        problems.add(problem(index, found, known.getAsInt() + " kg"));
      } else if (known.isEmpty() && Math.abs(found - smooth) > TOLERANCE * smooth) {
        problems.add(problem(index, found, "about " + Math.round(smooth) + " kg"));
      }
    }
    return problems;
  }

  private static Problem problem(int index, int found, String expected) {
    return new Problem("load index " + index, found + " kg", expected);
  }
}
