package org.griplore.ui.render;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.TreeMap;
import org.griplore.query.answer.Answer;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Figure;
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
      json.writeFieldName("rows");
      rows(json, answer.columns(), answer.rows());
      json.writeObjectField("excluded", answer.excluded());
      json.writeObjectField("caveats", answer.caveats());
      json.writeObjectField("sources", answer.sources());
      if (!answer.footnotes().isEmpty()) {
        json.writeObjectField("footnotes", answer.footnotes());
      }
      for (var relation : new TreeMap<>(answer.relations()).entrySet()) {
        json.writeObjectField(relation.getKey(), relation.getValue());
      }
      json.writeEndObject();
      json.writeRaw('\n');
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static <R> void rows(JsonGenerator json, List<Column<R>> columns, List<R> rows)
      throws IOException {
    json.writeStartArray();
    for (R row : rows) {
      json.writeStartObject();
      for (Column<R> column : columns) {
        json.writeFieldName(column.key());
        value(json, column, column.value().apply(row));
      }
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private static void value(JsonGenerator json, Column<?> column, Object value) throws IOException {
    if (value == null) {
      json.writeNull();
      return;
    }
    switch (column.format()) {
      case ROWS -> inner(json, column.inner(), (List<?>) value);
      case SNIPPET -> json.writeString(marked((Snippet) value));
      case FIGURE -> figure(json, (Figure) value);
      default -> {
        if (value instanceof Double number && !Double.isFinite(number)) {
          throw new IllegalStateException(column.key() + " is no finite number");
        }
        json.writeObject(value);
      }
    }
  }

  private static void figure(JsonGenerator json, Figure figure) throws IOException {
    json.writeObject(figure);
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
