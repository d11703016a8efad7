package org.griplore.ingest.grid.json;

import com.fasterxml.jackson.core.JsonProcessingException;
import java.io.IOException;
import java.io.Reader;
import java.nio.charset.Charset;
import java.util.ArrayList;
import java.util.List;
import org.griplore.ingest.grid.Grid;
import org.griplore.ingest.grid.GridCell;
import org.griplore.ingest.grid.json.JsonValue.Items;
import org.griplore.ingest.grid.json.JsonValue.Member;
import org.griplore.ingest.grid.json.JsonValue.Members;
import org.griplore.ingest.grid.json.JsonValue.Plain;
import org.griplore.ingest.grid.text.TextDecoding;
import org.griplore.store.archive.Original;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;

/**
 * Reads JSON as tables: a list of objects is a table whose header is the objects' keys (so is a
 * list of lists, whose first is the header); plain values beside a list, wherever they stand in the
 * object, are lines above it ({@code key: value}). Where there are several tables, each is named by
 * its path, {@code tests[2].entries}.
 */
public final class JsonReader {
  private final List<Table> tables = new ArrayList<>();

  /** A table before it is known how many there are. */
  private record Table(String path, List<GridCell> above, Items items) {}

  private JsonReader() {}

  public static List<Grid> read(Original original, Charset charset) throws IOException {
    JsonReader json = new JsonReader();
    try (Reader reader = TextDecoding.open(original, charset)) {
      json.find(JsonValue.read(original.name(), reader), "", List.of());
    } catch (JsonProcessingException e) {
      throw broken(original.name(), e);
    }
    json.tables.removeIf(table -> isBare(table.items()));
    if (json.tables.isEmpty()) {
      throw new Refusal(
          original.name()
              + " holds JSON, but no list of objects: expected a list of tyres or results.",
          new Problem(original.name(), "JSON without a list of objects", "a list of objects"));
    }
    return json.tables.stream()
        .map(
            table ->
                JsonTable.of(
                    json.tables.size() == 1 ? "" : table.path(), table.above(), table.items()))
        .toList();
  }

  private static Refusal broken(String name, JsonProcessingException e) {
    int line = e.getLocation() == null ? 1 : e.getLocation().getLineNr();
    int column = e.getLocation() == null ? 1 : e.getLocation().getColumnNr();
    String why = e.getOriginalMessage().lines().findFirst().orElse("").replaceAll("\\.$", "");
    return new Refusal(
        "%s, line %d, column %d: this is no JSON: %s.".formatted(name, line, column, why),
        e,
        new Problem(name + ", line " + line + ", column " + column, "broken JSON", "JSON"));
  }

  private void find(JsonValue value, String path, List<GridCell> above) {
    if (value instanceof Members object) {
      List<GridCell> lines = new ArrayList<>(above);
      lines(object, "", lines);
      inside(object, path, lines);
    } else if (value instanceof Items items) {
      list(items, path, above);
    }
  }

  private void list(Items items, String path, List<GridCell> above) {
    if (isTable(items)) {
      List<JsonValue> rows = new ArrayList<>();
      for (int i = 0; i < items.values().size(); i++) {
        JsonValue value = items.values().get(i);
        if (value instanceof Members object && holdsTable(object)) {
          find(value, path + "[" + (i + 1) + "]", above);
        } else {
          rows.add(value);
        }
      }
      if (!rows.isEmpty()) {
        tables.add(new Table(path, above, new Items(items.line(), rows)));
      }
    } else {
      for (int i = 0; i < items.values().size(); i++) {
        find(items.values().get(i), path + "[" + (i + 1) + "]", above);
      }
    }
  }

  private void inside(Members object, String path, List<GridCell> above) {
    for (Member member : object.members()) {
      String inner = path.isEmpty() ? member.key() : path + "." + member.key();
      if (member.value() instanceof Items items) {
        list(items, inner, above);
      } else if (member.value() instanceof Members nested) {
        inside(nested, inner, above);
      }
    }
  }

  /** The plain values of an object that is no row, as lines above the tables in it. */
  private static void lines(Members object, String prefix, List<GridCell> lines) {
    for (Member member : object.members()) {
      String key = prefix + member.key();
      if (member.value() instanceof Plain plain && !plain.text().isEmpty()) {
        lines.add(GridCell.of(plain.line(), 1, key + ": " + plain.text()));
      } else if (member.value() instanceof Items items && JsonTable.isPlain(items)) {
        String joined = JsonTable.joined(items);
        if (!joined.isEmpty()) {
          lines.add(GridCell.of(items.line(), 1, key + ": " + joined));
        }
      } else if (member.value() instanceof Members nested) {
        lines(nested, key + " ", lines);
      }
    }
  }

  /** A list of objects, or of two lists of plain values or more. */
  private static boolean isTable(Items items) {
    boolean objects = items.values().stream().anyMatch(Members.class::isInstance);
    boolean lists =
        items.values().size() > 1
            && items.values().stream()
                .allMatch(value -> value instanceof Items row && JsonTable.isPlain(row));
    return objects || lists;
  }

  /** Whether there is no value in it at all. */
  private static boolean isBare(JsonValue value) {
    if (value instanceof Items items) {
      return items.values().stream().allMatch(JsonReader::isBare);
    }
    return value instanceof Members object
        ? object.members().stream().map(Member::value).allMatch(JsonReader::isBare)
        : ((Plain) value).text().isEmpty();
  }

  private static boolean holdsTable(Members object) {
    return object.members().stream()
        .map(Member::value)
        .anyMatch(
            value ->
                value instanceof Items items && isTable(items)
                    || value instanceof Members nested && holdsTable(nested));
  }
}
