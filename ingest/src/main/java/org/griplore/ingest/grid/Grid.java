package org.griplore.ingest.grid;

import java.util.ArrayList;
import java.util.List;

/**
 * Cells of one table, sheet or file.
 *
 * @param name the sheet's or table's name; empty where the source has one only
 * @param preamble texts that stand before the table on a page; empty elsewhere
 * @param rows the rows that have cells, top to bottom; each its cells, left to right
 * @param merges ranges that are one cell in the source; its text stands at the top left
 * @param unbroken whether the rows belong together though their numbers have gaps (JSON)
 */
public record Grid(
    String name,
    List<GridCell> preamble,
    List<List<GridCell>> rows,
    List<Merge> merges,
    boolean unbroken) {
  /** A range of cells that is one cell; all 1-based and inclusive. */
  public record Merge(int firstRow, int firstColumn, int lastRow, int lastColumn) {}

  /** Keeps the lists from changing. */
  public Grid {
    preamble = List.copyOf(preamble);
    rows = List.copyOf(rows);
    merges = List.copyOf(merges);
  }

  /** A grid of cells only. */
  public static Grid of(String name, List<List<GridCell>> rows) {
    return new Grid(name, List.of(), rows, List.of(), false);
  }

  /**
   * The same grid with the text of each merged range repeated across its columns (not down its
   * rows), so that a heading over several columns stands over each.
   */
  public Grid spreadAcross() {
    if (merges.isEmpty()) {
      return this;
    }
    List<List<GridCell>> spread = new ArrayList<>();
    for (List<GridCell> row : rows) {
      List<GridCell> cells = new ArrayList<>(row);
      for (Merge merge : merges) {
        row.stream()
            .filter(cell -> cell.row() == merge.firstRow() && cell.column() == merge.firstColumn())
            .forEach(
                cell -> {
                  for (int c = merge.firstColumn() + 1; c <= merge.lastColumn(); c++) {
                    cells.add(new GridCell(cell.row(), c, cell.text(), cell.number(), cell.date()));
                  }
                });
      }
      cells.sort(java.util.Comparator.comparingInt(GridCell::column));
      spread.add(cells);
    }
    return new Grid(name, preamble, spread, List.of(), unbroken);
  }
}
