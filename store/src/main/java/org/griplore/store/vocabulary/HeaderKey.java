package org.griplore.store.vocabulary;

import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * Brings header texts to one form for comparing: lower case, no accents, the German umlaut and its
 * two-letter spelling alike ({@code ä}, {@code ae} and {@code a} become {@code a}), sharp s as
 * {@code ss}, everything that is no letter or digit as one space, and what stands in brackets left
 * out (units do).
 */
public final class HeaderKey {
  private static final Pattern BRACKETS = Pattern.compile("\\([^)]*\\)|\\[[^\\]]*\\]");
  private static final Pattern MARKS = Pattern.compile("\\p{M}+");
  private static final Pattern OTHER = Pattern.compile("[^\\p{L}\\p{Nd}]+");
  private static final Pattern UMLAUT = Pattern.compile("([ao])e|(?<![aeq])ue");

  private HeaderKey() {}

  /** The comparing form of a header. */
  public static String of(String header) {
    String plain = BRACKETS.matcher(header).replaceAll(" ");
    plain = plain.toLowerCase(Locale.ROOT).replace("\u00df", "ss").replace("\u00f8", "o");
    plain = MARKS.matcher(Normalizer.normalize(plain, Normalizer.Form.NFD)).replaceAll("");
    plain =
        UMLAUT.matcher(plain).replaceAll(found -> found.group(1) == null ? "u" : found.group(1));
    return OTHER.matcher(plain).replaceAll(" ").strip();
  }
}
