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
    page.append("<tr>");
    for (int c = 0; c < row.size(); c++) {
      String cell = row.get(c);
      if (cell.equals(Sketch.LEFT) || cell.equals(Sketch.UP)) {
        continue;
      }
      int across = 1;
      while (c + across < row.size() && row.get(c + across).equals(Sketch.LEFT)) {
        across++;
      }
      int down = 1;
      while (isUp(sketch, r + down, c)) {
        down++;
      }
      page.append('<').append(tag);
      page.append(across > 1 ? " colspan=\"" + across + "\"" : "");
      page.append(down > 1 ? " rowspan=\"" + down + "\"" : "");
      page.append('>').append(escaped(cell)).append("</").append(tag).append('>');
    }
    page.append("</tr>\n");
  }

  private static boolean isUp(Sketch sketch, int r, int c) {
    return r < sketch.table().size()
        && c < sketch.table().get(r).size()
        && sketch.table().get(r).get(c).equals(Sketch.UP);
  }

  static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }
}
