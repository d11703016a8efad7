package org.griplore.ingest.forms;

import java.util.ArrayList;
import java.util.List;
import org.griplore.ingest.grid.Grid;
import org.griplore.ingest.grid.GridCell;
import org.griplore.store.vocabulary.Cell;
import org.griplore.store.vocabulary.Finding;

/** What a source hides counts after what it shows: it is told and not taken. */
final class HiddenCells {
  private static final String SHOW = "show it in the source and add it again, if it counts";

  private HiddenCells() {}

  /** A hidden sheet beside others that are shown. */
  static void tell(Grid grid, SourceContext context) {
    if (!grid.rows().isEmpty()) {
      tell(grid, grid.rows().get(0).get(0), "a sheet that is shown; the hidden one", context);
    }
  }

  /** The grid with its hidden rows and columns left out, each told once. */
  static Grid without(Grid grid, SourceContext context) {
    if (grid.hidden()
        || grid.hiddenRows().isEmpty()
            && grid.hiddenColumns().isEmpty()
            && grid.rows().stream().flatMap(List::stream).noneMatch(cell -> cell.look().hidden())) {
      return grid;
    }
    List<List<GridCell>> rows = new ArrayList<>();
    List<Integer> columns = new ArrayList<>();
    for (List<GridCell> row : grid.rows()) {
      List<GridCell> shown = row.stream().filter(grid::shows).toList();
      if (!shown.isEmpty()) {
        rows.add(shown);
      } else {
        tell(grid, row.get(0), "a row that is shown; the hidden one", context);
      }
      for (GridCell cell : row) {
        if (!shown.isEmpty() && !grid.shows(cell) && !columns.contains(cell.column())) {
          columns.add(cell.column());
          tell(grid, cell, "a column that is shown; the hidden one", context);
        }
      }
    }
    return grid.with(rows);
  }

  private static void tell(Grid grid, GridCell cell, String what, SourceContext context) {
    context
        .receiver()
        .finding(
            new Finding(
                Finding.Kind.NOT_READ,
                new Cell(grid.name(), cell.row(), cell.column(), cell.text()),
                cell.text(),
                what + " was not taken",
                SHOW));
  }
}
