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
 * texts are joined by {@code |}; rows inside rows are left to JSON. A figure takes four columns:
 * the value, {@code .place}, {@code .delta} and {@code .result}.
 */
final class CsvAnswer {
  private static final CsvMapper MAPPER =
      CsvMapper.builder().disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET).build();

  private CsvAnswer() {}

  static <R> void write(Answer<R> answer, PrintWriter out) {
    List<Column<R>> columns =
        answer.columns().stream().filter(column -> column.format() != Format.ROWS).toList();
    CsvSchema.Builder schema = CsvSchema.builder().setUseHeader(true);
    for (Column<R> column : columns) {
      schema.addColumn(column.key());
      if (column.format() == Format.FIGURE) {
        schema.addColumn(column.key() + ".place");
        schema.addColumn(column.key() + ".delta");
        schema.addColumn(column.key() + ".result");
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

  private static void add(List<Object> cells, Column<?> column, Object value) {
    switch (column.format()) {
      case FIGURE -> {
        Figure figure = (Figure) value;
        cells.add(figure == null ? null : figure.value());
        cells.add(figure == null ? null : figure.place());
        cells.add(figure == null ? null : figure.delta());
        cells.add(figure == null ? null : figure.result());
      }
      case SNIPPET -> cells.add(value == null ? null : ((Snippet) value).text());
      case TEXTS ->
          cells.add(
              value == null
                  ? null
                  : ((List<?>) value)
                      .stream().map(String::valueOf).collect(Collectors.joining("|")));
      default -> cells.add(value);
    }
  }
}
