package org.griplore.ingest.messy;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Writes a sketch as text: delimited, with columns set by blanks, one cell a line, Markdown. */
final class SketchText {
  private SketchText() {}

  /** Fields with a delimiter; a field that holds it is quoted unless {@code bare}. */
  static String delimited(Sketch sketch, String delimiter, boolean bare) {
    return all(sketch).stream()
            .map(
                row ->
                    row.stream()
                        .map(Sketch::plain)
                        .map(cell -> bare || !needsQuotes(cell, delimiter) ? cell : quoted(cell))
                        .collect(Collectors.joining(delimiter)))
            .collect(Collectors.joining("\n"))
        + "\n";
  }

  private static boolean needsQuotes(String cell, String delimiter) {
    return cell.contains(delimiter) || cell.contains("\"");
  }

  private static String quoted(String cell) {
    return "\"" + cell.replace("\"", "\"\"") + "\"";
  }

  private static List<List<String>> all(Sketch sketch) {
    List<List<String>> all = new ArrayList<>(sketch.above());
    all.addAll(sketch.table());
    all.addAll(sketch.below());
    return all;
  }

  /** Columns as wide as their widest cell, set apart by two blanks or more. */
  static String fixed(Sketch sketch) {
    List<String> lines = lines(sketch.above());
    int[] widths = new int[sketch.width()];
    for (List<String> row : sketch.table()) {
      for (int c = 0; c < row.size(); c++) {
        widths[c] = Math.max(widths[c], Sketch.plain(row.get(c)).length());
      }
    }
    for (List<String> row : sketch.table()) {
      StringBuilder line = new StringBuilder();
      for (int c = 0; c < row.size(); c++) {
        String cell = Sketch.plain(row.get(c));
        String blanks = " ".repeat(widths[c] - cell.length());
        boolean left = c == 0 || !row.get(c).matches("[\\d.,:]+");
        line.append(left ? cell + blanks : blanks + cell).append("   ");
      }
      lines.add(line.toString().stripTrailing());
    }
    lines.addAll(lines(sketch.below()));
    return String.join("\n", lines) + "\n";
  }

  private static List<String> lines(List<List<String>> rows) {
    return rows.stream()
        .map(row -> row.stream().map(Sketch::plain).collect(Collectors.joining("  ")))
        .collect(Collectors.toCollection(ArrayList::new));
  }

  /** Each cell in a line of its own, as when a page's table is pasted into a note. */
  static String pasted(Sketch sketch) {
    List<String> lines = lines(sketch.above());
    sketch
        .table()
        .forEach(
            row -> row.stream().map(Sketch::plain).filter(c -> !c.isEmpty()).forEach(lines::add));
    lines.addAll(lines(sketch.below()));
    return String.join("\n", lines) + "\n";
  }

  /** A pipe table between paragraphs; the first line above it is the heading. */
  static String markdown(Sketch sketch) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < sketch.above().size(); i++) {
      String line = String.join(" ", sketch.above().get(i));
      text.append(i == 0 && !line.isEmpty() && !line.contains(": ") ? "# " : "")
          .append(line)
          .append("\n\n");
    }
    for (int r = 0; r < sketch.table().size(); r++) {
      List<String> row = sketch.table().get(r);
      text.append("| ");
      for (int c = 0; c < sketch.width(); c++) {
        text.append(c < row.size() ? Sketch.plain(row.get(c)) : "").append(" | ");
      }
      text.append('\n');
      if (r == 0) {
        text.append("|").append(" --- |".repeat(sketch.width())).append('\n');
      }
    }
    text.append('\n');
    sketch.below().forEach(row -> text.append(String.join(" ", row)).append("\n\n"));
    return text.toString();
  }
}
