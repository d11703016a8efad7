package org.griplore.ui.render;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.griplore.query.Questions;
import org.griplore.query.question.Question;
import org.griplore.ui.DemoArchive;
import org.griplore.ui.command.Typed;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every answer's CSV, read back by the rules of RFC 4180 and of ANSWERS.md, says what its JSON
 * says: as many lines as rows, as many cells as heads, and in each the same value.
 */
class CsvReadBackTest {
  private static final List<String> MORE =
      List.of(
          "table --models \"Velmora Aurelis 5\" \"Kirazumi Hayari S-300\" \"Velmora Aurelis 4\" --with"
              + " predecessors rivals --weights wet-braking=3,wear=1",
          "standings --by places --discipline overall",
          "outlook --models \"Velmora Aurelis 5\" \"Kirazumi Hayari S-300\" --size \"205/55 R16\"",
          "decisions --which ever",
          "coverage");

  static Stream<String> lines() {
    return Stream.concat(Questions.all().stream().map(Question::example), MORE.stream());
  }

  @ParameterizedTest
  @MethodSource("lines")
  void csvSaysWhatJsonSays(String line) throws IOException {
    JsonNode json = new ObjectMapper().readTree(Typed.on(DemoArchive.folder(), line, "json"));
    List<String[]> csv = rows(Typed.on(DemoArchive.folder(), line, "csv"));
    List<String> heads = List.of(csv.get(0));
    assertThat(heads).doesNotHaveDuplicates();
    assertThat(csv).as("lines").hasSize(1 + json.at("/rows").size());
    for (int i = 0; i < json.at("/rows").size(); i++) {
      Map<String, String> expected = new TreeMap<>();
      flat(json.at("/rows").get(i), json.at("/columns"), "", expected);
      Map<String, String> found = new TreeMap<>();
      assertThat(csv.get(i + 1)).as("cells of line " + i).hasSize(heads.size());
      for (int c = 0; c < heads.size(); c++) {
        found.put(heads.get(c), bare(csv.get(i + 1)[c]));
      }
      assertThat(found).as("line " + i).isEqualTo(expected);
    }
  }

  /** A row of JSON as CSV's cells. */
  private static void flat(
      JsonNode row, JsonNode columns, String before, Map<String, String> cells) {
    for (JsonNode column : columns) {
      String key = column.get("key").asText();
      JsonNode value = row == null ? null : row.get(key);
      switch (column.get("format").asText()) {
        case "rows" -> {}
        case "figure" -> {
          boolean none = value == null || value.isNull();
          flat(none ? null : value, column.get("columns"), key + ".", cells);
          String first = column.at("/columns/0/key").asText();
          cells.put(key, cells.remove(key + "." + first));
        }
        case "snippet" -> cells.put(before + key, text(value).replace("**", ""));
        default -> cells.put(before + key, text(value));
      }
    }
  }

  private static String text(JsonNode value) {
    if (value == null || value.isNull()) {
      return "";
    }
    if (!value.isArray()) {
      return value.asText();
    }
    List<String> items = new ArrayList<>();
    for (Iterator<JsonNode> each = value.elements(); each.hasNext(); ) {
      items.add(each.next().asText().replace("\\", "\\\\").replace("|", "\\|"));
    }
    return String.join("|", items);
  }

  /** A text that begins like a formula stands behind an apostrophe. */
  private static String bare(String cell) {
    return cell.matches("(?s)'[=+\\-@\t\r].*") ? cell.substring(1) : cell;
  }

  private static List<String[]> rows(String csv) throws IOException {
    CsvMapper mapper = CsvMapper.builder().enable(CsvParser.Feature.WRAP_AS_ARRAY).build();
    try (MappingIterator<String[]> lines = mapper.readerFor(String[].class).readValues(csv)) {
      return lines.readAll();
    }
  }
}
