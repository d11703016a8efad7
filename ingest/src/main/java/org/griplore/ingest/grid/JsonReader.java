package org.griplore.ingest.grid;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import java.io.IOException;
import java.io.Reader;
import java.nio.charset.Charset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.griplore.store.archive.Original;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;

/**
 * Reads JSON as tables: a list of objects is a table whose header is the objects' keys; plain
 * values beside the list are lines above it ({@code key: value}); an object inside an object adds
 * its keys to the row. A cell's row is its line in the file, its column the order of its key.
 */
final class JsonReader {
  private static final JsonFactory FACTORY =
      JsonFactory.builder()
          .streamReadConstraints(
              StreamReadConstraints.builder().maxNestingDepth(50).maxStringLength(1 << 20).build())
          .build();

  private final JsonParser parser;
  private final List<Grid> grids = new ArrayList<>();

  private JsonReader(JsonParser parser) {
    this.parser = parser;
  }

  static List<Grid> read(Original original, Charset charset) throws IOException {
    try (Reader reader = TextDecoding.open(original, charset);
        JsonParser parser = FACTORY.createParser(reader)) {
      JsonReader json = new JsonReader(parser);
      json.value(parser.nextToken(), "", List.of());
      if (json.grids.isEmpty()) {
        throw new Refusal(
            original.name()
                + " holds JSON, but no list of objects: expected a list of tyres or results.",
            new Problem(original.name(), "JSON without a list of objects", "a list of objects"));
      }
      return json.grids;
    } catch (JsonProcessingException e) {
      int line = e.getLocation() == null ? 1 : e.getLocation().getLineNr();
      int column = e.getLocation() == null ? 1 : e.getLocation().getColumnNr();
      throw new Refusal(
          "%s, line %d, column %d: this is no JSON: %s."
              .formatted(original.name(), line, column, firstLine(e.getOriginalMessage())),
          e,
          new Problem(original.name() + ", line " + line, "broken JSON", "JSON"));
    }
  }

  private static String firstLine(String text) {
    return text.lines().findFirst().orElse("").replaceAll("\\.$", "");
  }

  private void value(JsonToken token, String path, List<GridCell> above) throws IOException {
    if (token == JsonToken.START_ARRAY) {
      array(path, above);
    } else if (token == JsonToken.START_OBJECT) {
      object(path, above);
    }
  }

  /** A scalar of the source with its place. */
  private record Scalar(String key, String text, Double number, int line) {}

  private Scalar scalar(String key, JsonToken token) throws IOException {
    int line = parser.currentTokenLocation().getLineNr();
    return switch (token) {
      case VALUE_NULL -> null;
      case VALUE_NUMBER_FLOAT, VALUE_NUMBER_INT ->
          new Scalar(key, parser.getText(), parser.getDoubleValue(), line);
      default -> new Scalar(key, parser.getText().strip(), null, line);
    };
  }

  /** An object that is no row: its scalars stand above the tables in it. */
  private void object(String path, List<GridCell> above) throws IOException {
    List<GridCell> lines = new ArrayList<>(above);
    while (parser.nextToken() == JsonToken.FIELD_NAME) {
      String key = parser.currentName();
      JsonToken token = parser.nextToken();
      if (token.isScalarValue()) {
        Scalar scalar = scalar(key, token);
        if (scalar != null && !scalar.text().isEmpty()) {
          lines.add(new GridCell(scalar.line(), 1, key + ": " + scalar.text(), null, null));
        }
      } else {
        value(token, path.isEmpty() ? key : path + " " + key, lines);
      }
    }
  }

  private void array(String path, List<GridCell> above) throws IOException {
    List<Map<String, Scalar>> rows = new ArrayList<>();
    List<Integer> lines = new ArrayList<>();
    JsonToken token;
    while ((token = parser.nextToken()) != JsonToken.END_ARRAY) {
      if (token == JsonToken.START_OBJECT) {
        int line = parser.currentTokenLocation().getLineNr();
        Map<String, Scalar> row = new LinkedHashMap<>();
        boolean nested = row(row, "", path, above);
        if (!nested) {
          rows.add(row);
          lines.add(line);
        }
      } else {
        value(token, path, above);
      }
    }
    if (!rows.isEmpty()) {
      grids.add(grid(path, above, rows, lines));
    }
  }

  /**
   * Reads an object of a list.
   *
   * @return whether it holds lists of objects of its own: then its scalars stood above those
   */
  private boolean row(Map<String, Scalar> row, String prefix, String path, List<GridCell> above)
      throws IOException {
    boolean nested = false;
    while (parser.nextToken() == JsonToken.FIELD_NAME) {
      String key = parser.currentName();
      JsonToken token = parser.nextToken();
      String name = row.containsKey(key) ? prefix + key : key;
      if (token.isScalarValue()) {
        Scalar scalar = scalar(name, token);
        if (scalar != null && !scalar.text().isEmpty()) {
          row.put(name, scalar);
        } else {
          row.putIfAbsent(name, null);
        }
      } else if (token == JsonToken.START_OBJECT) {
        nested |= row(row, key + " ", path, above);
      } else {
        int before = grids.size();
        List<GridCell> lines = new ArrayList<>(above);
        row.values().stream()
            .filter(java.util.Objects::nonNull)
            .forEach(
                s -> lines.add(new GridCell(s.line(), 1, s.key() + ": " + s.text(), null, null)));
        array(path.isEmpty() ? key : path + " " + key, lines);
        nested |= grids.size() > before;
      }
    }
    return nested;
  }

  private Grid grid(
      String path, List<GridCell> above, List<Map<String, Scalar>> rows, List<Integer> lines) {
    List<String> keys = new ArrayList<>();
    rows.forEach(row -> row.keySet().stream().filter(k -> !keys.contains(k)).forEach(keys::add));
    List<List<GridCell>> cells = new ArrayList<>();
    int headerLine = Math.max(1, lines.get(0) - 1);
    List<GridCell> header = new ArrayList<>();
    for (int i = 0; i < keys.size(); i++) {
      header.add(GridCell.of(headerLine, i + 1, keys.get(i)));
    }
    cells.add(header);
    for (Map<String, Scalar> row : rows) {
      List<GridCell> line = new ArrayList<>();
      for (int i = 0; i < keys.size(); i++) {
        Scalar scalar = row.get(keys.get(i));
        if (scalar != null) {
          line.add(new GridCell(scalar.line(), i + 1, scalar.text(), scalar.number(), null));
        }
      }
      if (!line.isEmpty()) {
        cells.add(line);
      }
    }
    return new Grid(grids.isEmpty() ? "" : path, above, cells, List.of(), true);
  }
}
