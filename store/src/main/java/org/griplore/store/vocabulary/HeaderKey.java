package org.griplore.store.vocabulary;

import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reduces a header or title to the words that matter, so that spellings of one header meet: case,
 * accents, punctuation and a unit in brackets fall away, {@code ß} is {@code ss}, and {@code ü},
 * {@code ue} and {@code u} are one (likewise ä and ö). A key is for comparing, never for showing.
 */
public final class HeaderKey {
  private static final Pattern BRACKETED =
      Pattern.compile("\\(((?:[^()]|\\([^()]*\\))*)\\)|\\[([^\\[\\]]*)\\]");
  private static final Pattern MARKS = Pattern.compile("\\p{M}+");
  private static final Pattern NOT_WORD = Pattern.compile("[^\\p{L}\\p{Nd}]+");

  private HeaderKey() {}

  /** The key: words of lower-case letters and digits with one blank between; may be empty. */
  public static String of(String header) {
    Matcher brackets = BRACKETED.matcher(header);
    String bare =
        brackets.replaceAll(
            found -> {
              String inner = found.group(1) != null ? found.group(1) : found.group(2);
              return UnitWords.isUnit(inner) && !isFrenchDry(inner)
                  ? " "
                  : Matcher.quoteReplacement(found.group());
            });
    return NOT_WORD.matcher(fold(bare)).replaceAll(" ").strip();
  }

  /** The key's words in order. */
  public static List<String> words(String header) {
    String key = of(header);
    return key.isEmpty() ? List.of() : List.of(key.split(" "));
  }

  /** Folds letters only: case, accents, ligatures and the German ae, oe, ue. */
  static String fold(String text) {
    String plain =
        MARKS
            .matcher(Normalizer.normalize(text, Normalizer.Form.NFKD))
            .replaceAll("")
            .toLowerCase(Locale.ROOT);
    return plain
        .replace("ß", "ss")
        .replace('ø', 'o')
        .replace("æ", "a")
        .replace("œ", "o")
        .replace("ae", "a")
        .replace("oe", "o")
        .replace("ue", "u");
  }

  /** {@code (sec)} may be the French word for dry; as a unit it does no harm as a word. */
  private static boolean isFrenchDry(String inner) {
    return inner.strip().toLowerCase(Locale.ROOT).equals("sec");
  }
}
