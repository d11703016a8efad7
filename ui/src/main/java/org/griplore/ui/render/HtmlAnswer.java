package org.griplore.ui.render;

import java.io.PrintWriter;
import java.util.List;
import java.util.stream.Collectors;
import org.griplore.query.answer.Answer;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Figure;
import org.griplore.query.answer.Format;

/**
 * Writes an answer as a fragment of HTML to put into a page of one's own: a table with caption and
 * scopes, then what was left out, the cautions and the sources. It brings no styles and no script.
 */
final class HtmlAnswer {
  private HtmlAnswer() {}

  static <R> void write(Answer<R> answer, PrintWriter out) {
    out.println("<section>");
    out.println("<p>" + escaped(answer.summary()) + "</p>");
    if (answer.hasEvidence()) {
      table(answer.inquiry().sentence(), answer.columns(), answer.rows(), out);
      for (InnerRows inner : InnerRows.of(answer)) {
        inside(inner, out);
      }
    }
    if (!answer.footnotes().isEmpty()) {
      out.println("<p>Notes</p>");
      out.println("<ol>");
      answer
          .footnotes()
          .forEach(
              note ->
                  out.println(
                      "<li id=\"note-%d\">%s</li>".formatted(note.number(), escaped(note.text()))));
      out.println("</ol>");
    }
    list(
        "Left out",
        answer.excluded().stream().map(left -> left.count() + " " + left.reason()).toList(),
        out);
    list("Read with care", answer.caveats(), out);
    if (!answer.sources().isEmpty()) {
      out.println("<p>Sources</p>");
      out.println("<ol>");
      answer
          .sources()
          .forEach(
              source ->
                  out.println(
                      "<li value=\"%d\">%s</li>"
                          .formatted(source.id(), escaped(Cited.told(source)))));
      out.println("</ol>");
    }
    out.println("</section>");
  }

  private static <S> void inside(InnerRows inner, PrintWriter out) {
    table(inner.heading(), inner.<S>columns(), inner.<S>rows(), out);
  }

  private static <R> void table(
      String caption, List<Column<R>> columns, List<R> rows, PrintWriter out) {
    List<Column<R>> shown = columns.stream().filter(column -> !column.detail()).toList();
    out.println("<table>");
    out.println("<caption>" + escaped(caption) + "</caption>");
    out.println(
        shown.stream()
            .map(HtmlAnswer::head)
            .collect(Collectors.joining("", "<thead><tr>", "</tr></thead>")));
    out.println("<tbody>");
    for (R row : rows) {
      StringBuilder line = new StringBuilder("<tr>");
      for (Column<R> column : shown) {
        boolean head = column == shown.get(0);
        line.append(head ? "<th scope=\"row\">" : "<td>")
            .append(cell(column, row))
            .append(head ? "</th>" : "</td>");
      }
      out.println(line + "</tr>");
    }
    out.println("</tbody>");
    out.println("</table>");
  }

  private static String head(Column<?> column) {
    String meaning = column.sense().meaning();
    String title = meaning.isEmpty() ? "" : " title=\"" + escaped(meaning) + "\"";
    return "<th scope=\"col\"" + title + ">" + escaped(column.heading()) + "</th>";
  }

  private static <R> String cell(Column<R> column, R row) {
    Object value = column.value().apply(row);
    if (column.format() == Format.FIGURE && value != null) {
      Figure figure = (Figure) value;
      List<String> lines = Shown.lines(figure, column.decimals());
      String first = lines.get(0);
      String bare = first.substring(0, first.length() - Shown.marks(figure.footnotes()).length());
      String marks =
          figure.footnotes().stream()
              .map(number -> "<a href=\"#note-%d\">%d</a>".formatted(number, number))
              .collect(Collectors.joining(","));
      return escaped(bare)
          + (marks.isEmpty() ? "" : "\u00a0<sup>" + marks + "</sup>")
          + (lines.size() > 1 ? "<br>" + escaped(lines.get(1)) : "");
    }
    return escaped(Shown.value(column, value));
  }

  private static void list(String heading, List<String> items, PrintWriter out) {
    if (!items.isEmpty()) {
      out.println("<p>" + heading + "</p>");
      out.println("<ul>");
      items.forEach(item -> out.println("<li>" + escaped(item) + "</li>"));
      out.println("</ul>");
    }
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;")
        .replace("'", "&#39;");
  }
}
