package org.griplore.ingest.grid.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.List;
import org.griplore.ingest.grid.CellCount;
import org.griplore.ingest.grid.VisibleText;
import org.griplore.store.vocabulary.Refusal;

/** A JSON value that knows the line it begins on. */
sealed interface JsonValue {
  /** 1-based line of the source. */
  int line();

  /**
   * A text, number, truth value or null; null has an empty text, a number beyond what a double
   * holds is a text.
   */
  record Plain(int line, String text, Double number) implements JsonValue {}

  /** A list. */
  record Items(int line, List<JsonValue> values) implements JsonValue {}

  /** An object; its members in the source's order. */
  record Members(int line, List<Member> members) implements JsonValue {}

  /** A member of an object. */
  record Member(String key, JsonValue value) {}

  /**
   * Reads a whole text. Several values one after another (JSON Lines) are one list.
   *
   * @throws Refusal when it holds too many values
   * @throws com.fasterxml.jackson.core.JsonProcessingException where it is no JSON, names a member
   *     of an object twice or nests deeper than 50
   */
  static JsonValue read(String name, Reader reader) throws IOException {
    JsonFactory factory =
        JsonFactory.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .streamReadConstraints(
                StreamReadConstraints.builder()
                    .maxNestingDepth(50)
                    .maxStringLength(1 << 20)
                    .build())
            .build();
    try (JsonParser parser = factory.createParser(reader)) {
      List<JsonValue> values = new ArrayList<>();
      CellCount count = new CellCount(name);
      while (parser.nextToken() != null) {
        values.add(value(parser, count));
      }
      return values.size() == 1 ? values.get(0) : new Items(1, values);
    }
  }

  private static JsonValue value(JsonParser parser, CellCount count) throws IOException {
    int line = parser.currentTokenLocation().getLineNr();
    count.add(1);
    switch (parser.currentToken()) {
      case START_ARRAY -> {
        List<JsonValue> values = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
          values.add(value(parser, count));
        }
        return new Items(line, values);
      }
      case START_OBJECT -> {
        List<Member> members = new ArrayList<>();
        while (parser.nextToken() == JsonToken.FIELD_NAME) {
          String key = parser.currentName();
          parser.nextToken();
          members.add(new Member(key, value(parser, count)));
        }
        return new Members(line, members);
      }
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> {
        double number = parser.getDoubleValue();
        return new Plain(line, parser.getText(), Double.isFinite(number) ? number : null);
      }
      case VALUE_NULL -> {
        return new Plain(line, "", null);
      }
      default -> {
        return new Plain(line, VisibleText.of(parser.getText()), null);
      }
    }
  }
}
