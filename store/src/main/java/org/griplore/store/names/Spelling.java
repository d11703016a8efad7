package org.griplore.store.names;

import org.griplore.store.names.NameDifference.Kind;
import org.griplore.store.vocabulary.NameKey;

/**
 * How words of names differ in their letters. Numbers, numerals and words of up to three letters
 * tell models apart and are never taken for misspelt.
 */
public final class Spelling {
  private static final double SAME = 1.0;
  private static final double BEGINS = 0.9;
  private static final double INSIDE = 0.55;
  private static final double NEARLY = 0.7;
  private static final double A_LETTER = 0.1;

  /** Words this long may have one letter wrong, and two from {@link #TWO_WRONG} on. */
  private static final int ONE_WRONG = 4;

  private static final int TWO_WRONG = 7;
  private static final int INSIDE_FROM = 3;

  /** A shorter word that differs is another word. */
  private static final int MISSPELT_FROM = 5;

  private static final String VOWELS = "aeiouy";

  /** Consonants that sound or look alike (common practice, no source). */
  private static final String[] ALIKE = {"ckq", "szc", "fvw", "dt", "bp", "mn", "ijl"};

  private Spelling() {}

  /**
   * How well a word that is being typed fits a word of a name, from 0 (not at all) to 1 (the same).
   * A word need not be typed to its end.
   */
  public static double fit(String typed, String word) {
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

  /** Whether a word marks a model's generation or version: a number, a numeral, a short code, +. */
  static boolean isMark(String word) {
    return word.length() <= 3 || NameKey.tellsGenerations(word) || word.equals("plus");
  }

  /**
   * What sets two words of a model's name apart; null when they are two words altogether.
   *
   * @param known the word of the known name
   * @param last whether a name ends with the word: a letter more there is a mark, though it be
   *     twice
   */
  static Kind difference(String written, String known, boolean last) {
    int shorter = Math.min(written.length(), known.length());
    if (isMark(written) || isMark(known) || Math.abs(written.length() - known.length()) > 2) {
      return null;
    }
    boolean edges =
        written.charAt(0) == known.charAt(0)
            && written.charAt(written.length() - 1) == known.charAt(known.length() - 1);
    if (squeezed(written).equals(squeezed(known))) {
      return isSuffixDoubled(written, known, last) ? Kind.EDGE_LETTER : Kind.DOUBLED;
    }
    int distance = distance(written, known, 2);
    if (distance > 2 || (distance == 2 && shorter < TWO_WRONG)) {
      return shorter >= MISSPELT_FROM && edges && isSameSound(written, known)
          ? Kind.SAME_SOUND
          : null;
    }
    if (shorter < MISSPELT_FROM - 1) {
      return null;
    }
    if (distance == 2) {
      return edges && isSameSound(written, known) ? Kind.SAME_SOUND : Kind.TWO_LETTERS;
    }
    return Math.max(written.length(), known.length()) < MISSPELT_FROM
        ? Kind.OTHER_LETTER
        : ofOneLetter(written, known);
  }

  private static Kind ofOneLetter(String written, String known) {
    String longer = written.length() > known.length() ? written : known;
    int begin = commonBeginning(written, known);
    if (written.length() == known.length()) {
      int last = written.length() - 1;
      if (begin < last
          && written.charAt(begin) == known.charAt(begin + 1)
          && written.charAt(begin + 1) == known.charAt(begin)) {
        return Kind.SWAPPED;
      }
      if (begin == 0 || begin == last) {
        return Kind.EDGE_LETTER;
      }
      return isAlike(written.charAt(begin), known.charAt(begin))
          ? Kind.LIKE_LETTER
          : Kind.OTHER_LETTER;
    }
    boolean edge =
        begin == longer.length() - 1 || longer.substring(1).equals(shorterOf(written, known));
    if (edge) {
      return Kind.EDGE_LETTER;
    }
    return longer.length() > MISSPELT_FROM ? Kind.LETTER_COUNT : Kind.OTHER_LETTER;
  }

  /** What sets two makers' names apart, of which slips are likelier; null when they are two. */
  static Kind ofMakers(String written, String known) {
    int shorter = Math.min(written.length(), known.length());
    if (shorter < ONE_WRONG) {
      return null;
    }
    int allowed = shorter > TWO_WRONG ? 2 : 1;
    return distance(written, known, allowed) <= allowed ? Kind.MAKER : null;
  }

  /** Whether a word is the beginning of another, or the initials that people make of it. */
  static boolean isShort(String written, String known) {
    if (written.length() >= known.length() || known.length() < ONE_WRONG || written.length() < 2) {
      return false;
    }
    if (!Character.isLetter(written.charAt(0)) || written.charAt(0) != known.charAt(0)) {
      return false;
    }
    if (written.length() > 3) {
      return known.startsWith(written) && known.length() - written.length() > 1;
    }
    int at = 0;
    for (int i = 0; i < known.length() && at < written.length(); i++) {
      at += known.charAt(i) == written.charAt(at) ? 1 : 0;
    }
    return at == written.length();
  }

  private static String shorterOf(String some, String other) {
    return some.length() < other.length() ? some : other;
  }

  private static int commonBeginning(String some, String other) {
    int begin = 0;
    while (begin < Math.min(some.length(), other.length())
        && some.charAt(begin) == other.charAt(begin)) {
      begin++;
    }
    return begin;
  }

  /** A last letter twice that could be a suffix, a plural or a numeral. */
  private static boolean isSuffixDoubled(String written, String known, boolean last) {
    String longer = written.length() > known.length() ? written : known;
    return longer.length() == shorterOf(written, known).length() + 1
        && longer.startsWith(shorterOf(written, known))
        && (last || "sivx".indexOf(longer.charAt(longer.length() - 1)) >= 0);
  }

  private static boolean isAlike(char some, char other) {
    if (VOWELS.indexOf(some) >= 0 && VOWELS.indexOf(other) >= 0) {
      return true;
    }
    for (String group : ALIKE) {
      if (group.indexOf(some) >= 0 && group.indexOf(other) >= 0) {
        return true;
      }
    }
    return false;
  }

  private static boolean isSameSound(String some, String other) {
    return sound(some).equals(sound(other)) || scanned(some).equals(scanned(other));
  }

  private static String sound(String word) {
    return squeezed(
        word.replace("ph", "f")
            .replace("th", "t")
            .replace("ck", "k")
            .replace("qu", "kv")
            .replace("x", "ks")
            .replace('c', 'k')
            .replace('q', 'k')
            .replace('w', 'v')
            .replace('z', 's')
            .replace('y', 'i')
            .replace('j', 'i'));
  }

  private static String scanned(String word) {
    return word.replace("rn", "m").replace("cl", "d").replace("vv", "w").replace('l', 'i');
  }

  private static String squeezed(String word) {
    StringBuilder squeezed = new StringBuilder(word.length());
    for (int i = 0; i < word.length(); i++) {
      if (i == 0 || word.charAt(i) != word.charAt(i - 1)) {
        squeezed.append(word.charAt(i));
      }
    }
    return squeezed.toString();
  }

  /**
   * Letters to add, drop, change or swap with their neighbour until one word is the other (Damerau
   * 1964; each letter is touched once). Stops counting above {@code most}.
   */
  static int distance(String some, String other, int most) {
    if (Math.abs(some.length() - other.length()) > most) {
      return most + 1;
    }
    int[] last = lastRow(some, other, other.length(), most);
    return last == null ? most + 1 : Math.min(most + 1, last[other.length()]);
  }

  /** The same until the typed word is the beginning of the other. */
  static int distanceToBeginning(String typed, String word, int most) {
    int length = Math.min(word.length(), typed.length() + most);
    int[] last = lastRow(typed, word, length, most);
    int least = most + 1;
    for (int j = 0; last != null && j <= length; j++) {
      least = Math.min(least, last[j]);
    }
    return least;
  }

  /** Distances of a word to all beginnings of another; null once all are above {@code most}. */
  private static int[] lastRow(String typed, String word, int length, int most) {
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
        return null;
      }
      int[] spare = before;
      before = last;
      last = now;
      now = spare;
    }
    return last;
  }
}
