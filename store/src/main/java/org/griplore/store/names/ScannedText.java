package org.griplore.store.names;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.griplore.store.names.NameDifference.Kind;
import org.griplore.store.vocabulary.NameKey;

/**
 * What a name could be when a scanner, or a hand in haste, took digits for letters or letters for
 * digits: {@code Velm0ra}, {@code S-1OO}.
 *
 * @param words the words, put right
 * @param difference what was put right
 */
record ScannedText(List<String> words, NameDifference difference) {
  private static final Pattern DIGIT_IN_WORD =
      Pattern.compile("(?<=\\p{L})[01568](?=\\p{L}\\p{L})|(?<=\\p{L}\\p{L})[01568](?=\\p{L})");
  private static final Pattern LETTER_IN_NUMBER = Pattern.compile("(?<=\\d)[OoIlSB]+(?!\\p{L})");
  private static final String DIGITS = "01568";
  private static final List<String> LETTERS = List.of("oisgb", "olsgb");

  /** The readings of a name with digits and letters that were taken for one another. */
  static List<ScannedText> of(String written) {
    List<ScannedText> readings = new ArrayList<>();
    for (String letters : LETTERS) {
      String word =
          DIGIT_IN_WORD
              .matcher(written)
              .replaceAll(
                  digit -> String.valueOf(letters.charAt(DIGITS.indexOf(digit.group().charAt(0)))));
      add(readings, written, word, Kind.SCANNED);
    }
    String number =
        LETTER_IN_NUMBER
            .matcher(written)
            .replaceAll(
                found ->
                    found
                        .group()
                        .replaceAll("[Oo]", "0")
                        .replaceAll("[Il]", "1")
                        .replace('S', '5')
                        .replace('B', '8'));
    add(readings, written, number, Kind.SCANNED_MARK);
    return readings;
  }

  private static void add(List<ScannedText> readings, String written, String right, Kind kind) {
    if (!right.equals(written)) {
      NameDifference difference =
          new NameDifference(kind, NameKey.of(written).replace(" ", ""), NameKey.of(right));
      readings.add(new ScannedText(NameKey.words(right), difference));
    }
  }
}
