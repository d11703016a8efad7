package org.griplore.ingest.grid.workbook;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.griplore.ingest.grid.CellCount;
import org.griplore.ingest.grid.Grid;
import org.griplore.ingest.grid.GridCell;
import org.griplore.store.vocabulary.Cell;
import org.griplore.store.vocabulary.Finding;

/** Collects the cells of a sheet in any order, with what is hidden, merged and noted on it. */
final class SheetCells {
  private final String name;
  private final CellCount count;
  private final TreeMap<Integer, List<GridCell>> rows = new TreeMap<>();
  private final Map<CellReference, String> comments = new HashMap<>();
  private final List<Grid.Merge> merges = new ArrayList<>();
  private final Set<Integer> hiddenRows = new HashSet<>();
  private final Set<Integer> hiddenColumns = new HashSet<>();
  private final List<Finding> findings = new ArrayList<>();

  /**
   * A sheet without cells.
   *
   * @param name its name; empty when it is the only one
   * @param count counts the cells of all the workbook's sheets
   */
  SheetCells(String name, CellCount count) {
    this.name = name;
    this.count = count;
  }

  /** Adds a cell; nothing when it is null. Of two at one place the first counts. */
  void add(GridCell cell) {
    if (cell != null) {
      count.add(1);
      rows.computeIfAbsent(cell.row(), row -> new ArrayList<>()).add(cell);
    }
  }

  void hideRow(int row) {
    hiddenRows.add(row);
  }

  /** Hides columns, as far as a sheet goes. */
  void hideColumns(int first, int last) {
    for (int column = first; column <= Math.min(last, CellReference.MOST_COLUMNS); column++) {
      hiddenColumns.add(column);
    }
  }

  void merge(Grid.Merge merge) {
    merges.add(merge);
  }

  void comment(CellReference at, String text) {
    comments.putIfAbsent(at, text);
  }

  /** Tells of a formula of which the workbook stores no value. */
  void withoutValue(GridCell formula) {
    add(formula);
    findings.add(
        new Finding(
            Finding.Kind.NOT_READ,
            new Cell(name, formula.row(), formula.column(), formula.text()),
            formula.text(),
            "the value of the formula, which the workbook does not hold",
            "open the workbook, save it and add it again"));
  }

  List<Finding> findings() {
    return findings;
  }

  Grid grid(boolean hidden) {
    rows.values().forEach(SheetCells::order);
    commentsOntoCells();
    hiddenRows.retainAll(rows.keySet());
    return new Grid(name, List.of(), List.copyOf(rows.values()), merges, false)
        .hiding(new Grid.Hidden(hidden, hiddenRows, hiddenColumns));
  }

  /** Puts a row's cells in the order of their columns; of two in one column the first stays. */
  private static void order(List<GridCell> row) {
    for (int i = 1; i < row.size(); i++) {
      if (row.get(i).column() <= row.get(i - 1).column()) {
        TreeMap<Integer, GridCell> byColumn = new TreeMap<>();
        row.forEach(cell -> byColumn.putIfAbsent(cell.column(), cell));
        row.clear();
        row.addAll(byColumn.values());
        return;
      }
    }
  }

  private void commentsOntoCells() {
    comments.forEach(
        (at, text) -> {
          List<GridCell> row = rows.getOrDefault(at.row(), List.of());
          for (int i = 0; i < row.size(); i++) {
            GridCell cell = row.get(i);
            if (cell.column() == at.column()) {
              row.set(i, cell.shown(cell.look().commented(text)));
              return;
            }
          }
          findings.add(
              new Finding(
                  Finding.Kind.NOT_READ,
                  new Cell(name, at.row(), at.column(), ""),
                  text,
                  "a comment on a cell that holds something",
                  "write it into a cell or a note"));
        });
  }
}
