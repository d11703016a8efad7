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
import java.util.stream.Collectors;
import org.griplore.query.answer.Answer;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Figure;
import org.griplore.query.answer.Format;
import org.griplore.store.text.Snippet;

/**
 * Writes an answer's rows as CSV: comma, decimal point, full precision, missing is empty. Lists of
 * texts are joined by {@code |}; rows inside rows are left to JSON. A figure takes several columns:
 * the value, and the column's parts behind a point.
 */
final class CsvAnswer {
  private static final CsvMapper MAPPER =
      CsvMapper.builder().disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET).build();

  private static final String FORMULA_BEGINS = "=+-@\t\r";

  private CsvAnswer() {}

  static <R> void write(Answer<R> answer, PrintWriter out) {
    List<Column<R>> columns =
        answer.columns().stream().filter(column -> column.format() != Format.ROWS).toList();
    CsvSchema.Builder schema = CsvSchema.builder().setUseHeader(true);
    for (Column<R> column : columns) {
      schema.addColumn(column.key());
      if (column.format() == Format.FIGURE) {
        parts(column).forEach(part -> schema.addColumn(column.key() + "." + part.key()));
      }
    }
    try {
      SequenceWriter writer = MAPPER.writer(schema.build()).forType(List.class).writeValues(out);
      for (R row : answer.rows()) {
        List<Object> cells = new ArrayList<>();
        for (Column<R> column : columns) {
          add(cells, column, column.value().apply(row));
        }
        writer.write(cells);
      }
      if (answer.rows().isEmpty()) {
        out.println(columns.stream().map(Column::key).collect(Collectors.joining(",")));
      }
      writer.flush();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A spreadsheet would run a text that begins like a formula; after an apostrophe it does not. */
  private static String harmless(String text) {
    return text.isEmpty() || FORMULA_BEGINS.indexOf(text.charAt(0)) < 0 ? text : "'" + text;
  }

  /** The columns of a figure's parts but the first, which is the value. */
  private static List<? extends Column<?>> parts(Column<?> column) {
    return column.inner().subList(1, column.inner().size());
  }

  /** The parts belong to the figure: both come from the same {@code Column.figure}. */
  @SuppressWarnings("unchecked")
  private static <F> Object part(Column<?> part, Figure figure) {
    return figure == null ? null : ((Column<F>) part).value().apply((F) figure);
  }

  private static void add(List<Object> cells, Column<?> column, Object value) {
    switch (column.format()) {
      case FIGURE -> {
        Figure figure = (Figure) value;
        cells.add(figure == null ? null : figure.value());
        parts(column).forEach(part -> cells.add(part(part, figure)));
      }
      case SNIPPET -> cells.add(value == null ? null : harmless(((Snippet) value).text()));
      case TEXTS ->
          cells.add(
              value == null
                  ? null
                  : harmless(
                      ((List<?>) value)
                          .stream().map(String::valueOf).collect(Collectors.joining("|"))));
      default -> cells.add(value instanceof String text ? harmless(text) : value);
    }
  }
}
