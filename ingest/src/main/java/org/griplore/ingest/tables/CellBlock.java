package org.griplore.ingest.tables;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.griplore.ingest.grid.GridCell;

/**
 * Cells in rows and columns without gaps between them: a part of a grid, or the same turned. Each
 * cell keeps its own position in the source.
 */
final class CellBlock {
  private final GridCell[][] cells;
  private final CellSort[][] sorts;
  private final int columns;

  private CellBlock(GridCell[][] cells, CellSort[][] sorts, int columns) {
    this.cells = cells;
    this.sorts = sorts;
    this.columns = columns;
  }

  /** The columns that have cells, side by side. */
  static CellBlock of(List<List<GridCell>> rows) {
    TreeSet<Integer> used = new TreeSet<>();
    rows.forEach(row -> row.forEach(cell -> used.add(cell.column())));
    List<Integer> columns = new ArrayList<>(used);
    int last = columns.isEmpty() ? 0 : columns.get(columns.size() - 1);
    int[] place = new int[last + 1];
    for (int i = 0; i < columns.size(); i++) {
      place[columns.get(i)] = i;
    }
    GridCell[][] cells = new GridCell[rows.size()][columns.size()];
    CellSort[][] sorts = new CellSort[rows.size()][columns.size()];
    for (int r = 0; r < cells.length; r++) {
      java.util.Arrays.fill(sorts[r], CellSort.EMPTY);
      for (GridCell cell : rows.get(r)) {
        int c = place[cell.column()];
        if (cells[r][c] == null) {
          cells[r][c] = cell;
          sorts[r][c] = CellSort.of(cell);
        }
      }
    }
    return new CellBlock(cells, sorts, columns.size());
  }

  /** Cells put together anew, each where it stands in the rows given; null where there is none. */
  static CellBlock laidOut(List<List<GridCell>> rows, int columns) {
    GridCell[][] cells = new GridCell[rows.size()][columns];
    CellSort[][] sorts = new CellSort[rows.size()][columns];
    for (int r = 0; r < cells.length; r++) {
      for (int c = 0; c < columns; c++) {
        cells[r][c] = c < rows.get(r).size() ? rows.get(r).get(c) : null;
        sorts[r][c] = CellSort.of(cells[r][c]);
      }
    }
    return new CellBlock(cells, sorts, columns);
  }

  /** Rows as columns. */
  CellBlock turned() {
    GridCell[][] turned = new GridCell[columns][cells.length];
    CellSort[][] kinds = new CellSort[columns][cells.length];
    for (int r = 0; r < cells.length; r++) {
      for (int c = 0; c < columns; c++) {
        turned[c][r] = cells[r][c];
        kinds[c][r] = sorts[r][c];
      }
    }
    return new CellBlock(turned, kinds, cells.length);
  }

  int rows() {
    return cells.length;
  }

  int columns() {
    return columns;
  }

  /** The cell; null where it is empty. */
  GridCell at(int row, int column) {
    return cells[row][column];
  }

  CellSort sort(int row, int column) {
    return sorts[row][column];
  }

  /** The text; empty where there is no cell. */
  String text(int row, int column) {
    return cells[row][column] == null ? "" : cells[row][column].text();
  }

  /** Gives a figure the unit that stands in another cell of its row. */
  void join(int row, int figure, int unit) {
    GridCell cell = cells[row][figure];
    GridCell beside = cells[row][unit];
    if (cell != null && beside != null && sorts[row][figure] == CellSort.NUMBER) {
      String text = cell.text().strip();
      if (text.matches(".*[\\d]$")) {
        cells[row][figure] =
            GridCell.of(cell.row(), cell.column(), text + " " + beside.text().strip());
      }
    }
  }

  /** How many cells of a row are of a sort. */
  int count(int row, CellSort sort) {
    int count = 0;
    for (int c = 0; c < columns; c++) {
      count += sorts[row][c] == sort ? 1 : 0;
    }
    return count;
  }

  /** How many cells of a row are not empty. */
  int filled(int row) {
    return columns - count(row, CellSort.EMPTY);
  }
}
