package org.griplore.ingest.recognise;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import org.griplore.ingest.grid.Grid;
import org.griplore.ingest.grid.GridCell;
import org.griplore.store.vocabulary.DisciplineCatalogue;

/**
 * Finds where tables stand in a grid: a header row that names a column of tyres and at least one
 * column of figures, perhaps under a row of group headings and above a row of units, then a row a
 * tyre until a line that is empty or belongs to no tyre. A table whose first column names the
 * disciplines has its tyres across and is turned.
 */
public final class TableFinder {
  private final HeaderReader headers;
  private final ColumnMap map;
  private boolean unbroken;

  /** Finds tables by these disciplines' words, and by what a map says of their columns. */
  public TableFinder(DisciplineCatalogue catalogue, ColumnMap map) {
    this.headers = new HeaderReader(catalogue, map);
    this.map = map;
  }

  /** The tables of a grid from top to bottom; none when no row could be a header. */
  public List<TableArea> find(Grid grid) {
    List<List<GridCell>> rows = new ArrayList<>(grid.spreadAcross().rows());
    List<List<GridCell>> plain = new ArrayList<>(grid.rows());
    unbroken = grid.unbroken();
    joinStacked(rows, plain);
    List<Integer> starts = said(rows);
    for (int i = 0; i < rows.size() && map.headerRow() == null; i++) {
      if (isHeader(rows, i) || isTurned(rows, i)) {
        starts.add(i);
        i = Math.max(i, lastTableRow(rows, i));
      }
    }
    List<TableArea> areas = new ArrayList<>();
    int from = 0;
    for (int s = 0; s < starts.size(); s++) {
      int start = starts.get(s);
      int end = s + 1 < starts.size() ? starts.get(s + 1) : rows.size();
      int last = lastTableRow(rows, start);
      List<List<GridCell>> before = new ArrayList<>(plain.subList(from, start));
      List<List<GridCell>> after = s + 1 < starts.size() ? List.of() : plain.subList(last + 1, end);
      areas.add(
          isTurned(rows, start)
              ? turned(rows.subList(start, last + 1), before, after)
              : upright(rows, start, last, before, after));
      from = last + 1;
    }
    return areas;
  }

  /** Makes one row of each header in two; the plain rows keep step. */
  private void joinStacked(List<List<GridCell>> rows, List<List<GridCell>> plain) {
    StackedHeads stacked = new StackedHeads(headers);
    for (int i = 0; i + 2 < rows.size(); i++) {
      boolean asked = map.headerRow() == null || map.headerRow() == rows.get(i + 1).get(0).row();
      List<GridCell> joined =
          asked && !isTurned(rows, i) ? stacked.joined(rows.get(i), rows.get(i + 1)) : null;
      if (joined != null) {
        rows.set(i + 1, joined);
        rows.remove(i);
        plain.set(i + 1, joined);
        plain.remove(i);
      }
    }
  }

  /** The header row that the map names; none when it names none, or the grid has no such row. */
  private List<Integer> said(List<List<GridCell>> rows) {
    List<Integer> starts = new ArrayList<>();
    for (int i = 0; i + 1 < rows.size() && map.headerRow() != null; i++) {
      if (rows.get(i).get(0).row() == map.headerRow()) {
        starts.add(i);
      }
    }
    return starts;
  }

  private boolean isHeader(List<List<GridCell>> rows, int index) {
    boolean names = false;
    int figures = 0;
    int number = 0;
    for (GridCell cell : rows.get(index)) {
      number++;
      if (cell.number() != null) {
        continue;
      }
      ColumnRole role = headers.role(number, cell.text());
      names |= role instanceof ColumnRole.Tyre || role instanceof ColumnRole.Model;
      figures += role instanceof ColumnRole.Value || role instanceof ColumnRole.Place ? 1 : 0;
    }
    return names && figures > 0 && index + 1 < rows.size();
  }

  /** Tyres across: the first cell heads the tyres, the cells below it name disciplines. */
  private boolean isTurned(List<List<GridCell>> rows, int index) {
    List<GridCell> row = rows.get(index);
    if (row.size() < 3 || isHeader(rows, index)) {
      return false;
    }
    ColumnRole corner = headers.role(row.get(0).text(), null);
    if (!(corner instanceof ColumnRole.Tyre || corner instanceof ColumnRole.Model)) {
      return false;
    }
    int named = 0;
    for (int i = index + 1; i < rows.size() && follows(rows, i); i++) {
      ColumnRole role = headers.role(rows.get(i).get(0).text(), null);
      named += role instanceof ColumnRole.Value || role instanceof ColumnRole.Place ? 1 : 0;
    }
    return named >= 2;
  }

