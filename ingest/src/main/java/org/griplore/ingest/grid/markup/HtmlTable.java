package org.griplore.ingest.grid.markup;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.griplore.ingest.grid.Grid;
import org.griplore.ingest.grid.GridCell;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;
import org.jsoup.nodes.Element;
import org.jsoup.select.Elements;

/**
 * A table of a page as a grid. Rows are counted as they stand in the table, columns as they are
 * shown: a cell that spans several pushes those behind it on. A hidden row is read and marked.
 */
final class HtmlTable {
  /** As browsers do (HTML Standard, 4.9.12: colspan at most 1000). */
  private static final int WIDEST_SPAN = 1000;

  private static final int MOST_PLACES = 500_000;
  private static final Pattern SPAN = Pattern.compile("\\d{1,9}");

  private final List<List<GridCell>> rows = new ArrayList<>();
  private final List<Grid.Merge> merges = new ArrayList<>();
  private final Set<Integer> hidden = new HashSet<>();
  private final Set<Long> taken = new HashSet<>();

  private HtmlTable() {}

  /** Whether a table holds no other, and two rows and two columns or more. */
  static boolean isData(Element table) {
    return table.select("table").size() == 1
        && table.select("tr").size() >= 2
        && table.select("tr").stream().anyMatch(row -> cells(row).count() >= 2);
  }

  private static Stream<Element> cells(Element row) {
    return row.children().stream()
        .filter(cell -> cell.normalName().equals("td") || cell.normalName().equals("th"));
  }

  static Grid grid(Element table, String heading, List<GridCell> preamble) {
    HtmlTable reader = new HtmlTable();
    Elements lines = table.select("tr");
    for (int i = 0; i < lines.size(); i++) {
      reader.row(lines.get(i), i + 1, lines.size());
    }
    Elements caption = table.select("> caption");
    String name = caption.isEmpty() ? heading : HtmlText.of(caption.get(0));
    return new Grid(name, preamble, reader.rows, reader.merges, false)
        .hiding(new Grid.Hidden(HtmlText.isHidden(table), reader.hidden, Set.of()));
  }

  private void row(Element row, int number, int last) {
    List<GridCell> cells = new ArrayList<>();
    int column = 1;
    for (Element cell : cells(row).toList()) {
      while (taken.contains(place(number, column))) {
        column++;
      }
      int wide = span(cell, "colspan", WIDEST_SPAN);
      int high = span(cell, "rowspan", last - number + 1);
      if (wide > 1 || high > 1) {
        merges.add(new Grid.Merge(number, column, number + high - 1, column + wide - 1));
        take(number, column, high, wide);
      }
      GridCell read = HtmlText.cell(cell, number, column);
      if (read != null) {
        boolean hides = HtmlText.isHidden(cell);
        cells.add(hides ? read.shown(read.look().hiding()) : read);
      }
      column += wide;
    }
    if (!cells.isEmpty()) {
      rows.add(cells);
      if (HtmlText.isHidden(row)) {
        hidden.add(number);
      }
    }
  }

  /** Only rows below are pushed on: the cells of the same row stand behind anyway. */
  private void take(int row, int column, int high, int wide) {
    if ((long) taken.size() + (long) (high - 1) * wide > MOST_PLACES) {
      throw new Refusal(
          "The page's table spans more than %d places: it is not read.".formatted(MOST_PLACES),
          new Problem("row " + row + ", column " + column, "a huge table", "a table of results"));
    }
    for (int r = row + 1; r < row + high; r++) {
      for (int c = column; c < column + wide; c++) {
        taken.add(place(r, c));
      }
    }
  }

  private static long place(int row, int column) {
    return ((long) row << 32) | column;
  }

  private static int span(Element cell, String attribute, int most) {
    String text = cell.attr(attribute).strip();
    return SPAN.matcher(text).matches() ? Math.min(most, Math.max(1, Integer.parseInt(text))) : 1;
  }
}
