package org.griplore.store.vocabulary;

import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * Brings names of tyres to one form for comparing: lower case, no accents, {@code ü} and {@code ue}
 * alike, sharp s as {@code ss}, a plus sign as the word, trade mark signs and apostrophes within a
 * word as nothing, other punctuation as a space, and letters apart from digits ({@code S-100},
 * {@code S100} and {@code S 100} are one name). Full-width letters and digits are plain ones.
 * Digits and numerals are kept exactly: model "4" is never model "5", and "IV" is "4" only by an
 * alias.
 */
public final class NameKey {
  /** Accents of Latin, Greek and Cyrillic letters; signs of other scripts make other letters. */
  private static final Pattern ACCENTS = Pattern.compile("[\\u0300-\\u036f]+");

  private static final Pattern TRADE_MARKS =
      Pattern.compile("[\u2122\u2120\u00ae\u00a9\u24c7\u24b8]");
  private static final Pattern APOSTROPHE =
      Pattern.compile("(?<=\\p{L})['\u2019`\u00b4](?=\\p{L}{2})");

  /** Letters that are no plain letter with an accent. */
  private static final Map<Character, String> LETTERS =
      Map.ofEntries(
          Map.entry('\u00df', "ss"),
          Map.entry('\u00f8', "o"),
          Map.entry('\u00e6', "a"),
          Map.entry('\u0153', "o"),
          Map.entry('\u0142', "l"),
          Map.entry('\u0111', "d"),
          Map.entry('\u00f0', "d"),
          Map.entry('\u00fe', "th"),
          Map.entry('\u0131', "i"),
          Map.entry('\u0127', "h"),
          Map.entry('+', " plus "),
          Map.entry('&', " and "));

  private static final Pattern UMLAUT = Pattern.compile("([ao])e|(?<![aeq])ue");
  private static final Pattern OTHER = Pattern.compile("[^\\p{L}\\p{Nd}]+");
  private static final Pattern BOUNDARY =
      Pattern.compile("(?<=\\p{L})(?=\\p{Nd})|(?<=\\p{Nd})(?=\\p{L})");
  private static final Pattern ROMAN = Pattern.compile("x{0,3}(ix|iv|v?i{0,3})");

  private NameKey() {}

  /** The comparing form of a name; empty when it has no letter or digit. */
  public static String of(String name) {
    String plain = TRADE_MARKS.matcher(name).replaceAll("");
    plain = APOSTROPHE.matcher(plain).replaceAll("");
    plain = Normalizer.normalize(plain, Normalizer.Form.NFKC).toLowerCase(Locale.ROOT);
    if (!isPlain(plain)) {
      plain = Normalizer.normalize(plain, Normalizer.Form.NFKD);
      plain = ACCENTS.matcher(plain).replaceAll("");
      plain = spelt(Normalizer.normalize(plain, Normalizer.Form.NFC));
    }
    plain =
        UMLAUT.matcher(plain).replaceAll(found -> found.group(1) == null ? "u" : found.group(1));
    plain = OTHER.matcher(plain).replaceAll(" ");
    return BOUNDARY.matcher(plain).replaceAll(" ").replaceAll(" +", " ").strip();
  }

  private static boolean isPlain(String text) {
    return text.chars().allMatch(letter -> letter < 128 && letter != '+' && letter != '&');
  }

  private static String spelt(String text) {
    StringBuilder spelt = new StringBuilder(text.length() + 8);
    for (int i = 0; i < text.length(); i++) {
      String letters = LETTERS.get(text.charAt(i));
      if (letters == null) {
        spelt.append(text.charAt(i));
      } else {
        spelt.append(letters);
      }
    }
    return spelt.toString();
  }

  /** The words of a name in its comparing form. */
  public static List<String> words(String name) {
    String key = of(name);
    return key.isEmpty() ? List.of() : List.of(key.split(" "));
  }

  /**
   * Whether a word of a comparing form can tell one generation from another: a number, a Roman
   * numeral, or a single letter. Such words are never taken for misspelt.
   */
  public static boolean tellsGenerations(String word) {
    return Character.isDigit(word.charAt(0)) || word.length() == 1 || ROMAN.matcher(word).matches();
  }
}
