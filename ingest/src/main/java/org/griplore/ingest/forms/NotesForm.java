package org.griplore.ingest.forms;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.griplore.ingest.grid.Content;
import org.griplore.ingest.grid.GridCell;
import org.griplore.ingest.recognise.DetailLines;
import org.griplore.ingest.recognise.DetailsReader;
import org.griplore.store.names.EntryName;
import org.griplore.store.vocabulary.Cell;
import org.griplore.store.vocabulary.Details;
import org.griplore.store.vocabulary.DisciplineCatalogue;
import org.griplore.store.vocabulary.HeaderKey;
import org.griplore.store.vocabulary.Note;
import org.griplore.store.vocabulary.TestReport;

/**
 * Notes as plain text or Markdown: the first heading is the test's title, details stand as lines
 * below it ({@code Test: KEY}, {@code Date: ...}), a heading of the second level names the tyre (or
 * says that the notes are general), and each paragraph or bullet is a note. A note may begin with a
 * discipline and a colon.
 */
public final class NotesForm {
  private static final Pattern HEADING = Pattern.compile("(#{1,6})\\s+(.*?)\\s*#*\\s*");
  private static final Pattern BULLET = Pattern.compile("\\s{0,3}(?:[-*+]|\\d{1,2}[.)])\\s+(.*)");
  private static final Pattern PREFIX = Pattern.compile("([^:.!?]{3,40}):\\s+(.*)", Pattern.DOTALL);

  private final SourceContext context;
  private final List<Raw> raw = new ArrayList<>();
  private final List<List<GridCell>> lines = new ArrayList<>();

  /** A note before its names are settled. */
  private record Raw(String heading, int headingLine, String text, int line) {}

  private NotesForm(SourceContext context) {
    this.context = context;
  }

  /**
   * Reads notes.
   *
   * @return whether there were any
   */
  public static boolean read(Content.Prose prose, SourceContext context) {
    NotesForm form = new NotesForm(context);
    form.collect(prose.lines());
    if (form.raw.isEmpty()) {
      return false;
    }
    form.tell();
    return true;
  }

  private void collect(List<Content.Line> all) {
    String heading = null;
    int headingLine = 0;
    boolean body = false;
    StringBuilder text = new StringBuilder();
    int start = 0;
    for (Content.Line line : all) {
      Matcher title = HEADING.matcher(line.text());
      Matcher bullet = BULLET.matcher(line.text());
      boolean isHeading = title.matches();
      boolean detail = !body && text.isEmpty() && !isHeading && isDetail(line);
      if (line.text().isBlank() || isHeading || bullet.matches() || detail) {
        end(heading, headingLine, text, start);
      }
      if (isHeading) {
        if (title.group(1).length() == 1 && lines.isEmpty() && raw.isEmpty()) {
          lines.add(List.of(GridCell.of(line.number(), 1, title.group(2))));
        } else {
          heading = title.group(2);
          headingLine = line.number();
          body = true;
        }
      } else if (detail) {
        lines.add(List.of(GridCell.of(line.number(), 1, line.text().strip())));
      } else if (!line.text().isBlank()) {
        if (text.isEmpty()) {
          start = line.number();
        }
        text.append(text.isEmpty() ? "" : " ")
            .append(bullet.matches() ? bullet.group(1).strip() : line.text().strip());
      }
    }
    end(heading, headingLine, text, start);
  }

  private static boolean isDetail(Content.Line line) {
    return !line.text().isBlank()
        && !DetailLines.of(List.of(List.of(GridCell.of(line.number(), 1, line.text().strip()))))
            .byTopic()
            .isEmpty();
  }

  private void end(String heading, int headingLine, StringBuilder text, int start) {
    if (!text.isEmpty()) {
      raw.add(new Raw(heading, headingLine, text.toString(), start));
      text.setLength(0);
    }
  }

  private void tell() {
    DetailLines details = context.details(lines);
    Details told = DetailsReader.read(details, context.given(), "", context.receiver()::finding);
    List<Note> notes = new ArrayList<>();
    for (Raw note : raw) {
      notes.add(note(note));
    }
    String key = TestKey.of(details, told, context);
    context.receiver().report(new TestReport(key, told, List.of(), notes, List.of()));
  }

  private Note note(Raw raw) {
    Cell cell = new Cell("", raw.line(), 1, raw.text());
    Matcher prefix = PREFIX.matcher(raw.text());
    Optional<DisciplineCatalogue.Match> discipline =
        prefix.matches() ? exactly(prefix.group(1)) : Optional.empty();
    String text = discipline.isPresent() ? prefix.group(2) : raw.text();
    Optional<DisciplineCatalogue.Match> headed =
        raw.heading() == null ? Optional.empty() : exactly(raw.heading());
    return new Note(
        headed.isPresent() ? null : model(raw),
        discipline.or(() -> headed).map(match -> match.discipline().key()).orElse(null),
        text,
        cell);
  }

  /** A prefix is a discipline only when it says nothing else. */
  private Optional<DisciplineCatalogue.Match> exactly(String prefix) {
    return context
        .catalogue()
        .byHeader(prefix)
        .filter(match -> HeaderKey.of(match.words()).equals(HeaderKey.of(prefix)));
  }

  private String model(Raw raw) {
    if (raw.heading() == null || isGeneral(raw.heading())) {
      return null;
    }
    String tyre = EntryName.of(raw.heading()).model(context.names()::isListed);
    Cell cell = new Cell("", raw.headingLine(), 1, raw.heading());
    return SettledName.of(tyre, cell, context).kept();
  }

  private static boolean isGeneral(String heading) {
    return switch (HeaderKey.of(heading)) {
      case "general",
          "test",
          "the test",
          "conditions",
          "notes",
          "remarks",
          "day",
          "set up",
          "setup",
          "allgemein",
          "allgemeines",
          "bedingungen",
          "zum test",
          "general remarks",
          "generalites",
          "allmant" ->
          true;
      default -> false;
    };
  }
}
