package org.griplore.ui.render;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.griplore.query.answer.Answer;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Exclusion;
import org.griplore.query.answer.Footnote;
import org.griplore.query.answer.Format;
import org.griplore.query.answer.Sense;
import org.griplore.query.answer.SourceReference;

/**
 * Writes an answer as a workbook: the rows on the first sheet, rows inside rows on sheets of their
 * own, and on the last, {@code About}, the question, what was left out, the cautions and the
 * sources. Numbers, dates and yes or no are typed; texts are texts, so none is ever run as a
 * formula. The same answer gives the same bytes.
 */
final class WorkbookAnswer {
  private static final int LONGEST_SHEET_NAME = 31;

  private final Workbook book;
  private final Set<String> names = new HashSet<>();

  private WorkbookAnswer(Workbook book) {
    this.book = book;
  }

  static void write(Answer<?> answer, OutputStream out) throws IOException {
    Path written = Files.createTempFile("griplore-", ".xlsx");
    try {
      try (OutputStream file = Files.newOutputStream(written);
          Workbook book = new Workbook(file, "Griplore", "1.0")) {
        WorkbookAnswer workbook = new WorkbookAnswer(book);
        workbook.rows(answer);
        workbook.about(answer);
      }
      TimelessZip.copy(written, out);
    } finally {
      Files.deleteIfExists(written);
    }
  }

  private <R> void rows(Answer<R> answer) {
    SheetRows<R> sheet = new SheetRows<>(sheet(answer.inquiry().kind()), answer.columns(), 0);
    answer.rows().forEach(row -> sheet.add(List.of(), row));
    sheet.finish();
    for (Column<R> column : answer.columns()) {
      if (column.format() == Format.ROWS) {
        inside(answer, column);
      }
    }
  }

  /** The inner columns belong to the inner rows: both come from the same {@code Column.rows}. */
  @SuppressWarnings("unchecked")
  private <R, S> void inside(Answer<R> answer, Column<R> column) {
    Column<R> first = answer.columns().get(0);
    SheetRows<S> sheet =
        new SheetRows<>(sheet(column.heading()), (List<Column<S>>) (List<?>) column.inner(), 1);
    sheet.head(0, first.heading());
    for (R row : answer.rows()) {
      List<S> inner = (List<S>) column.value().apply(row);
      if (inner != null) {
        inner.forEach(each -> sheet.add(List.of(Shown.of(first, row)), each));
      }
    }
    sheet.finish();
  }

  private void about(Answer<?> answer) {
    Worksheet sheet = sheet("About");
    int row = 0;
    row = texts(sheet, row, "Question", List.of(answer.inquiry().sentence()));
    row = texts(sheet, row, "Answer", List.of(answer.summary()));
    row = texts(sheet, row, "Read with care", answer.caveats());
    row = heading(sheet, row, List.of("Note", "text", "test"), answer.footnotes().isEmpty());
    for (Footnote note : answer.footnotes()) {
      SheetCell.number(sheet, row, 0, note.number(), "0");
      SheetCell.text(sheet, row, 1, note.text());
      SheetCell.text(sheet, row++, 2, note.test());
    }
    row += answer.footnotes().isEmpty() ? 0 : 1;
    sheet.width(0, 18);
    sheet.width(1, 60);
    row = heading(sheet, row, List.of("Left out", "count"), answer.excluded().isEmpty());
    for (Exclusion left : answer.excluded()) {
      SheetCell.text(sheet, row, 0, left.reason());
      SheetCell.number(sheet, row++, 1, left.count(), "0");
    }
    row += answer.excluded().isEmpty() ? 0 : 1;
    row = meanings(sheet, row, answer.columns());
    List<String> heads = List.of("Source", "title", "kind", "date", "test", "file");
    row = heading(sheet, row, heads, answer.sources().isEmpty());
    for (SourceReference source : answer.sources()) {
      SheetCell.number(sheet, row, 0, source.id(), "0");
      SheetCell.text(sheet, row, 1, source.title());
      SheetCell.text(sheet, row, 2, source.kind());
      SheetCell.date(sheet, row, 3, source.date());
      SheetCell.text(sheet, row, 4, source.test());
      SheetCell.text(sheet, row++, 5, source.file());
    }
  }

  /** What the columns mean, those of rows inside rows behind their column's title. */
  private static int meanings(Worksheet sheet, int from, List<? extends Column<?>> columns) {
    int row = heading(sheet, from, List.of("Column", "meaning", "unit", "better"), false);
    return meanings(sheet, row, "", columns) + 1;
  }

  private static int meanings(
      Worksheet sheet, int from, String under, List<? extends Column<?>> columns) {
    int row = from;
    for (Column<?> column : columns) {
      Sense sense = column.sense();
      SheetCell.text(sheet, row, 0, under + column.title());
      SheetCell.text(sheet, row, 1, sense.meaning());
      SheetCell.text(sheet, row, 2, sense.unit());
      SheetCell.text(sheet, row++, 3, sense.betterWord());
      row = meanings(sheet, row, under + column.title() + ": ", column.inner());
    }
    return row;
  }

  private static int texts(Worksheet sheet, int from, String heading, List<String> texts) {
    int row = heading(sheet, from, List.of(heading), texts.isEmpty());
    for (String text : texts) {
      SheetCell.text(sheet, row++, 0, text);
    }
    return texts.isEmpty() ? row : row + 1;
  }

  private static int heading(Worksheet sheet, int row, List<String> heads, boolean empty) {
    if (empty) {
      return row;
    }
    for (int i = 0; i < heads.size(); i++) {
      SheetCell.head(sheet, row, i, heads.get(i));
    }
    return row + 1;
  }

  /** A sheet with this name as far as a workbook allows it: short, without []:*?/\, not twice. */
  private Worksheet sheet(String label) {
    String plain = label.replaceAll("[\\[\\]:*?/\\\\]", " ").strip();
    String name = plain.substring(0, Math.min(plain.length(), LONGEST_SHEET_NAME - 3)).strip();
    for (int i = 2; !names.add(name.toLowerCase(Locale.ROOT)); i++) {
      name = name.replaceAll(" \\d$", "") + " " + i;
    }
    return book.newWorksheet(name);
  }
}
