package org.griplore.store.vocabulary;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Reads JSON into maps, lists, texts, numbers as {@code Double}, truth values and null. Every
 * command reads the catalogue when it starts: this takes a third of the time that binding to
 * objects does.
 */
final class JsonValues {
  private JsonValues() {}

  static Object read(InputStream in) throws IOException {
    try (JsonParser parser = new JsonFactory().createParser(in)) {
      return value(parser, parser.nextToken());
    }
  }

  private static Object value(JsonParser parser, JsonToken token) throws IOException {
    if (token == null) {
      return null;
    }
    return switch (token) {
      case START_OBJECT -> object(parser);
      case START_ARRAY -> array(parser);
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> parser.getDoubleValue();
      case VALUE_TRUE -> true;
      case VALUE_FALSE -> false;
      case VALUE_NULL -> null;
      default -> parser.getText();
    };
  }

  private static Map<String, Object> object(JsonParser parser) throws IOException {
    Map<String, Object> fields = new LinkedHashMap<>();
    while (parser.nextToken() == JsonToken.FIELD_NAME) {
      String name = parser.currentName();
      fields.put(name, value(parser, parser.nextToken()));
    }
    return fields;
  }

  private static List<Object> array(JsonParser parser) throws IOException {
    List<Object> elements = new ArrayList<>();
    JsonToken token;
    while ((token = parser.nextToken()) != JsonToken.END_ARRAY) {
      elements.add(value(parser, token));
    }
    return elements;
  }
}
