package org.griplore.ingest.grid.markup;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.Charset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import org.griplore.ingest.grid.Grid;
import org.griplore.ingest.grid.GridCell;
import org.griplore.store.archive.Original;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.Node;
import org.jsoup.select.NodeFilter;

/**
 * Reads the data tables of a saved page. A table is data when it holds no other table and has two
 * rows and two columns or more; tables that only lay out the page are looked into. Headings, list
 * items and paragraphs between one table and the next are the preamble of the next; their row is
 * their order on the page. The page's title stands first where there is no heading of the first
 * level. Where there are several tables, one without a caption is named by the heading above it.
 */
public final class HtmlReader implements NodeFilter {
  /** A page is held in memory some ten times as large as it is saved. */
  private static final long MOST_BYTES = 32L << 20;

  private static final Set<String> TOLD =
      Set.of(
          "h1",
          "h2",
          "h3",
          "h4",
          "h5",
          "h6",
          "p",
          "li",
          "dt",
          "dd",
          "figcaption",
          "td",
          "th",
          "table",
          "div",
          "blockquote",
          "pre");
  private static final Set<String> MAY_HOLD_OTHERS =
      Set.of("div", "td", "th", "li", "dd", "blockquote");

  private final List<Grid> grids = new ArrayList<>();
  private List<GridCell> preamble = new ArrayList<>();
  private final Set<Element> data;
  private String heading = "";
  private int order;
  private int asides;
  private int layoutTables;

  private HtmlReader(Set<Element> data) {
    this.data = data;
  }

  public static List<Grid> read(Original original, Charset charset) throws IOException {
    if (original.bytes() > MOST_BYTES) {
      throw new Refusal(
          "%s is a page of more than %d MB: save its table as CSV."
              .formatted(original.name(), MOST_BYTES >> 20),
          new Problem(original.name(), original.bytes() + " bytes", "a saved page"));
    }
    Document page;
    try (InputStream in = original.content().open()) {
      page = Jsoup.parse(in, charset.name(), "");
    }
    page.select("script, style, noscript, nav, template").remove();
    page.select("footer").stream()
        .filter(footer -> footer.closest("article, table, figure") == null)
        .forEach(Element::remove);
    Set<Element> data = Collections.newSetFromMap(new IdentityHashMap<>());
    page.select("table").stream().filter(HtmlTable::isData).forEach(data::add);
    if (data.isEmpty()) {
      throw new Refusal(
          original.name() + " is a page that holds no table: save the page that shows the results.",
          new Problem(original.name(), "a page without a table", "a page with a table"));
    }
    HtmlReader reader = new HtmlReader(data);
    if (page.select("h1").isEmpty()) {
      reader.tell(page.title().strip());
    }
    page.filter(reader);
    return reader.finished();
  }

  private List<Grid> finished() {
    if (!preamble.isEmpty()) {
      grids.add(new Grid("after the tables", preamble, List.of(), List.of(), false));
    }
    return grids;
  }

  @Override
  public FilterResult head(Node node, int depth) {
    if (!(node instanceof Element element)) {
      return FilterResult.CONTINUE;
    }
    if (data.contains(element)) {
      grids.add(HtmlTable.grid(element, data.size() > 1 ? heading : "", preamble));
      preamble = new ArrayList<>();
      return FilterResult.SKIP_ENTIRELY;
    }
    asides += element.normalName().equals("aside") ? 1 : 0;
    layoutTables += element.normalName().equals("table") ? 1 : 0;
    if (TOLD.contains(element.normalName()) && asides == 0) {
      told(element);
    }
    return FilterResult.CONTINUE;
  }

  @Override
  public FilterResult tail(Node node, int depth) {
    asides -= node.normalName().equals("aside") ? 1 : 0;
    layoutTables -= node.normalName().equals("table") ? 1 : 0;
    return FilterResult.CONTINUE;
  }

  private void told(Element element) {
    if (element.normalName().equals("table") || holdsOther(element) || isMenu(element)) {
      return;
    }
    String text = HtmlText.of(element);
    if (element.normalName().matches("h[1-6]") && !text.isEmpty()) {
      heading = text;
    }
    tell(text);
  }

  /** Whether the texts of an element are told by the elements in it. */
  private static boolean holdsOther(Element element) {
    return MAY_HOLD_OTHERS.contains(element.normalName())
        && element.stream().skip(1).anyMatch(inner -> TOLD.contains(inner.normalName()));
  }

  /** A cell of a layout table that is nothing but links. */
  private boolean isMenu(Element element) {
    return layoutTables > 0
        && element.normalName().matches("td|th|li|div")
        && element.text().strip().equals(element.select("a").text().strip());
  }

  private void tell(String text) {
    if (!text.isEmpty()) {
      preamble.add(GridCell.of(++order, 1, text));
    }
  }
}
