package org.griplore.query.directory;

import org.griplore.store.vocabulary.NameKey;

/** How well a word that is being typed fits a word of a name. */
final class Spelling {
  private static final double SAME = 1.0;
  private static final double BEGINS = 0.9;
  private static final double INSIDE = 0.55;
  private static final double NEARLY = 0.7;
  private static final double A_LETTER = 0.1;

  /** Words this long may have one letter wrong, and two from {@link #TWO_WRONG} on. */
  private static final int ONE_WRONG = 4;

  private static final int TWO_WRONG = 7;
  private static final int INSIDE_FROM = 3;

  private Spelling() {}

  /**
   * From 0 (no fit) to 1 (the same). A word need not be typed to its end. Numbers, numerals and
   * single letters tell generations apart and are never taken for misspelt.
   */
  static double fit(String typed, String word) {
    if (word.startsWith(typed)) {
      return word.length() == typed.length() ? SAME : BEGINS;
    }
    if (NameKey.tellsGenerations(typed) || NameKey.tellsGenerations(word)) {
      return 0;
    }
    int allowed = typed.length() >= TWO_WRONG ? 2 : typed.length() >= ONE_WRONG ? 1 : 0;
    if (allowed > 0 && word.length() >= typed.length() - allowed) {
      int wrong = distanceToBeginning(typed, word, allowed);
      if (wrong <= allowed) {
        return NEARLY - A_LETTER * (wrong - 1);
      }
    }
    return typed.length() >= INSIDE_FROM && word.contains(typed) ? INSIDE : 0;
  }

  /**
   * Letters to add, drop, change or swap with their neighbour until the typed word is the beginning
   * of the other (Damerau 1964; each letter is touched once). Stops counting above {@code most}.
   */
  static int distanceToBeginning(String typed, String word, int most) {
    int length = Math.min(word.length(), typed.length() + most);
    int[] before = new int[length + 1];
    int[] last = new int[length + 1];
    int[] now = new int[length + 1];
    for (int j = 0; j <= length; j++) {
      last[j] = j;
    }
    for (int i = 1; i <= typed.length(); i++) {
      now[0] = i;
      int least = i;
      for (int j = 1; j <= length; j++) {
        int change = typed.charAt(i - 1) == word.charAt(j - 1) ? 0 : 1;
        int best = Math.min(Math.min(last[j] + 1, now[j - 1] + 1), last[j - 1] + change);
        if (i > 1
            && j > 1
            && typed.charAt(i - 1) == word.charAt(j - 2)
            && typed.charAt(i - 2) == word.charAt(j - 1)) {
          best = Math.min(best, before[j - 2] + 1);
        }
        now[j] = best;
        least = Math.min(least, best);
      }
      if (least > most) {
        return most + 1;
      }
      int[] spare = before;
      before = last;
      last = now;
      now = spare;
    }
    int least = most + 1;
    for (int j = 0; j <= length; j++) {
      least = Math.min(least, last[j]);
    }
    return least;
  }
}
