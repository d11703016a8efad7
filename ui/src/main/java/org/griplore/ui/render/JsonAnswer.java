package org.griplore.ui.render;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.griplore.query.answer.Answer;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Sense;
import org.griplore.store.text.Snippet;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;

/**
 * Writes answers and refusals as JSON. Numbers have full double precision; missing is {@code null}.
 */
public final class JsonAnswer {
  private static final JsonFactory FACTORY =
      new ObjectMapper().getFactory().disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET);

  private JsonAnswer() {}

  /** Writes an answer. */
  public static <R> void write(Answer<R> answer, PrintWriter out) {
    try (JsonGenerator json = FACTORY.createGenerator(out)) {
      json.setPrettyPrinter(new DefaultPrettyPrinter());
      json.writeStartObject();
      json.writeObjectField("question", answer.inquiry());
      json.writeStringField("answer", answer.summary());
      columns(json, answer.columns());
      json.writeFieldName("rows");
      rows(json, answer.columns(), answer.rows());
      json.writeObjectField("excluded", answer.excluded());
      json.writeObjectField("caveats", answer.caveats());
      json.writeObjectField("sources", answer.sources());
      if (!answer.footnotes().isEmpty()) {
        json.writeObjectField("footnotes", answer.footnotes());
      }
      Map<String, Object> wholes = new TreeMap<>();
      answer.wholes().forEach((whole, told) -> wholes.put(whole.key(), told));
      for (var whole : wholes.entrySet()) {
        json.writeObjectField(whole.getKey(), whole.getValue());
      }
      json.writeEndObject();
      json.writeRaw('\n');
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** What each key of the rows means; a list's own columns stand inside its column. */
  private static void columns(JsonGenerator json, List<? extends Column<?>> columns)
      throws IOException {
    json.writeArrayFieldStart("columns");
    for (Column<?> column : columns) {
      Sense sense = column.sense();
      json.writeStartObject();
      json.writeStringField("key", column.key());
      json.writeStringField("title", column.title());
      json.writeStringField("unit", sense.unit());
      if (sense.unitKey() != null) {
        json.writeStringField("unitKey", sense.unitKey());
      }
      json.writeStringField("better", sense.betterWord());
      json.writeStringField("meaning", sense.meaning());
      json.writeStringField("format", column.format().word());
      if (!column.inner().isEmpty()) {
        columns(json, column.inner());
      }
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private static <R> void rows(JsonGenerator json, List<Column<R>> columns, List<R> rows)
      throws IOException {
    json.writeStartArray();
    for (R row : rows) {
      row(json, columns, row);
    }
    json.writeEndArray();
  }

  private static <R> void row(JsonGenerator json, List<Column<R>> columns, R row)
      throws IOException {
    json.writeStartObject();
    for (Column<R> column : columns) {
      json.writeFieldName(column.key());
      value(json, column, column.value().apply(row));
    }
    json.writeEndObject();
  }

  private static void value(JsonGenerator json, Column<?> column, Object value) throws IOException {
    if (value == null) {
      json.writeNull();
      return;
    }
    switch (column.format()) {
      case ROWS -> inner(json, column.inner(), (List<?>) value);
      case SNIPPET -> json.writeString(marked((Snippet) value));
      case FIGURE -> figure(json, column.inner(), value);
      default -> {
        if (value instanceof Double number && !Double.isFinite(number)) {
          throw new IllegalStateException(column.key() + " is no finite number");
        }
        json.writeObject(value);
      }
    }
  }

  /** The parts belong to the figure: both come from the same {@code Column.figure}. */
  @SuppressWarnings("unchecked")
  private static <F> void figure(JsonGenerator json, List<? extends Column<?>> parts, Object figure)
      throws IOException {
    row(json, (List<Column<F>>) parts, (F) figure);
  }

  /** The inner columns belong to the inner rows: both come from the same {@code Column.rows}. */
  @SuppressWarnings("unchecked")
  private static <S> void inner(JsonGenerator json, List<? extends Column<?>> columns, List<?> rows)
      throws IOException {
    rows(json, (List<Column<S>>) columns, (List<S>) rows);
  }

  /** Hits between double asterisks, as in Markdown. */
  private static String marked(Snippet snippet) {
    StringBuilder text = new StringBuilder();
    for (Snippet.Piece piece : snippet.pieces()) {
      text.append(piece.hit() ? "**" + piece.text() + "**" : piece.text());
    }
    return text.toString();
  }

  /** Writes a refusal: one sentence, and the problems behind it. */
  public static void write(Refusal refusal, PrintWriter out) {
    try (JsonGenerator json = FACTORY.createGenerator(out)) {
      json.setPrettyPrinter(new DefaultPrettyPrinter());
      json.writeStartObject();
      json.writeStringField("error", refusal.sentence());
      json.writeArrayFieldStart("problems");
      for (Problem problem : refusal.problems()) {
        json.writeObject(problem);
      }
      json.writeEndArray();
      json.writeEndObject();
      json.writeRaw('\n');
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
