package org.griplore.ui.render;

import java.io.PrintWriter;
import java.util.List;
import org.griplore.query.answer.Answer;
import org.griplore.query.answer.Column;

/** Writes an answer as Markdown: sentence, table, what was left out, cautions, sources. */
final class MarkdownAnswer {
  private MarkdownAnswer() {}

  static <R> void write(Answer<R> answer, PrintWriter out) {
    out.println("**" + escaped(answer.inquiry().sentence()) + "**");
    out.println();
    out.println(escaped(answer.summary()));
    List<Column<R>> columns = answer.columns().stream().filter(column -> !column.detail()).toList();
    if (answer.hasEvidence()) {
      out.println();
      line(out, columns.stream().map(column -> escaped(column.heading())).toList());
      line(
          out,
          columns.stream()
              .map(column -> TextGrid.isNumber(column.format()) ? "---:" : "---")
              .toList());
      for (R row : answer.rows()) {
        line(out, columns.stream().map(column -> escaped(Shown.of(column, row))).toList());
      }
    }
    if (!answer.footnotes().isEmpty()) {
      out.println();
      out.println("Notes:");
      out.println();
      answer.footnotes().forEach(note -> out.println(note.number() + ". " + escaped(note.text())));
    }
    if (!answer.excluded().isEmpty()) {
      out.println();
      out.println("Left out:");
      out.println();
      answer
          .excluded()
          .forEach(left -> out.println("- " + left.count() + " " + escaped(left.reason())));
    }
    if (!answer.caveats().isEmpty()) {
      out.println();
      answer.caveats().forEach(caveat -> out.println("> " + escaped(caveat)));
    }
    if (!answer.sources().isEmpty()) {
      out.println();
      out.println("Sources:");
      out.println();
      answer
          .sources()
          .forEach(
              source -> out.println("- " + escaped("[" + source.id() + "] " + Cited.told(source))));
    }
  }

  private static void line(PrintWriter out, List<String> cells) {
    out.println("| " + String.join(" | ", cells) + " |");
  }

  private static String escaped(String text) {
    return text.replace("\\", "\\\\")
        .replace("|", "\\|")
        .replace("<", "&lt;")
        .replace("[", "\\[")
        .replace("\n", "; ");
  }
}
