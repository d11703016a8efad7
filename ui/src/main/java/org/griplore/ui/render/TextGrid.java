package org.griplore.ui.render;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Format;

/** Sets rows in columns of a fixed-width face, numbers to the right; long texts are wrapped. */
final class TextGrid {
  private static final String GAP = "  ";
  private static final int NARROWEST_TEXT = 12;

  private final TerminalStyle style;

  TextGrid(TerminalStyle style) {
    this.style = style;
  }

  <R> void write(List<Column<R>> columns, List<R> rows, PrintWriter out) {
    List<Column<R>> shown = columns.stream().filter(column -> !column.detail()).toList();
    List<List<String>> lines = new ArrayList<>();
    for (R row : rows) {
      lines.add(shown.stream().map(column -> Shown.of(column, row)).toList());
    }
    List<String> labels = shown.stream().map(Column::heading).toList();
    boolean[] right = new boolean[shown.size()];
    for (int i = 0; i < right.length; i++) {
      right[i] = isNumber(shown.get(i).format());
    }
    int[] widths = widths(labels, lines, right);
    List<int[]> strips = strips(widths);
    for (int[] strip : strips) {
      if (strip != strips.get(0)) {
        out.println();
      }
      print(out, labels, widths, right, strip, true);
      lines.forEach(line -> print(out, line, widths, right, strip, false));
    }
  }

  /** A table that is wider than a line falls into strips, each with the first column. */
  private List<int[]> strips(int[] widths) {
    List<int[]> strips = new ArrayList<>();
    List<Integer> strip = new ArrayList<>();
    int total = 0;
    for (int i = 0; i < widths.length; i++) {
      if (strip.size() > 1 && total + GAP.length() + widths[i] > style.width()) {
        strips.add(strip.stream().mapToInt(Integer::intValue).toArray());
        strip.clear();
        strip.add(0);
        total = widths[0];
      }
      strip.add(i);
      total += widths[i] + (i == 0 ? 0 : GAP.length());
    }
    strips.add(strip.stream().mapToInt(Integer::intValue).toArray());
    return strips;
  }

  static boolean isNumber(Format format) {
    return switch (format) {
      case COUNT, YEAR, PLACE, SHARE, CHANCE, NUMBER, DELTA, FIGURE, RESULT -> true;
      case TEXT, UNIT, MODEL, LINE, TEST, DISCIPLINE, DATE, FLAG, SNIPPET, ROWS, TEXTS -> false;
    };
  }

  private int[] widths(List<String> labels, List<List<String>> lines, boolean[] right) {
    int[] widths = new int[labels.size()];
    for (int i = 0; i < widths.length; i++) {
      int column = i;
      widths[i] =
          Math.max(
              right[i] ? longestWord(labels.get(i)) : labels.get(i).length(),
              lines.stream()
                  .flatMap(line -> line.get(column).lines())
                  .mapToInt(String::length)
                  .max()
                  .orElse(0));
    }
    narrow(widths, right);
    return widths;
  }

  private static int longestWord(String label) {
    int longest = 0;
    for (String word : label.split(" ")) {
      longest = Math.max(longest, word.length());
    }
    return longest;
  }

  /** Takes from the widest text column until the table fits, or none can give more. */
  private void narrow(int[] widths, boolean[] right) {
    int total = GAP.length() * (widths.length - 1);
    for (int width : widths) {
      total += width;
    }
    while (total > style.width()) {
      int widest = -1;
      for (int i = 0; i < widths.length; i++) {
        if (!right[i] && widths[i] > NARROWEST_TEXT && (widest < 0 || widths[i] > widths[widest])) {
          widest = i;
        }
      }
      if (widest < 0) {
        return;
      }
      widths[widest]--;
      total--;
    }
  }

  private void print(
      PrintWriter out,
      List<String> cells,
      int[] widths,
      boolean[] right,
      int[] strip,
      boolean strong) {
    List<List<String>> wrapped = new ArrayList<>();
    int height = 1;
    for (int column : strip) {
      List<String> pieces =
          cells.get(column).lines().flatMap(l -> wrap(l, widths[column]).stream()).toList();
      wrapped.add(pieces);
      height = Math.max(height, pieces.size());
    }
    for (int line = 0; line < height; line++) {
      StringBuilder text = new StringBuilder();
      for (int i = 0; i < strip.length; i++) {
        String piece = line < wrapped.get(i).size() ? wrapped.get(i).get(line) : "";
        String pad = " ".repeat(Math.max(0, widths[strip[i]] - piece.length()));
        text.append(i == 0 ? "" : GAP).append(right[strip[i]] ? pad + piece : piece + pad);
      }
      String stripped = text.toString().stripTrailing();
      out.println(strong ? style.strong(stripped) : stripped);
    }
  }

  /** Breaks a text at spaces so that each line fits; a longer word is cut. */
  static List<String> wrap(String text, int width) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : text.split(" ")) {
      String rest = word;
      while (rest.length() > width) {
        if (!line.isEmpty()) {
          lines.add(line.toString());
          line.setLength(0);
        }
        lines.add(rest.substring(0, width));
        rest = rest.substring(width);
      }
      if (!line.isEmpty() && line.length() + 1 + rest.length() > width) {
        lines.add(line.toString());
        line.setLength(0);
      }
      line.append(line.isEmpty() ? "" : " ").append(rest);
    }
    lines.add(line.toString());
    return lines;
  }
}
