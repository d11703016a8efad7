package org.griplore.ingest.grid;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/**
 * Cells of one table, sheet or file.
 *
 * @param name the sheet's or table's name; empty where the source has one only
 * @param preamble texts that stand before the table on a page; empty elsewhere
 * @param rows the rows that have cells, top to bottom; each its cells, left to right
 * @param merges ranges that are one cell in the source; its text stands at the top left
 * @param unbroken whether the rows belong together though their numbers have gaps (JSON)
 * @param hides what the source hides; it is read all the same, so that nothing is lost, and what is
 *     visible counts before it
 * @param from which part of the source it is: {@code page 3}, or the sheet's name also where it is
 *     the only one; empty for all of it
 * @param draft why it cannot be more than a draft until somebody has looked at it, in a sentence;
 *     null for others
 */
public record Grid(
    String name,
    List<GridCell> preamble,
    List<List<GridCell>> rows,
    List<Merge> merges,
    boolean unbroken,
    Hidden hides,
    String from,
    String draft) {
  /** A range of cells that is one cell; all 1-based and inclusive. */
  public record Merge(int firstRow, int firstColumn, int lastRow, int lastColumn) {}

  /**
   * What a source hides of a grid.
   *
   * @param whole the whole of it (a hidden sheet)
   * @param rows numbers of the rows
   * @param columns numbers of the columns
   */
  public record Hidden(boolean whole, Set<Integer> rows, Set<Integer> columns) {
    /** All is visible. */
    public static final Hidden NOTHING = new Hidden(false, Set.of(), Set.of());

    /** Keeps the sets from changing. */
    public Hidden {
      rows = Set.copyOf(rows);
      columns = Set.copyOf(columns);
    }
  }

  /** Keeps the lists from changing. */
  public Grid {
    preamble = List.copyOf(preamble);
    rows = rows.stream().map(List::copyOf).toList();
    merges = List.copyOf(merges);
    Objects.requireNonNull(hides);
    Objects.requireNonNull(from);
  }

  /** A grid of which nothing is hidden, which is all of its source. */
  public Grid(
      String name,
      List<GridCell> preamble,
      List<List<GridCell>> rows,
      List<Merge> merges,
      boolean unbroken) {
    this(name, preamble, rows, merges, unbroken, Hidden.NOTHING, "", null);
  }

  /** A grid of cells only. */
  public static Grid of(String name, List<List<GridCell>> rows) {
    return new Grid(name, List.of(), rows, List.of(), false);
  }

  /** The same with other rows. */
  public Grid with(List<List<GridCell>> others) {
    return new Grid(name, preamble, others, merges, unbroken, hides, from, draft);
  }

  /** The same under another name. */
  public Grid named(String other) {
    return new Grid(other, preamble, rows, merges, unbroken, hides, from, draft);
  }

  /** The same with other texts before the table. */
  public Grid behind(List<GridCell> texts) {
    return new Grid(name, texts, rows, merges, unbroken, hides, from, draft);
  }

  /** The same, of which the source hides this. */
  public Grid hiding(Hidden what) {
    return new Grid(name, preamble, rows, merges, unbroken, what, from, draft);
  }

  /** The same, of a part of the source. */
  public Grid from(String part) {
    return new Grid(name, preamble, rows, merges, unbroken, hides, part, draft);
  }

  /** The same, which is a draft for a reason. */
  public Grid asDraft(String why) {
    return new Grid(name, preamble, rows, merges, unbroken, hides, from, why);
  }

  /** Whether the source hides the whole grid. */
  public boolean hidden() {
    return hides.whole();
  }

  /** Numbers of the rows that the source hides. */
  public Set<Integer> hiddenRows() {
    return hides.rows();
  }

  /** Numbers of the columns that the source hides. */
  public Set<Integer> hiddenColumns() {
    return hides.columns();
  }

  /** Whether the source shows a cell: neither it nor its row, column or sheet is hidden. */
  public boolean shows(GridCell cell) {
    return !hides.whole()
        && !hides.rows().contains(cell.row())
        && !hides.columns().contains(cell.column())
        && !cell.look().hidden();
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
          cells.add(cell.in(c));
        }
      }
      cells.sort(Comparator.comparingInt(GridCell::column));
      spread.add(cells);
    }
    return new Grid(name, preamble, spread, List.of(), unbroken, hides, from, draft);
  }

  private static long place(int row, int column) {
    return ((long) row << 32) | column;
  }
}
