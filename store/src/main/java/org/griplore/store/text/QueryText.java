package org.griplore.store.text;

import java.util.ArrayList;
import java.util.List;

/**
 * Cuts a query's text into parts. Every text can be cut: what has no meaning is left out with a
 * remark.
 */
final class QueryText {
  private static final int LONGEST = 10_000;
  private static final int MOST_PARTS = 32;

  private final List<QueryPart> parts = new ArrayList<>();
  private final List<String> remarks = new ArrayList<>();

  private QueryText() {}

  static QueryText of(String text) {
    QueryText read = new QueryText();
    if (text.length() > LONGEST) {
      read.remarks.add(
          "The text is very long: what comes after " + LONGEST + " characters was ignored.");
      read.cut(text.substring(0, LONGEST));
    } else {
      read.cut(text);
    }
    return read;
  }

  List<QueryPart> parts() {
    return parts;
  }

  List<String> remarks() {
    return remarks;
  }

  private void cut(String text) {
    String even = text.replace('\u201c', '"').replace('\u201d', '"').replace('\u201e', '"');
    int at = 0;
    while (at < even.length()) {
      if (isGap(even.charAt(at))) {
        at++;
        continue;
      }
      int start = at;
      boolean excluded = even.charAt(at) == '-' && at + 1 < even.length();
      if (excluded) {
        at++;
      }
      if (even.charAt(at) == '"') {
        int close = even.indexOf('"', at + 1);
        if (close < 0) {
          remarks.add("A quotation mark without its partner was ignored.");
          even = even.substring(0, at) + ' ' + even.substring(at + 1);
          at = start + (excluded ? 1 : 0);
          continue;
        }
        add(QueryPart.Kind.PHRASE, even.substring(at + 1, close), excluded);
        at = close + 1;
      } else {
        int end = at;
        while (end < even.length() && !isGap(even.charAt(end)) && even.charAt(end) != '"') {
          end++;
        }
        word(even.substring(at, end), excluded);
        at = end;
      }
    }
  }

  private static boolean isGap(char c) {
    return Character.isWhitespace(c) || Character.isISOControl(c);
  }

  private void word(String text, boolean excluded) {
    String bare = text.endsWith("*") ? text.replaceAll("\\*+$", "") : text;
    add(
        bare.length() < text.length() ? QueryPart.Kind.PREFIX : QueryPart.Kind.WORD,
        bare,
        excluded);
  }

  private void add(QueryPart.Kind kind, String text, boolean excluded) {
    if (text.codePoints().noneMatch(Character::isLetterOrDigit)) {
      String shown = kind == QueryPart.Kind.PREFIX ? text + "*" : text;
      if (!shown.isBlank()) {
        remarkOnce("\u201c" + clipped(shown) + "\u201d has no letter or figure and was ignored.");
      }
    } else if (parts.size() == MOST_PARTS) {
      remarkOnce("Only the first " + MOST_PARTS + " words were looked for; the rest was ignored.");
    } else {
      parts.add(new QueryPart(kind, text, excluded));
    }
  }

  private void remarkOnce(String remark) {
    if (!remarks.contains(remark) && remarks.size() < 10) {
      remarks.add(remark);
    }
  }

  private static String clipped(String text) {
    return text.length() <= 20 ? text : text.substring(0, 20) + "\u2026";
  }
}
