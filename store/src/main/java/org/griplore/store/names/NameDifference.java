package org.griplore.store.names;

/**
 * What sets a written name apart from a known one, in one place.
 *
 * @param kind what sort of difference it is
 * @param written the words as written, in their comparing form; empty when there is none
 * @param known the words of the known name; empty when there is none
 */
public record NameDifference(Kind kind, String written, String known) {
  /**
   * Sorts of differences. A slip is what a hand, an ear or a scanner gets wrong; all others may as
   * well set two tyres apart, so that they are offered and never assumed. How much of the likeness
   * is left after one is common practice, no source.
   */
  public enum Kind {
    /** Two neighbouring letters changed places. */
    SWAPPED(0.96, true, "%s for %s"),
    /** A letter once for twice, or twice for once. */
    DOUBLED(0.97, true, "%s for %s"),
    /** A letter too few or too many, inside the word. */
    LETTER_COUNT(0.93, true, "%s for %s"),
    /** A letter for one that sounds or looks like it, inside the word. */
    LIKE_LETTER(0.94, true, "%s for %s"),
    /** Other letters for the same sound, or taken for one another by a scanner. */
    SAME_SOUND(0.94, true, "%s for %s"),
    /** The maker's name misspelt. */
    MAKER(0.94, true, "%s for %s"),
    /** A digit for a letter inside a word. */
    SCANNED(0.95, true, "%s for %s"),
    /** Words run together or set apart. */
    SPACING(0.98, true, "spaces differ"),
    /** The maker stands elsewhere in the name. */
    MAKER_PLACE(0.97, true, "the maker stands elsewhere"),

    /** Another letter that is not like it. */
    OTHER_LETTER(0.86, false, "%s for %s"),
    /** The first or last letter of a word, which often sets models apart. */
    EDGE_LETTER(0.85, false, "%s for %s, a letter that may set models apart"),
    /** Two letters of a word. */
    TWO_LETTERS(0.78, false, "%s for %s"),
    /** A word cut short, or initials. */
    SHORTENED(0.72, false, "%s may be short for %s"),
    /** The words in another order. */
    ORDER(0.9, false, "the same words in another order"),
    /** Written without the maker. */
    NO_MAKER(0.9, false, "the maker is not written"),
    /** One number in Roman and in Arabic figures. */
    FIGURES(0.88, false, "%s for %s: the same number, written otherwise"),
    /** A digit for a letter, or a letter for a digit, in a mark. */
    SCANNED_MARK(0.9, false, "%s for %s"),
    /** A mark more: a suffix, a numeral, a digit. */
    MARK_MORE(0.65, false, "the same but for the mark %1$s"),
    /** A mark less. */
    MARK_LESS(0.65, false, "the same without the mark %2$s"),
    /** Another mark: another generation or version. */
    OTHER_MARK(0.5, false, "the same words, but another generation or version (%s for %s)"),
    /** A word more. */
    WORD_MORE(0.5, false, "%1$s is not in that name"),
    /** A word less. */
    WORD_LESS(0.5, false, "%2$s is missing");

    private final double keeps;
    private final boolean slip;
    private final String words;

    Kind(double keeps, boolean slip, String words) {
      this.keeps = keeps;
      this.slip = slip;
      this.words = words;
    }

    /** What share of the likeness it leaves, from 0 to 1. */
    public double keeps() {
      return keeps;
    }

    /** Whether it is a slip. */
    public boolean slip() {
      return slip;
    }
  }

  /** The difference in words. */
  public String sentence() {
    return String.format(kind.words, quoted(written), quoted(known));
  }

  private static String quoted(String words) {
    return "\"" + words + "\"";
  }
}
