package org.griplore.ui.web.intake;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import org.griplore.store.archive.ColumnMapRecord;
import org.griplore.ui.web.chart.Charts;
import org.griplore.ui.web.link.Symbols;

/**
 * What is remembered of one layout of tables.
 *
 * @param number by which it is forgotten
 * @param layout the tables' headers, and who published them where that is stated
 * @param file the file it was said of
 * @param day when
 * @param said what was said, a sentence's part each
 */
public record RememberedView(
    int number, String layout, String file, String day, List<String> said) {
  public static RememberedView of(ColumnMapRecord map) {
    return new RememberedView(
        map.id(), map.layout(), map.file(), map.saidAt().toString().substring(0, 10), said(map));
  }

  private static List<String> said(ColumnMapRecord map) {
    try {
      return said(Charts.JSON.readTree(map.map()));
    } catch (JsonProcessingException e) {
      return List.of(map.map());
    }
  }

  private static List<String> said(JsonNode map) {
    List<String> said = new ArrayList<>();
    for (JsonNode column : map.path("columns")) {
      List<String> parts = new ArrayList<>();
      column.path("meaning").asText().lines().forEach(parts::add);
      column
          .path("unit")
          .asText()
          .lines()
          .map(unit -> "in " + Symbols.set(unit))
          .forEach(parts::add);
      column.path("better").asText().lines().map(way -> way + " is better").forEach(parts::add);
      said.add(name(column) + ": " + String.join(", ", parts));
    }
    map.path("headerRow").asText().lines().map(row -> "headers in row " + row).forEach(said::add);
    map.path("decimal").asText().lines().map(mark -> "decimal " + mark).forEach(said::add);
    map.path("dates").asText().lines().map(order -> "dates " + order).forEach(said::add);
    return said;
  }

  private static String name(JsonNode column) {
    return column.has("header")
        ? "\u201c" + column.get("header").asText() + "\u201d"
        : "column " + column.path("column").asText();
  }
}
