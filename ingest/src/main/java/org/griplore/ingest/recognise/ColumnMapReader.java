package org.griplore.ingest.recognise;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Set;
import org.griplore.store.vocabulary.Dimension;
import org.griplore.store.vocabulary.Direction;
import org.griplore.store.vocabulary.DisciplineCatalogue;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;
import org.griplore.store.vocabulary.Unit;
import org.griplore.store.vocabulary.UnitWords;

/** Reads and writes column maps as JSON; the shape is described in FORMS.md. */
public final class ColumnMapReader {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final Set<String> OF_TABLE =
      Set.of("headerRow", "decimal", "dates", "columns", "reading");
  private static final Set<String> OF_COLUMN =
      Set.of("column", "header", "meaning", "unit", "better");

  private final String file;
  private final DisciplineCatalogue catalogue;

  private ColumnMapReader(String file, DisciplineCatalogue catalogue) {
    this.file = file;
    this.catalogue = catalogue;
  }

  /**
   * Reads a map.
   *
   * @param file what to call it where something is wrong with it
   * @throws Refusal with the place, what was found and what was expected
   */
  public static ColumnMap read(String text, String file, DisciplineCatalogue catalogue) {
    ColumnMapReader reader = new ColumnMapReader(file, catalogue);
    try {
      return reader.map(JSON.readTree(text));
    } catch (JsonProcessingException e) {
      String place =
          e.getLocation() == null ? file : file + ", line " + e.getLocation().getLineNr();
      throw new Refusal(
          place + ": this is no JSON; expected a column map like {\"columns\": [...]}.",
          e,
          new Problem(place, "", "JSON"));
    }
  }

  private ColumnMap map(JsonNode root) {
    if (root == null || !root.isObject()) {
      throw wrong("", "", "an object like {\"columns\": [...]}");
    }
    refuseOthers(root, "", OF_TABLE);
    JsonNode row = root.get("headerRow");
    if (row != null && (!row.isInt() || row.asInt() < 1)) {
      throw wrong("headerRow", row.asText(), "a row's number from 1");
    }
    DecimalMark decimal =
        switch (text(root, "", "decimal", "point")) {
          case "point" -> root.has("decimal") ? DecimalMark.POINT : null;
          case "comma" -> DecimalMark.COMMA;
          default -> throw wrong("decimal", root.get("decimal").asText(), "comma or point");
        };
    Boolean monthFirst =
        switch (text(root, "", "dates", "")) {
          case "" -> null;
          case "day-first" -> false;
          case "month-first" -> true;
          default -> throw wrong("dates", root.get("dates").asText(), "day-first or month-first");
        };
    JsonNode columns = root.get("columns");
    if (columns != null && !columns.isArray()) {
      throw wrong("columns", columns.toString(), "a list of columns in [ ]");
    }
    List<ColumnMap.Rule> rules = new ArrayList<>();
    for (int i = 0; columns != null && i < columns.size(); i++) {
      rules.add(rule(columns.get(i), "columns[" + i + "]"));
    }
    Integer reading =
        switch (text(root, "", "reading", "")) {
          case "" -> null;
          case "best" -> 1;
          case "second" -> 2;
          default -> throw wrong("reading", root.get("reading").asText(), "best or second");
        };
    return new ColumnMap(row == null ? null : row.asInt(), decimal, monthFirst, rules, reading);
  }

  private ColumnMap.Rule rule(JsonNode node, String at) {
    if (!node.isObject()) {
      throw wrong(at, node.toString(), "an object like {\"header\": ..., \"meaning\": ...}");
    }
    refuseOthers(node, at + ".", OF_COLUMN);
    JsonNode number = node.get("column");
    if (number != null && (!number.isInt() || number.asInt() < 1)) {
      throw wrong(at + ".column", number.asText(), "a column's number from 1");
    }
    if (number == null && !node.has("header")) {
      throw wrong(at, node.toString(), "a header or a column's number, to say which column");
    }
    ColumnRole role = null;
    if (node.has("meaning")) {
      String meaning = text(node, at + ".", "meaning", "");
      role =
          ColumnMeaning.of(meaning, catalogue)
              .orElseThrow(
                  () -> wrong(at + ".meaning", meaning, ColumnMeaning.expected(catalogue)));
    }
    Unit unit = unit(node, at, role);
    return new ColumnMap.Rule(
        number == null ? null : number.asInt(),
        node.has("header") ? text(node, at + ".", "header", "") : null,
        role,
        unit,
        better(node, at, unit));
  }

