package org.griplore.ingest.grid.markup;

import java.util.Set;
import java.util.regex.Pattern;
import org.griplore.ingest.grid.GridCell;
import org.griplore.ingest.grid.MarkedText;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.Node;
import org.jsoup.nodes.TextNode;
import org.jsoup.select.NodeFilter;

/**
 * The text of a page's element as shown, on one line. What the page hides in it (a key to sort by,
 * say) is left out; raised marks and what is struck out are told apart from the text, see {@link
 * MarkedText}.
 */
final class HtmlText implements NodeFilter {
  private static final Pattern HIDDEN =
      Pattern.compile("(?i).*(?:display\\s*:\\s*none|visibility\\s*:\\s*hidden).*");
  private static final Pattern STRUCK = Pattern.compile("(?i).*line-through.*");
  private static final Pattern RAISED = Pattern.compile("(?i).*vertical-align\\s*:\\s*super.*");
  private static final Pattern BLANKS = Pattern.compile("[\\s\u00a0]+");
  private static final Set<String> STRIKES = Set.of("s", "strike", "del");

  private final Element whole;
  private final MarkedText shown = new MarkedText();
  private int raised;
  private int struck;

  private HtmlText(Element whole) {
    this.whole = whole;
  }

  /** The text as a line; a raised mark that leads it stands in brackets before it. */
  static String of(Element element) {
    return oneLine(read(element).line());
  }

  /** The text as a cell, with its marks; null where it is empty. */
  static GridCell cell(Element element, int row, int column) {
    MarkedText text = read(element);
    String line = oneLine(text.text());
    return line.isEmpty() ? null : new GridCell(row, column, line, null, null, text.look());
  }

  private static MarkedText read(Element element) {
    HtmlText text = new HtmlText(element);
    text.enter(element, 1);
    element.filter(text);
    return text.shown;
  }

  private static String oneLine(String text) {
    return BLANKS.matcher(text).replaceAll(" ").strip();
  }

  static boolean isHidden(Element element) {
    return element.hasAttr("hidden") || HIDDEN.matcher(element.attr("style")).matches();
  }

  @Override
  public FilterResult head(Node node, int depth) {
    if (node instanceof TextNode text) {
      add(text.getWholeText());
    } else if (node instanceof Element element && element != whole) {
      if (isHidden(element)) {
        return FilterResult.SKIP_ENTIRELY;
      }
      enter(element, 1);
      part(element);
    }
    return FilterResult.CONTINUE;
  }

  @Override
  public FilterResult tail(Node node, int depth) {
    if (node instanceof Element element && element != whole) {
      enter(element, -1);
      part(element);
    }
    return FilterResult.CONTINUE;
  }

  private void enter(Element element, int step) {
    String style = element.attr("style");
    boolean raises = element.normalName().equals("sup") || RAISED.matcher(style).matches();
    raised += raises ? step : 0;
    boolean strikes = STRIKES.contains(element.normalName()) || STRUCK.matcher(style).matches();
    struck += strikes ? step : 0;
  }

  private void part(Element element) {
    if (element.isBlock() || element.normalName().equals("br")) {
      add(" ");
    }
  }

  private void add(String text) {
    shown.add(BLANKS.matcher(text).replaceAll(" "), raised > 0, struck > 0);
  }
}
