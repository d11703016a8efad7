package org.griplore.store.archive;

import java.util.HashMap;
import java.util.Map;
import org.griplore.store.vocabulary.Cell;

/** Writes and reads where a report's details stand: one line a detail, {@code name=cell}. */
final class DetailCells {
  private DetailCells() {}

  static String write(Map<String, Cell> cells, SharedWords sheets) {
    StringBuilder lines = new StringBuilder();
    cells.entrySet().stream()
        .sorted(Map.Entry.comparingByKey())
        .forEach(
            cell ->
                lines
                    .append(lines.isEmpty() ? "" : "\n")
                    .append(cell.getKey())
                    .append('=')
                    .append(
                        CellText.write(cell.getValue(), sheets)
                            .replace("\\", "\\\\")
                            .replace("\n", "\\n")));
    return lines.toString();
  }

  static Map<String, Cell> read(String written, CellText.SheetNames sheets) {
    Map<String, Cell> cells = new HashMap<>();
    // only a line feed parts lines: a cell's text may hold a carriage return
    for (String line : written.isEmpty() ? new String[0] : written.split("\n")) {
      int equals = line.indexOf('=');
      String cell = unescape(line.substring(equals + 1));
      cells.put(line.substring(0, equals), CellText.read(cell, sheets));
    }
    return cells;
  }

  private static String unescape(String text) {
    if (text.indexOf('\\') < 0) {
      return text;
    }
    StringBuilder plain = new StringBuilder();
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '\\' && i + 1 < text.length()) {
        char next = text.charAt(++i);
        plain.append(next == 'n' ? '\n' : next);
      } else {
        plain.append(c);
      }
    }
    return plain.toString();
  }
}