  private Unit unit(JsonNode node, String at, ColumnRole role) {
    if (!node.has("unit")) {
      return null;
    }
    String text = text(node, at + ".", "unit", "");
    Unit unit =
        UnitWords.ofText(text)
            .map(UnitWords.Recognised::unit)
            .orElseThrow(() -> wrong(at + ".unit", text, "a unit like m, ft, km/h or % of best"));
    if (role != null && !(role instanceof ColumnRole.Value)) {
      throw wrong(at + ".unit", text, "no unit, as the column holds no values of a discipline");
    }
    if (role instanceof ColumnRole.Value value && !value.discipline().accepts(unit)) {
      String like = value.discipline().unit().symbol();
      throw wrong(at + ".unit", text, "a unit of " + value.discipline().key() + ", like " + like);
    }
    return unit;
  }

  /**
   * Which way metres are better is the discipline's; only scales of per cents may run either way.
   */
  private Direction better(JsonNode node, String at, Unit unit) {
    if (!node.has("better")) {
      return null;
    }
    String text = text(node, at + ".", "better", "");
    if (!text.equals("high") && !text.equals("low")) {
      throw wrong(at + ".better", text, "high or low");
    }
    if (unit == null || unit.dimension() != Dimension.RELATIVE) {
      throw wrong(
          at + ".better",
          text,
          "\"better\" with a unit in per cent only; where 1 is the best mark, the unit is"
              + " \"mark (1 best)\"");
    }
    return text.equals("high") ? Direction.HIGH : Direction.LOW;
  }

  private String text(JsonNode node, String at, String name, String absent) {
    JsonNode value = node.get(name);
    if (value == null) {
      return absent;
    }
    if (!value.isTextual()) {
      throw wrong(at + name, value.toString(), "a text in quotation marks");
    }
    return value.asText().strip();
  }

  private void refuseOthers(JsonNode node, String at, Set<String> known) {
    for (Iterator<String> names = node.fieldNames(); names.hasNext(); ) {
      String name = names.next();
      if (!known.contains(name)) {
        throw wrong(
            at + name, name, "one of " + String.join(", ", known.stream().sorted().toList()));
      }
    }
  }

  private Refusal wrong(String at, String found, String expected) {
    String place = at.isEmpty() ? file : file + ", " + at;
    return new Refusal(
        "%s: found \"%s\"; expected %s.".formatted(place, found, expected),
        new Problem(place, found, expected));
  }

  /** The map as JSON in one line; what {@link #read} reads back. */
  public static String text(ColumnMap map) {
    ObjectNode root = JSON.createObjectNode();
    if (map.headerRow() != null) {
      root.put("headerRow", map.headerRow());
    }
    if (map.decimal() != null) {
      root.put("decimal", map.decimal() == DecimalMark.COMMA ? "comma" : "point");
    }
    if (map.monthFirst() != null) {
      root.put("dates", map.monthFirst() ? "month-first" : "day-first");
    }
    if (map.reading() != null) {
      root.put("reading", map.reading() == 1 ? "best" : "second");
    }
    for (ColumnMap.Rule rule : map.columns()) {
      ObjectNode node = root.withArray("/columns").addObject();
      if (rule.column() != null) {
        node.put("column", rule.column());
      }
      if (rule.header() != null) {
        node.put("header", rule.header());
      }
      if (rule.role() != null) {
        node.put("meaning", ColumnMeaning.word(rule.role()));
      }
      if (rule.unit() != null) {
        node.put("unit", rule.unit().symbol());
      }
      if (rule.better() != null) {
        node.put("better", rule.better() == Direction.HIGH ? "high" : "low");
      }
    }
    return root.toString();
  }

  /** The same, laid out to be edited. */
  public static String pretty(ColumnMap map) {
    return text(map)
        .replace("\"columns\":[{", "\n  \"columns\": [\n    {")
        .replace("},{", "},\n    {")
        .replace("}]}", "}\n  ]\n}\n");
  }
}
