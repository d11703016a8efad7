package org.griplore.ingest.messy;

import java.util.List;

/** Writes sketches as a saved page; joined cells span rows and columns. */
final class SketchPage {
  private SketchPage() {}

  static String write(List<Sketch> sketches, String title) {
    StringBuilder page = new StringBuilder();
    page.append("<!DOCTYPE html>\n<html><head><meta charset=\"utf-8\"><title>")
        .append(escaped(title))
        .append("</title></head>\n<body>\n<ul><li>Home<li>News<li>Contact</ul>\n");
    for (Sketch sketch : sketches) {
      lines(page, sketch.above());
      page.append("<table>\n");
      for (int r = 0; r < sketch.table().size(); r++) {
        row(page, sketch, r);
      }
      page.append("</table>\n");
      lines(page, sketch.below());
    }
    return page.append("<p>Imprint</p>\n</body></html>\n").toString();
  }

  private static void lines(StringBuilder page, List<List<String>> rows) {
    for (List<String> row : rows) {
      if (!row.isEmpty()) {
        page.append("<p>").append(escaped(String.join(" ", row))).append("</p>\n");
      }
    }
  }

  private static void row(StringBuilder page, Sketch sketch, int r) {
    List<String> row = sketch.table().get(r);
    String tag = r < sketch.headers() ? "th" : "td";
    SketchSpans spans = new SketchSpans(sketch.table());
    page.append("<tr>");
    for (int c = 0; c < row.size(); c++) {
      if (!spans.covered(r, c)) {
        int across = spans.across(r, c);
        int down = spans.down(r, c);
        page.append('<').append(tag);
        page.append(across > 1 ? " colspan=\"" + across + "\"" : "");
        page.append(down > 1 ? " rowspan=\"" + down + "\"" : "");
        page.append('>').append(escaped(row.get(c))).append("</").append(tag).append('>');
      }
    }
    page.append("</tr>\n");
  }

  static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }
}
