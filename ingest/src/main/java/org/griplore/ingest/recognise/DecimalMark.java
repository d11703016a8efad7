package org.griplore.ingest.recognise;

import java.util.stream.Stream;

/** What separates the whole from the fraction in a table's numbers. */
public enum DecimalMark {
  POINT('.', ','),
  COMMA(',', '.'),
  /** No number of the table tells. */
  OPEN('.', ','),
  /** Both are used in one table; each number is read by itself. */
  MIXED('.', ',');

  private final char mark;
  private final char other;

  DecimalMark(char mark, char other) {
    this.mark = mark;
    this.other = other;
  }

  char mark() {
    return mark;
  }

  char other() {
    return other;
  }

  /**
   * Decides by the numbers that leave no doubt: {@code 31,2} or {@code 1.480,5}, not {@code 1.480}.
   */
  public static DecimalMark of(Stream<String> texts) {
    boolean[] seen = new boolean[2];
    texts.forEach(
        text -> {
          char told = told(text);
          seen[0] |= told == '.';
          seen[1] |= told == ',';
        });
    if (seen[0] && seen[1]) {
      return MIXED;
    }
    return seen[0] ? POINT : seen[1] ? COMMA : OPEN;
  }

  /** The decimal mark that a text shows beyond doubt, or a space. */
  static char told(String text) {
    String digits = text.replaceAll("[\\s\\u00a0\\u202f'\\u2019]", "");
    java.util.regex.Matcher number = java.util.regex.Pattern.compile("\\d[\\d.,]*").matcher(digits);
    if (!number.find()) {
      return ' ';
    }
    String found = number.group().replaceAll("[.,]+$", "");
    int point = found.lastIndexOf('.');
    int comma = found.lastIndexOf(',');
    if (point >= 0 && comma >= 0) {
      return point > comma ? '.' : ',';
    }
    int last = Math.max(point, comma);
    if (last < 0 || found.indexOf(found.charAt(last)) != last) {
      return ' ';
    }
    boolean thousands = found.length() - last - 1 == 3 && last <= 3 && found.charAt(0) != '0';
    return thousands ? ' ' : found.charAt(last);
  }
}
