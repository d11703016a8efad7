package org.griplore.ingest.grid;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Cells of one table, sheet or file.
 *
 * @param name the sheet's or table's name; empty where the source has one only
 * @param preamble texts that stand before the table on a page; empty elsewhere
 * @param rows the rows that have cells, top to bottom; each its cells, left to right
 * @param merges ranges that are one cell in the source; its text stands at the top left
 * @param unbroken whether the rows belong together though their numbers have gaps (JSON)
 * @param hidden whether the source hides the whole grid (a hidden sheet); it is read all the same
 * @param hiddenRows numbers of the rows that the source hides; they are read all the same
 */
public record Grid(
    String name,
    List<GridCell> preamble,
    List<List<GridCell>> rows,
    List<Merge> merges,
    boolean unbroken,
    boolean hidden,
    Set<Integer> hiddenRows) {
  /** A range of cells that is one cell; all 1-based and inclusive. */
  public record Merge(int firstRow, int firstColumn, int lastRow, int lastColumn) {}

  /** Keeps the lists from changing. */
  public Grid {
    preamble = List.copyOf(preamble);
    rows = rows.stream().map(List::copyOf).toList();
    merges = List.copyOf(merges);
    hiddenRows = Set.copyOf(hiddenRows);
  }

  /** A grid of which nothing is hidden. */
  public Grid(
      String name,
      List<GridCell> preamble,
      List<List<GridCell>> rows,
      List<Merge> merges,
      boolean unbroken) {
    this(name, preamble, rows, merges, unbroken, false, Set.of());
  }

  /** A grid of cells only. */
  public static Grid of(String name, List<List<GridCell>> rows) {
    return new Grid(name, List.of(), rows, List.of(), false);
  }

  /** The last column that has a cell; 0 where there are none. */
  public int width() {
    return rows.stream()
        .filter(row -> !row.isEmpty())
        .mapToInt(row -> row.get(row.size() - 1).column())
        .max()
        .orElse(0);
  }

  /**
   * The same grid with the text of each merged range repeated across its columns (not down its
   * rows, and not beyond the last column that has a cell), so that a heading over several columns
   * stands over each.
   */
  public Grid spreadAcross() {
    if (merges.isEmpty()) {
      return this;
    }
    int width = width();
    Map<Long, Merge> wide = new HashMap<>();
    for (Merge merge : merges) {
      if (merge.lastColumn() > merge.firstColumn()) {
        wide.put(place(merge.firstRow(), merge.firstColumn()), merge);
      }
    }
    List<List<GridCell>> spread = new ArrayList<>();
    for (List<GridCell> row : rows) {
      List<GridCell> cells = new ArrayList<>(row);
      for (GridCell cell : row) {
        Merge merge = wide.get(place(cell.row(), cell.column()));
        int last = merge == null ? 0 : Math.min(width, merge.lastColumn());
        for (int c = cell.column() + 1; c <= last; c++) {
          int column = c;
          if (row.stream().anyMatch(other -> other.column() == column)) {
            continue;
          }
          cells.add(new GridCell(cell.row(), c, cell.text(), cell.number(), cell.date()));
        }
      }
      cells.sort(Comparator.comparingInt(GridCell::column));
      spread.add(cells);
    }
    return new Grid(name, preamble, spread, List.of(), unbroken, hidden, hiddenRows);
  }

  private static long place(int row, int column) {
    return ((long) row << 32) | column;
  }
}
