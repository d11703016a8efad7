package org.griplore.query.statistics;

/** What every method asks of its numbers. */
final class Checks {
  private Checks() {}

  static void level(double level) {
    if (!(level > 0 && level < 1)) {
      throw new IllegalArgumentException("a level is between 0 and 1: " + level);
    }
  }

  static void finite(String what, double[] values) {
    for (int i = 0; i < values.length; i++) {
      if (!Double.isFinite(values[i])) {
        throw new IllegalArgumentException("%s %d is not a number".formatted(what, i + 1));
      }
    }
  }

  static void positive(String what, double[] values) {
    for (int i = 0; i < values.length; i++) {
      if (!(values[i] > 0 && Double.isFinite(values[i]))) {
        throw new IllegalArgumentException(
            "%s %d is not positive: %s".formatted(what, i + 1, values[i]));
      }
    }
  }

  static void sameLength(String what, int first, int second) {
    if (first != second) {
      throw new IllegalArgumentException("%s: %d against %d".formatted(what, first, second));
    }
  }

  static void atLeast(int count, int least, String what) {
    if (count < least) {
      throw new IllegalArgumentException("%d %s, at least %d needed".formatted(count, what, least));
    }
  }
}
