package org.griplore.ingest.grid.json;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.griplore.ingest.grid.CellLook;
import org.griplore.ingest.grid.FormatCode;
import org.griplore.ingest.grid.Grid;
import org.griplore.ingest.grid.GridCell;
import org.griplore.ingest.grid.json.JsonValue.Items;
import org.griplore.ingest.grid.json.JsonValue.Member;
import org.griplore.ingest.grid.json.JsonValue.Members;
import org.griplore.ingest.grid.json.JsonValue.Plain;

/**
 * A list of JSON objects as a grid. An object inside an object adds its members to the row: under
 * their own keys where these are the only ones, under {@code outer inner} where another member of
 * the row is called the same; the {@code value} of a {@code {value, unit}} object stands under the
 * outer key. A list of plain values is one cell, parted by {@code |}.
 *
 * <p>A cell's row is its line in the file. Where objects share a line, or the first stands on the
 * file's first line so that none is left for the header, rows are counted instead: the header 1,
 * the first object 2.
 */
final class JsonTable {
  private static final String VALUE = "value";
  private static final String UNIT = "unit";

  private JsonTable() {}

  static boolean isPlain(Items items) {
    return items.values().stream().allMatch(Plain.class::isInstance);
  }

  static String joined(Items items) {
    return items.values().stream()
        .map(value -> ((Plain) value).text())
        .filter(text -> !text.isEmpty())
        .collect(Collectors.joining(" | "));
  }

  static Grid of(String name, List<GridCell> above, Items items) {
    List<TreeMap<Integer, Plain>> rows = new ArrayList<>();
    Map<List<String>, Integer> paths = new LinkedHashMap<>();
    for (JsonValue value : items.values()) {
      TreeMap<Integer, Plain> row = new TreeMap<>();
      flatten(value, List.of(), row, paths);
      rows.add(row);
    }
    boolean matrix = items.values().stream().allMatch(Items.class::isInstance);
    boolean byLine = standOnLines(items, matrix);
    List<List<GridCell>> cells = new ArrayList<>();
    List<List<String>> columns = List.copyOf(paths.keySet());
    if (!matrix) {
      int line = byLine ? items.values().get(0).line() - 1 : 1;
      List<GridCell> header = new ArrayList<>();
      List<String> names = names(columns);
      for (int i = 0; i < names.size(); i++) {
        if (!names.get(i).isBlank()) {
          header.add(GridCell.of(line, i + 1, names.get(i)));
        }
      }
      if (!header.isEmpty()) {
        cells.add(header);
      }
    }
    Map<Integer, Integer> units = units(paths);
    for (TreeMap<Integer, Plain> row : rows) {
      int counted = cells.size() + 1;
      List<GridCell> line = new ArrayList<>();
      row.forEach(
          (column, plain) -> {
            if (!plain.text().isEmpty()) {
              int at = byLine ? plain.line() : counted;
              GridCell cell = new GridCell(at, column + 1, plain.text(), plain.number(), null);
              line.add(
                  cell.shown(look(units.containsKey(column) ? row.get(units.get(column)) : null)));
            }
          });
      if (!line.isEmpty()) {
        cells.add(line);
      }
    }
    return new Grid(name, above, cells, List.of(), true);
  }

  /** For the column of a value that of the unit beside it. */
  private static Map<Integer, Integer> units(Map<List<String>, Integer> paths) {
    Map<Integer, Integer> units = new HashMap<>();
    paths.forEach(
        (path, column) -> {
          Integer unit =
              path.size() > 1 && last(path).equals(VALUE)
                  ? paths.get(and(outer(path), UNIT))
                  : null;
          if (unit != null) {
            units.put(column, unit);
          }
        });
    return units;
  }

  /** A value's unit stands where a workbook's number format says it. */
  private static CellLook look(Plain unit) {
    return unit == null || unit.text().isEmpty()
        ? CellLook.PLAIN
        : CellLook.PLAIN.with(new FormatCode("", null, unit.text()));
  }

  private static boolean standOnLines(Items items, boolean matrix) {
    int before = matrix ? 0 : 1;
    for (JsonValue value : items.values()) {
      if (value.line() <= before) {
        return false;
      }
      before = value.line();
    }
    return true;
  }

  private static void flatten(
      JsonValue value,
      List<String> path,
      Map<Integer, Plain> row,
      Map<List<String>, Integer> paths) {
    if (value instanceof Members object) {
      for (Member member : object.members()) {
        flatten(member.value(), and(path, member.key()), row, paths);
      }
    } else if (value instanceof Plain plain) {
      row.put(paths.computeIfAbsent(path, p -> paths.size()), plain);
    } else if (value instanceof Items items && path.isEmpty()) {
      for (int i = 0; i < items.values().size(); i++) {
        flatten(items.values().get(i), List.of(Integer.toString(i + 1)), row, paths);
      }
    } else if (value instanceof Items items) {
      row.put(
          paths.computeIfAbsent(path, p -> paths.size()),
          new Plain(items.line(), text(items), null));
    }
  }

  private static String text(Items items) {
    List<String> texts = new ArrayList<>();
    for (JsonValue value : items.values()) {
      if (value instanceof Plain plain) {
        texts.add(plain.text());
      } else if (value instanceof Items inner) {
        texts.add(text(inner));
      }
    }
    return texts.stream().filter(text -> !text.isEmpty()).collect(Collectors.joining(" | "));
  }

  private static List<String> and(List<String> path, String key) {
    List<String> longer = new ArrayList<>(path);
    longer.add(key);
    return List.copyOf(longer);
  }

  private static List<String> names(List<List<String>> paths) {
    Set<List<String>> quantities = new HashSet<>();
    Map<String, Integer> uses = new HashMap<>();
    for (List<String> path : paths) {
      if (path.size() > 1 && last(path).equals(VALUE)) {
        quantities.add(outer(path));
      }
      uses.merge(path.isEmpty() ? VALUE : last(path), 1, Integer::sum);
    }
    List<String> names = new ArrayList<>();
    for (List<String> path : paths) {
      if (path.isEmpty()) {
        names.add(VALUE);
      } else if (path.size() > 1 && quantities.contains(outer(path))) {
        names.add(String.join(" ", last(path).equals(VALUE) ? outer(path) : path));
      } else {
        names.add(uses.get(last(path)) > 1 ? String.join(" ", path) : last(path));
      }
    }
    return names;
  }

  private static String last(List<String> path) {
    return path.get(path.size() - 1);
  }

  private static List<String> outer(List<String> path) {
    return path.subList(0, path.size() - 1);
  }
}
