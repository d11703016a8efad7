package org.griplore.ingest.grid.markup;

import java.util.regex.Pattern;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.Node;
import org.jsoup.nodes.TextNode;
import org.jsoup.select.NodeFilter;

/**
 * The text of a page's element as shown, on one line. What the page hides in it (a key to sort by,
 * say) is left out. A raised mark stands in brackets behind a space, {@code 95 [1]}, so that it
 * joins no number; a raised digit behind a unit of length or time is its power, {@code m/s2}.
 */
final class HtmlText implements NodeFilter {
  private static final Pattern UNIT = Pattern.compile("(?:^|.*[^\\p{L}\\p{N}])(?:mm|cm|km|m|s)");
  private static final Pattern POWER = Pattern.compile("[23\u00b2\u00b3]");
  private static final Pattern BRACKETS = Pattern.compile("[()\\[\\]]");
  private static final Pattern HIDDEN = Pattern.compile("(?i).*display\\s*:\\s*none.*");
  private static final Pattern BLANKS = Pattern.compile("[\\s\u00a0]+");

  private final Element whole;
  private final StringBuilder shown = new StringBuilder();

  private HtmlText(Element whole) {
    this.whole = whole;
  }

  static String of(Element element) {
    HtmlText text = new HtmlText(element);
    element.filter(text);
    return BLANKS.matcher(text.shown).replaceAll(" ").strip();
  }

  static boolean isHidden(Element element) {
    return element.hasAttr("hidden") || HIDDEN.matcher(element.attr("style")).matches();
  }

  @Override
  public FilterResult head(Node node, int depth) {
    if (node instanceof TextNode text) {
      shown.append(text.getWholeText());
    } else if (node instanceof Element element && element != whole) {
      if (isHidden(element)) {
        return FilterResult.SKIP_ENTIRELY;
      }
      if (element.normalName().equals("sup")) {
        raised(element);
        return FilterResult.SKIP_ENTIRELY;
      }
      part(element);
    }
    return FilterResult.CONTINUE;
  }

  @Override
  public FilterResult tail(Node node, int depth) {
    if (node instanceof Element element && element != whole) {
      part(element);
    }
    return FilterResult.CONTINUE;
  }

  private void part(Element element) {
    if (element.isBlock() || element.normalName().equals("br")) {
      shown.append(' ');
    }
  }

  private void raised(Element element) {
    String mark = element.text().strip();
    String bare = BRACKETS.matcher(mark).replaceAll("").strip();
    boolean power =
        POWER.matcher(mark).matches()
            && element.previousSibling() instanceof TextNode before
            && UNIT.matcher(before.text()).matches();
    if (!bare.isEmpty()) {
      shown.append(power ? bare : " [" + bare + "]");
    }
  }
}
