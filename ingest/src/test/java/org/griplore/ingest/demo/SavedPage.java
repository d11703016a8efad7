package org.griplore.ingest.demo;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.griplore.store.scenario.SimulatedReport;

/** A page saved from a browser: the table stands among a menu, a box, advice and a footer. */
final class SavedPage {
  private SavedPage() {}

  /** With footnotes: {@code 1)} at the first tyre, {@code *} at the last. */
  static byte[] write(SimulatedReport report, Sheet sheet, Lingo lingo, boolean footnotes) {
    StringBuilder b = new StringBuilder();
    b.append("<!DOCTYPE html>\n<html lang=\"").append(report.language()).append("\">\n<head>\n");
    b.append("<meta charset=\"utf-8\">\n<title>").append(escape(sheet.title()));
    b.append(" | ").append(escape(report.publication())).append("</title>\n");
    b.append("<style>body{font-family:serif} td{padding:2px 6px}</style>\n");
    b.append("<script>var shown = true; /* menu */</script>\n</head>\n<body>\n");
    b.append("<header><a href=\"#\">").append(escape(report.publication())).append("</a>\n");
    b.append("<nav><ul><li><a href=\"#\">1</a></li><li><a href=\"#\">2</a></li></ul></nav>");
    b.append("</header>\n<table class=\"menu\"><tr><td><a href=\"#\">A\u2013K</a></td>");
    b.append("<td><a href=\"#\">L\u2013Z</a></td></tr></table>\n<main>\n<h1>");
    b.append(escape(sheet.title())).append("</h1>\n<ul class=\"facts\">\n");
    for (Sheet.Detail d : sheet.details()) {
      b.append("<li>").append(escape(d.name())).append(": ");
      b.append(escape(d.value().text(lingo))).append("</li>\n");
    }
    b.append("</ul>\n<table class=\"results\">\n<thead>\n");
    row(b, "th", sheet.header());
    if (!sheet.units().isEmpty()) {
      row(b, "th", sheet.units());
    }
    b.append("</thead>\n<tbody>\n");
    int last = sheet.rows().size() - 1;
    for (int r = 0; r <= last; r++) {
      b.append("<tr>");
      List<DemoCell> cells = sheet.rows().get(r);
      for (int c = 0; c < cells.size(); c++) {
        String mark = !footnotes || c > 0 ? "" : r == 0 ? "<sup>1)</sup>" : r == last ? "*" : "";
        b.append("<td>").append(escape(cells.get(c).text(lingo))).append(mark).append("</td>");
      }
      b.append("</tr>\n");
    }
    b.append("</tbody>\n</table>\n");
    sheet
        .below()
        .forEach(line -> b.append("<p><small>").append(escape(line)).append("</small></p>\n"));
    b.append("</main>\n<aside><table><tr><td>&nbsp;</td></tr></table></aside>\n");
    b.append("<footer>\u00a9 ").append(ReportTable.day(report).getYear()).append(' ');
    b.append(escape(report.publication())).append("</footer>\n</body>\n</html>\n");
    return b.toString().getBytes(StandardCharsets.UTF_8);
  }

  private static void row(StringBuilder b, String tag, List<String> cells) {
    b.append("<tr>");
    for (String cell : cells) {
      b.append('<').append(tag).append('>').append(escape(cell));
      b.append("</").append(tag).append('>');
    }
    b.append("</tr>\n");
  }

  private static String escape(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\u00a0", "&nbsp;");
  }
}
