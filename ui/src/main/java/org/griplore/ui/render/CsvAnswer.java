package org.griplore.ui.render;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.SequenceWriter;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.griplore.query.answer.Answer;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Format;
import org.griplore.store.text.Snippet;

/**
 * Writes an answer's rows as CSV: comma, decimal point, full precision, missing is empty. A list of
 * texts or numbers is one cell, its items joined by {@code |}, a {@code |} or {@code \} inside one
 * behind a {@code \}; rows inside rows are left to JSON. A figure takes a column for each of its
 * parts: the value under the column's key, the others behind it and a point.
 */
final class CsvAnswer {
  private static final CsvMapper MAPPER =
      CsvMapper.builder().disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET).build();

  private static final String FORMULA_BEGINS = "=+-@\t\r";

  private CsvAnswer() {}

  /** One column of the file, and what stands in it. */
  private record Cells<R>(String key, Function<R, Object> cell) {}

  static <R> void write(Answer<R> answer, PrintWriter out) {
    List<Cells<R>> columns = new ArrayList<>();
    answer.columns().forEach(column -> add(columns, column));
    CsvSchema.Builder schema = CsvSchema.builder();
    columns.forEach(column -> schema.addColumn(column.key()));
    try {
      SequenceWriter writer = MAPPER.writer(schema.build()).forType(List.class).writeValues(out);
      writer.write(columns.stream().map(Cells::key).toList());
      for (R row : answer.rows()) {
        List<Object> cells = new ArrayList<>();
        columns.forEach(column -> cells.add(column.cell().apply(row)));
        writer.write(cells);
      }
      writer.flush();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static <R> void add(List<Cells<R>> columns, Column<R> column) {
    if (column.format() == Format.FIGURE) {
      parts(columns, column);
    } else if (column.format() != Format.ROWS) {
      columns.add(new Cells<>(column.key(), row -> cell(column, column.value().apply(row))));
    }
  }

  /** The parts belong to the figure: both come from the same {@code Column.figure}. */
  @SuppressWarnings("unchecked")
  private static <R, F> void parts(List<Cells<R>> columns, Column<R> figure) {
    for (Column<F> part : (List<Column<F>>) figure.inner()) {
      boolean first = part == figure.inner().get(0);
      columns.add(
          new Cells<>(
              first ? figure.key() : figure.key() + "." + part.key(),
              row -> {
                F told = (F) figure.value().apply(row);
                return told == null ? null : cell(part, part.value().apply(told));
              }));
    }
  }

  private static Object cell(Column<?> column, Object value) {
    if (value == null) {
      return null;
    }
    return switch (column.format()) {
      case SNIPPET -> harmless(((Snippet) value).text());
      case TEXTS ->
          harmless(
              ((List<?>) value)
                  .stream()
                      .map(item -> String.valueOf(item).replace("\\", "\\\\").replace("|", "\\|"))
                      .collect(Collectors.joining("|")));
      default -> value instanceof String text ? harmless(text) : value;
    };
  }

  /** A spreadsheet would run a text that begins like a formula; after an apostrophe it does not. */
  private static String harmless(String text) {
    return text.isEmpty() || FORMULA_BEGINS.indexOf(text.charAt(0)) < 0 ? text : "'" + text;
  }
}
