package org.griplore.ingest.tables;

import java.util.ArrayList;
import java.util.List;
import org.griplore.ingest.grid.GridCell;
import org.griplore.ingest.recognise.TableArea;

/**
 * The rows that head the columns of a block: group headings above, the columns' own words, a row of
 * units, a row of weights.
 *
 * @param rows the rows of words from top to bottom
 * @param unit the row of units or of parts of headings; -1 when there is none
 * @param weight the row of weights; -1 when there is none
 * @param body the first row below the header
 */
record HeaderBand(List<Integer> rows, int unit, int weight, int body) {
  private static final int DEEPEST = 5;

  /** Ways to take the rows above the first row of figures for a header, the deepest first. */
  static List<HeaderBand> of(CellBlock block, KnownHeads heads, Integer said) {
    int body = firstData(block, heads);
    List<HeaderBand> bands = new ArrayList<>();
    int highest = Math.max(0, body - DEEPEST);
    for (int top = highest; top < body; top++) {
      boolean groups = said != null && top == said - 1 && !heads.hasName(block, top);
      if (said == null || top == said || groups) {
        band(block, heads, top, body, bands);
      }
    }
    if (bands.isEmpty() && said == null) {
      bands.add(new HeaderBand(List.of(), -1, -1, body));
    }
    return bands;
  }

  private static void band(
      CellBlock block, KnownHeads heads, int top, int body, List<HeaderBand> bands) {
    List<Integer> rows = new ArrayList<>();
    int unit = -1;
    int weight = -1;
    for (int r = top; r < body; r++) {
      RowKind kind = RowKind.named(first(block, r)).orElse(null);
      if (kind == RowKind.WEIGHT) {
        weight = r;
      } else if (kind == RowKind.UNIT || !rows.isEmpty() && isParts(block, heads, r)) {
        unit = r;
      } else if (block.filled(r) > 0) {
        rows.add(r);
      }
    }
    if (!rows.isEmpty()) {
      bands.add(new HeaderBand(rows, unit, weight, body));
    }
  }

  private static String first(CellBlock block, int row) {
    for (int c = 0; c < block.columns(); c++) {
      if (block.at(row, c) != null) {
        return block.text(row, c);
      }
    }
    return "";
  }

  /** A row of units, or of the parts of headings ({@code m | Place | m | Place}). */
  private static boolean isParts(CellBlock block, KnownHeads heads, int row) {
    int filled = 0;
    for (int c = 0; c < block.columns(); c++) {
      if (block.at(row, c) != null) {
        filled++;
        if (block.sort(row, c) == CellSort.NUMBER || !heads.isPart(block.text(row, c))) {
          return false;
        }
      }
    }
    return filled > 0;
  }

  /** The first row with a text on the left, which is no header's word, and a figure. */
  static int firstData(CellBlock block, KnownHeads heads) {
    for (int r = 0; r < block.rows(); r++) {
      boolean text = false;
      boolean figure = false;
      boolean head = false;
      for (int c = 0; c < block.columns(); c++) {
        CellSort sort = block.sort(r, c);
        if (sort == CellSort.TEXT && !figure && !text) {
          text = true;
          head = heads.isName(block.text(r, c)) || isBand(block.text(r, c));
        }
        figure |= sort.isFigure() && text;
      }
      if (text && figure && !head) {
        return r;
      }
    }
    return block.rows();
  }

  private static boolean isBand(String name) {
    RowKind kind = RowKind.named(name).orElse(null);
    return kind == RowKind.WEIGHT || kind == RowKind.UNIT;
  }

  /** The row that heads the columns with their own words; -1 when there is none. */
  int own() {
    return rows.isEmpty() ? -1 : rows.get(rows.size() - 1);
  }

  /** The header of a column, its group's words before its own. */
  TableArea.Head head(CellBlock block, KnownHeads heads, int column) {
    GridCell own = own() < 0 ? null : block.at(own(), column);
    GridCell below = unit < 0 ? null : block.at(unit, column);
    String words = own == null ? "" : own.text().strip();
    StringBuilder upper = new StringBuilder();
    GridCell over = null;
    for (int i = 0; i + 1 < rows.size(); i++) {
      GridCell group = group(block, heads, rows.get(i), column, words, below != null);
      if (group != null && !upper.toString().contains(group.text())) {
        upper.append(upper.isEmpty() ? "" : " ").append(group.text().strip());
        over = group;
      }
    }
    if (own == null && below != null && upper.isEmpty() && own() >= 0) {
      own = left(block, heads, own(), column);
      words = own == null ? "" : own.text().strip();
    }
    String unitText = below == null ? null : below.text();
    GridCell cell = own != null ? own : over != null ? over : below;
    String above = upper.toString();
    if (!above.isEmpty() && unitText == null && !words.isEmpty() && heads.isPart(words)) {
      return new TableArea.Head(above, words, cell);
    }
    String text = words.contains(above) ? words : (above + " " + words).strip();
    return new TableArea.Head(text, unitText, cell);
  }

  /** The words of all rows but the lowest over a column. */
  String upper(CellBlock block, KnownHeads heads, int column) {
    String all = head(block, heads, column).text();
    String own = own() < 0 ? "" : block.text(own(), column).strip();
    return all.endsWith(own) ? all.substring(0, all.length() - own.length()).strip() : all;
  }

  private static GridCell group(
      CellBlock block, KnownHeads heads, int row, int column, String own, boolean unit) {
    GridCell above = block.at(row, column);
    if (above != null) {
      return above;
    }
    boolean open = !own.isEmpty() || unit;
    boolean full =
        !own.isEmpty()
            && !heads.isPart(own)
            && !(heads.role(own) instanceof org.griplore.ingest.recognise.ColumnRole.Unknown);
    return open && !full ? left(block, heads, row, column) : null;
  }

  private static GridCell left(CellBlock block, KnownHeads heads, int row, int column) {
    for (int c = column - 1; c >= 0; c--) {
      if (block.at(row, c) != null) {
        return heads.isName(block.text(row, c)) ? null : block.at(row, c);
      }
    }
    return null;
  }
}
