package org.griplore.ingest.grid.text;

import java.util.Locale;
import java.util.Set;

/** Tells a page from other text by what stands first in it, behind comments and prologs. */
public final class MarkupStart {
  private static final Set<String> TAGS =
      Set.of(
          "html", "head", "body", "table", "thead", "tbody", "caption", "tr", "meta", "title",
          "link", "style", "script", "base", "div", "main", "header", "article", "section", "span",
          "p", "h1", "h2", "h3", "h4", "h5", "h6", "ul", "ol", "a", "center", "font", "b",
          "strong");

  private MarkupStart() {}

  /** Whether a text that begins so is HTML. */
  public static boolean isHtml(String start) {
    int at = behindProlog(start);
    if (at >= start.length() || start.charAt(at) != '<') {
      return false;
    }
    int end = at + 1;
    while (end < start.length() && Character.isLetterOrDigit(start.charAt(end))) {
      end++;
    }
    if (start.regionMatches(true, at, "<!doctype", 0, 9)) {
      return start.substring(at + 9, Math.min(start.length(), at + 40)).strip().length() >= 4
          && start.substring(at + 9).strip().regionMatches(true, 0, "html", 0, 4);
    }
    return TAGS.contains(start.substring(at + 1, end).toLowerCase(Locale.ROOT));
  }

  /** Where the first thing stands that is no blank, byte order mark, comment or XML prolog. */
  private static int behindProlog(String start) {
    int at = 0;
    while (at < start.length()) {
      int close;
      if (Character.isWhitespace(start.charAt(at)) || start.charAt(at) == '\ufeff') {
        close = at + 1;
      } else if (start.startsWith("<!--", at)) {
        close = end(start, "-->", at + 4);
      } else if (start.startsWith("<?", at)) {
        close = end(start, "?>", at + 2);
      } else {
        return at;
      }
      at = close;
    }
    return at;
  }

  private static int end(String text, String mark, int from) {
    int found = text.indexOf(mark, from);
    return found < 0 ? text.length() : found + mark.length();
  }
}
