package org.griplore.ingest.grid;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.griplore.store.archive.Original;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.select.Elements;

/**
 * Reads the data tables of a saved page. A table is data when it holds no other table and has two
 * rows and two columns or more. Headings, list items and paragraphs between one table and the next
 * are the preamble of the next; their row is their order on the page.
 */
final class HtmlReader {
  private HtmlReader() {}

  static List<Grid> read(Original original, Charset charset) throws IOException {
    Document page;
    try (InputStream in = original.content().open()) {
      String known = charset.equals(TextDecoding.WINDOWS_1252) ? null : charset.name();
      page = Jsoup.parse(in, known, "");
    }
    if (charset.equals(TextDecoding.WINDOWS_1252)
        && page.charset().equals(StandardCharsets.UTF_8)) {
      try (InputStream in = original.content().open()) {
        page = Jsoup.parse(in, charset.name(), "");
      }
    }
    page.select("script, style, noscript, nav, header > nav, footer, template").remove();
    if (page.select("table").isEmpty()) {
      throw new Refusal(
          original.name() + " is a page that holds no table: save the page that shows the results.",
          new Problem(original.name(), "a page without a table", "a page with a table"));
    }
    List<Grid> grids = new ArrayList<>();
    List<GridCell> preamble = new ArrayList<>();
    int order = 0;
    for (Element element :
        page.select("title, h1, h2, h3, h4, caption, p, li, dt, dd, figcaption, table, div")) {
      if (element.closest("table") != null && !element.normalName().equals("table")) {
        continue;
      }
      if (element.normalName().equals("table")) {
        if (isData(element)) {
          grids.add(grid(element, preamble));
          preamble = new ArrayList<>();
        }
        continue;
      }
      if (element.normalName().equals("div") && !element.children().isEmpty()) {
        continue;
      }
      if (element.normalName().equals("title")) {
        continue;
      }
      String text = text(element);
      if (!text.isEmpty() && element.closest("aside") == null) {
        preamble.add(GridCell.of(++order, 1, text));
      }
    }
    if (!preamble.isEmpty() && !grids.isEmpty()) {
      grids.add(new Grid("after the tables", preamble, List.of(), List.of(), false));
    }
    return grids;
  }

  private static boolean isData(Element table) {
    return table.select("table").size() == 1
        && table.select("tr").size() >= 2
        && table.select("tr").stream().anyMatch(row -> row.select("> td, > th").size() >= 2);
  }

  private static Grid grid(Element table, List<GridCell> preamble) {
    List<List<GridCell>> rows = new ArrayList<>();
    List<Grid.Merge> merges = new ArrayList<>();
    Set<Long> taken = new HashSet<>();
    int number = 0;
    for (Element row : table.select("tr")) {
      number++;
      List<GridCell> cells = new ArrayList<>();
      int column = 1;
      for (Element cell : row.select("> td, > th")) {
        while (taken.contains(place(number, column))) {
          column++;
        }
        int wide = span(cell, "colspan");
        int high = span(cell, "rowspan");
        if (wide > 1 || high > 1) {
          merges.add(new Grid.Merge(number, column, number + high - 1, column + wide - 1));
          for (int r = number; r < number + high; r++) {
            for (int c = column; c < column + wide; c++) {
              taken.add(place(r, c));
            }
          }
        }
        String text = text(cell);
        if (!text.isEmpty()) {
          cells.add(GridCell.of(number, column, text));
        }
        column += wide;
      }
      if (!cells.isEmpty()) {
        rows.add(cells);
      }
    }
    Elements caption = table.select("> caption");
    String name = caption.isEmpty() ? "" : text(caption.get(0));
    return new Grid(name, preamble, rows, merges, false);
  }

  private static long place(int row, int column) {
    return ((long) row << 32) | column;
  }

  private static int span(Element cell, String attribute) {
    String text = cell.attr(attribute).strip();
    return text.matches("\\d{1,3}") ? Math.max(1, Integer.parseInt(text)) : 1;
  }

  /**
   * An element's text; a raised mark stands in brackets behind a space, so that it joins no number.
   */
  private static String text(Element element) {
    Element copy = element.clone();
    copy.select("br").forEach(br -> br.before(" "));
    for (Element raised : copy.select("sup")) {
      String mark = raised.text().strip();
      boolean power =
          mark.equals("2")
              && raised.previousSibling() != null
              && raised.previousSibling().outerHtml().strip().endsWith("s");
      raised.text(mark.isEmpty() ? "" : power ? "2" : " [" + mark.replaceAll("[()]", "") + "]");
    }
    return copy.text().replace('\u00a0', ' ').replaceAll("\\s+", " ").strip();
  }
}