  private boolean follows(List<List<GridCell>> rows, int index) {
    return unbroken || rows.get(index).get(0).row() <= rows.get(index - 1).get(0).row() + 1;
  }

  private int lastTableRow(List<List<GridCell>> rows, int start) {
    int first = rows.get(start).get(0).column();
    int last = start;
    for (int i = start + 1; i < rows.size() && follows(rows, i); i++) {
      boolean more = rows.get(i).size() > 1 || isUnitRow(rows.get(i));
      if (!more && rows.get(i).get(0).column() <= first && i > start + 1) {
        break;
      }
      if (!more && i == start + 1) {
        break;
      }
      if (i > start + 1 && isHeader(rows, i)) {
        break;
      }
      last = i;
    }
    return last;
  }

  /** A row of units, or of the parts of headings ({@code m | Place | m | Place}). */
  private boolean isUnitRow(List<GridCell> row) {
    return row.stream().allMatch(cell -> cell.number() == null && headers.isPart(cell.text()));
  }

  private TableArea upright(
      List<List<GridCell>> rows,
      int start,
      int last,
      List<List<GridCell>> before,
      List<List<GridCell>> after) {
    List<List<GridCell>> above = new ArrayList<>(before);
    Optional<List<GridCell>> groups = groupHeadings(rows, start, above);
    boolean units = start < last && isUnitRow(rows.get(start + 1));
    TreeSet<Integer> columns = new TreeSet<>();
    for (int i = start; i <= last; i++) {
      rows.get(i).forEach(cell -> columns.add(cell.column()));
    }
    List<TableArea.Head> heads = new ArrayList<>();
    GridCell over = null;
    GridCell headed = null;
    for (int column : columns) {
      GridCell header = at(rows.get(start), column);
      GridCell group = groups.map(row -> at(row, column)).orElse(null);
      GridCell unit = units ? at(rows.get(start + 1), column) : null;
      boolean part = header != null && headers.isPart(header.text());
      over = group != null ? group : part ? over : null;
      headed = header != null ? header : unit == null ? null : headed;
      heads.add(head(over, header == null ? headed : header, unit));
    }
    List<List<GridCell>> tyres = new ArrayList<>();
    for (int i = start + (units ? 2 : 1); i <= last; i++) {
      List<GridCell> cells = new ArrayList<>();
      for (int column : columns) {
        cells.add(at(rows.get(i), column));
      }
      tyres.add(cells);
    }
    return new TableArea(heads, tyres, above, after);
  }

  /** A heading over several columns, the column's own, and a part of it below. */
  private TableArea.Head head(GridCell group, GridCell header, GridCell unit) {
    String own = header == null ? "" : header.text();
    GridCell cell = header == null ? group == null ? unit : group : header;
    if (group == null) {
      return new TableArea.Head(own, unit == null ? null : unit.text(), cell);
    }
    return unit == null && headers.isPart(own)
        ? new TableArea.Head(group.text(), own, cell)
        : new TableArea.Head(
            (group.text() + " " + own).strip(), unit == null ? null : unit.text(), cell);
  }

  /** A row right above the header whose texts stand over several columns, none of them a detail. */
  private Optional<List<GridCell>> groupHeadings(
      List<List<GridCell>> rows, int start, List<List<GridCell>> above) {
    if (above.isEmpty() || start == 0) {
      return Optional.empty();
    }
    List<GridCell> row = rows.get(start - 1);
    boolean next = row.get(0).row() == rows.get(start).get(0).row() - 1;
    boolean several = row.size() > 1 && row.stream().noneMatch(cell -> cell.text().contains(":"));
    if (next && several && !isHeader(rows, start - 1)) {
      above.remove(above.size() - 1);
      return Optional.of(row);
    }
    return Optional.empty();
  }

  private static GridCell at(List<GridCell> row, int column) {
    for (GridCell cell : row) {
      if (cell.column() == column) {
        return cell;
      }
    }
    return null;
  }

  private static TableArea turned(
      List<List<GridCell>> rows, List<List<GridCell>> before, List<List<GridCell>> after) {
    int first = rows.get(0).get(0).column();
    TreeMap<Integer, List<GridCell>> tyres = new TreeMap<>();
    List<TableArea.Head> heads = new ArrayList<>();
    rows.get(0).stream()
        .filter(cell -> cell.column() > first)
        .forEach(cell -> tyres.put(cell.column(), new ArrayList<>()));
    for (List<GridCell> row : rows) {
      GridCell head = row.get(0).column() == first ? row.get(0) : null;
      heads.add(new TableArea.Head(head == null ? "" : head.text(), null, head));
      tyres.forEach((column, cells) -> cells.add(at(row, column)));
    }
    return new TableArea(heads, List.copyOf(tyres.values()), before, after);
  }
}
