package org.griplore.store.vocabulary;

import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * Brings names of tyres to one form for comparing: lower case, no accents, {@code ü} and {@code ue}
 * alike, sharp s as {@code ss}, a plus sign as the word, other punctuation as a space, and letters
 * apart from digits ({@code S-100}, {@code S100} and {@code S 100} are one name). Digits and
 * numerals are kept exactly: model "4" is never model "5", and "IV" is "4" only by an alias.
 */
public final class NameKey {
  private static final Pattern MARKS = Pattern.compile("\\p{M}+");
  private static final Pattern UMLAUT = Pattern.compile("([ao])e|(?<![aeq])ue");
  private static final Pattern OTHER = Pattern.compile("[^\\p{L}\\p{Nd}]+");
  private static final Pattern BOUNDARY =
      Pattern.compile("(?<=\\p{L})(?=\\p{Nd})|(?<=\\p{Nd})(?=\\p{L})");
  private static final Pattern ROMAN = Pattern.compile("x{0,3}(ix|iv|v?i{0,3})");

  private NameKey() {}

  /** The comparing form of a name; empty when it has no letter or digit. */
  public static String of(String name) {
    String plain = name.toLowerCase(Locale.ROOT).replace("\u00df", "ss").replace("\u00f8", "o");
    plain = MARKS.matcher(Normalizer.normalize(plain, Normalizer.Form.NFKD)).replaceAll("");
    plain =
        UMLAUT.matcher(plain).replaceAll(found -> found.group(1) == null ? "u" : found.group(1));
    plain = OTHER.matcher(plain.replace("+", " plus ")).replaceAll(" ");
    return BOUNDARY.matcher(plain).replaceAll(" ").replaceAll(" +", " ").strip();
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
