package org.griplore.ingest.grid;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.Charset;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.griplore.store.archive.Original;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;

/**
 * Reads the data tables of a saved page. A table is data when it holds no other table and has two
 * rows and two columns or more; tables that only lay out the page are looked into. Headings, list
 * items and paragraphs between one table and the next are the preamble of the next; their row is
 * their order on the page. The page's title stands first where there is no heading of the first
 * level. Where there are several tables, one without a caption is named by the heading above it.
 */
final class HtmlReader {
  private static final String TOLD =
      "h1, h2, h3, h4, h5, h6, p, li, dt, dd, figcaption, td, th, table, div, blockquote, pre";

  private final List<Grid> grids = new ArrayList<>();
  private List<GridCell> preamble = new ArrayList<>();
  private final Set<Element> tables;
  private String heading = "";
  private int order;

  private HtmlReader(Set<Element> tables) {
    this.tables = tables;
  }

  static List<Grid> read(Original original, Charset charset) throws IOException {
    Document page;
    try (InputStream in = original.content().open()) {
      page = Jsoup.parse(in, charset.name(), "");
    }
    page.select("script, style, noscript, nav, template").remove();
    page.select("footer").stream()
        .filter(footer -> footer.closest("article, table, figure") == null)
        .forEach(Element::remove);
    Set<Element> tables =
        page.select("table").stream().filter(HtmlTable::isData).collect(Collectors.toSet());
    if (tables.isEmpty()) {
      throw new Refusal(
          original.name() + " is a page that holds no table: save the page that shows the results.",
          new Problem(original.name(), "a page without a table", "a page with a table"));
    }
    HtmlReader reader = new HtmlReader(tables);
    if (page.select("h1").isEmpty()) {
      reader.tell(page.title().strip());
    }
    page.select(TOLD).forEach(reader::element);
    return reader.finished();
  }

  private List<Grid> finished() {
    if (!preamble.isEmpty()) {
      grids.add(new Grid("after the tables", preamble, List.of(), List.of(), false));
    }
    return grids;
  }

  private void element(Element element) {
    Element table = element.closest("table");
    if (element == table) {
      if (tables.contains(element)) {
        grids.add(HtmlTable.grid(element, tables.size() > 1 ? heading : "", preamble));
        preamble = new ArrayList<>();
      }
      return;
    }
    boolean insideData = table != null && tables.contains(table);
    if (insideData
        || element.closest("aside") != null
        || holdsOther(element)
        || isMenu(element, table)) {
      return;
    }
    String text = HtmlTable.text(element);
    if (element.normalName().matches("h[1-6]") && !text.isEmpty()) {
      heading = text;
    }
    tell(text);
  }

  /** Whether the texts of an element are told by the elements in it. */
  private static boolean holdsOther(Element element) {
    return switch (element.normalName()) {
      case "div", "td", "th", "li", "dd", "blockquote" ->
          element.select(TOLD).stream().anyMatch(inner -> inner != element);
      default -> false;
    };
  }

  /** A cell of a layout table that is nothing but links. */
  private static boolean isMenu(Element element, Element table) {
    return table != null
        && element.normalName().matches("td|th|li|div")
        && element.text().strip().equals(element.select("a").text().strip());
  }

  private void tell(String text) {
    if (!text.isEmpty()) {
      preamble.add(GridCell.of(++order, 1, text));
    }
  }
}
