package org.griplore.ui.render;

import java.io.PrintWriter;
import java.util.List;
import org.griplore.query.answer.Answer;
import org.griplore.query.answer.Exclusion;
import org.griplore.query.answer.Footnote;
import org.griplore.query.answer.SourceReference;

/** Writes an answer for a terminal: the sentence, the table, what was left out, the cautions. */
public final class TerminalTable {
  private static final int SOURCES_SHOWN = 12;

  private final TerminalStyle style;

  /** Tables in a style. */
  public TerminalTable(TerminalStyle style) {
    this.style = style;
  }

  /** Writes the sentence alone. */
  public void summary(Answer<?> answer, PrintWriter out) {
    wrapped(out, "", answer.summary(), true);
  }

  <R> void write(Answer<R> answer, PrintWriter out) {
    summary(answer, out);
    if (answer.hasEvidence()) {
      out.println();
      new TextGrid(style).write(answer.columns(), answer.rows(), out);
      InnerRows.of(answer).forEach(inner -> inside(inner, out));
    }
    footnotes(answer.footnotes(), out);
    exclusions(answer.excluded(), out);
    caveats(answer.caveats(), out);
    sources(answer.sources(), out);
  }

  private <S> void inside(InnerRows inner, PrintWriter out) {
    out.println();
    out.println(style.strong(inner.heading()));
    new TextGrid(style).write(inner.<S>columns(), inner.<S>rows(), out);
  }

  private void footnotes(List<Footnote> footnotes, PrintWriter out) {
    if (!footnotes.isEmpty()) {
      out.println();
      out.println(style.strong("Notes"));
      footnotes.forEach(note -> wrapped(out, "  ", note.number() + "  " + note.text(), false));
    }
  }

  private void exclusions(List<Exclusion> excluded, PrintWriter out) {
    if (!excluded.isEmpty()) {
      out.println();
      out.println(style.strong("Left out"));
      excluded.forEach(left -> wrapped(out, "  ", left.count() + " " + left.reason(), false));
    }
  }

  private void caveats(List<String> caveats, PrintWriter out) {
    if (!caveats.isEmpty()) {
      out.println();
      caveats.forEach(caveat -> wrapped(out, "  ", "! " + caveat, false));
    }
  }

  private void sources(List<SourceReference> sources, PrintWriter out) {
    if (sources.isEmpty()) {
      return;
    }
    out.println();
    out.println(style.strong("Sources"));
    sources.stream()
        .limit(SOURCES_SHOWN)
        .forEach(source -> out.println(style.quiet(Shown.harmless(line(source)))));
    if (sources.size() > SOURCES_SHOWN) {
      out.println(
          style.quiet(
              "  and " + (sources.size() - SOURCES_SHOWN) + " more; --format json lists them all"));
    }
  }

  private static String line(SourceReference source) {
    return "  %d  %s, %s%s (%s)"
        .formatted(
            source.id(),
            source.title(),
            source.date() == null ? "no date" : source.date(),
            source.kind() == null ? "" : ", " + source.kind(),
            source.file());
  }

  private void wrapped(PrintWriter out, String indent, String text, boolean strong) {
    for (String line : TextGrid.wrap(Shown.harmless(text), style.width() - indent.length())) {
      out.println(indent + (strong ? style.strong(line) : line));
    }
  }
}
