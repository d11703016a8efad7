package org.griplore.ingest.grid;

import java.util.List;

/** The rows of a grid, by the columns of its first row. */
public final class GridRows implements RowSource {
  private final List<List<GridCell>> rows;
  private final List<Integer> columns;
  private int position = -1;

  /** Starts before the first row, which is the header. */
  public GridRows(Grid grid) {
    this.rows = grid.rows();
    this.columns = rows.isEmpty() ? List.of() : rows.get(0).stream().map(GridCell::column).toList();
  }

  @Override
  public boolean next() {
    return ++position < rows.size();
  }

  @Override
  public int count() {
    return columns.size();
  }

  private GridCell cell(int index) {
    if (index >= columns.size()) {
      return null;
    }
    int column = columns.get(index);
    for (GridCell cell : rows.get(position)) {
      if (cell.column() == column) {
        return cell;
      }
    }
    return null;
  }

  @Override
  public String field(int index) {
    GridCell cell = cell(index);
    return cell == null ? "" : cell.text();
  }

  @Override
  public int rowOf(int index) {
    GridCell cell = cell(index);
    return cell == null ? rows.get(position).get(0).row() : cell.row();
  }

  @Override
  public int columnOf(int index) {
    return columns.get(index);
  }
}
