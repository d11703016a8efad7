package org.griplore.ingest.grid;

/** A cell's text without what cannot be seen at its ends. */
public final class VisibleText {
  private VisibleText() {}

  /**
   * The text without blanks of any kind (no-break ones too), control codes and byte order marks at
   * its ends; empty for null.
   */
  public static String of(String text) {
    if (text == null) {
      return "";
    }
    int start = 0;
    int end = text.length();
    while (start < end && isUnseen(text.charAt(start))) {
      start++;
    }
    while (end > start && isUnseen(text.charAt(end - 1))) {
      end--;
    }
    return text.substring(start, end);
  }

  private static boolean isUnseen(char c) {
    return c <= ' '
        || c > '~'
            && (Character.isWhitespace(c)
                || Character.isSpaceChar(c)
                || Character.isISOControl(c)
                || c == '\u200b'
                || c == '\ufeff');
  }
}
