package org.griplore.ingest.tables;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.griplore.ingest.grid.Grid;
import org.griplore.ingest.grid.GridCell;
import org.griplore.ingest.recognise.DetailLines;

/**
 * Cuts a grid into regions that may be tables: at blank rows where another header follows, at
 * headers in the middle, at blank columns and repeated headings of tyres between blocks that stand
 * side by side. Blank rows and subheads inside a table do not end it.
 */
final class RegionFinder {
  /** Headers without a word for tyres are sought among the first rows only. */
  private static final int SEARCHED = 300;

  private final KnownHeads heads;

  RegionFinder(KnownHeads heads) {
    this.heads = heads;
  }

  /** The regions from top to bottom, left before right; none where no row has two cells. */
  List<Region> find(Grid grid) {
    List<List<GridCell>> rows = spreadDown(grid);
    List<List<GridCell>> plain = grid.rows();
    List<Piece> pieces = new ArrayList<>();
    for (Piece piece : chunks(rows, grid.unbroken())) {
      cut(rows, piece, pieces);
    }
    join(rows, pieces);
    List<Region> regions = new ArrayList<>();
    int from = 0;
    for (int i = 0; i < pieces.size(); i++) {
      Piece piece = pieces.get(i);
      int end = i + 1 < pieces.size() ? piece.last + 1 : rows.size();
      regions.addAll(
          sideBySide(
              new Region(
                  List.copyOf(rows.subList(piece.first, piece.last + 1)),
                  List.copyOf(plain.subList(from, piece.first)),
                  List.copyOf(plain.subList(piece.last + 1, end)))));
      from = piece.last + 1;
    }
    return regions;
  }

  /** A name that is merged over several rows stands in each of them, as in the columns. */
  private static List<List<GridCell>> spreadDown(Grid grid) {
    List<List<GridCell>> rows = new ArrayList<>(grid.spreadAcross().rows());
    for (Grid.Merge merge : grid.merges()) {
      if (merge.lastRow() == merge.firstRow()) {
        continue;
      }
      GridCell over = null;
      for (int i = 0; i < rows.size(); i++) {
        List<GridCell> row = rows.get(i);
        int number = row.get(0).row();
        if (number == merge.firstRow()) {
          over = cell(row, merge.firstColumn());
        } else if (over != null
            && number > merge.firstRow()
            && number <= merge.lastRow()
            && over.number() == null
            && cell(row, merge.firstColumn()) == null) {
          List<GridCell> more = new ArrayList<>(row);
          more.add(GridCell.of(number, merge.firstColumn(), over.text()));
          more.sort(java.util.Comparator.comparingInt(GridCell::column));
          rows.set(i, more);
        }
      }
    }
    return rows;
  }

  private static GridCell cell(List<GridCell> row, int column) {
    for (GridCell cell : row) {
      if (cell.column() == column) {
        return cell;
      }
    }
    return null;
  }

  /** Rows from first to last; both count from 0. */
  private record Piece(int first, int last) {}

  /** Rows without a blank row between them, but for lines above and below their wide rows. */
  private List<Piece> chunks(List<List<GridCell>> rows, boolean unbroken) {
    List<Piece> chunks = new ArrayList<>();
    int start = 0;
    for (int i = 1; i <= rows.size(); i++) {
      boolean gap =
          i == rows.size()
              || !unbroken && rows.get(i).get(0).row() > rows.get(i - 1).get(0).row() + 1;
      if (gap) {
        trimmed(rows, start, i - 1, chunks);
        start = i;
      }
    }
    return chunks;
  }

  private void trimmed(List<List<GridCell>> rows, int start, int end, List<Piece> chunks) {
    int first = start;
    while (first <= end && !begins(rows, first, end)) {
      first++;
    }
    int last = end;
    while (last > first && isLone(rows.get(last))) {
      last--;
    }
    if (first < last || first == last && !isLone(rows.get(first))) {
      chunks.add(new Piece(first, last));
    }
  }

  /** A table begins with a row of several cells that are no detail, or a group over the next. */
  private boolean begins(List<List<GridCell>> rows, int index, int end) {
    List<GridCell> row = rows.get(index);
    if (isLone(row)) {
      boolean group =
          index < end
              && !isLone(rows.get(index + 1))
              && row.get(0).column() > rows.get(index + 1).get(0).column()
              && row.get(0).text().length() < 40;
      return group;
    }
    return !isDetail(row) && !(index < end && isSentence(row, rows.get(index + 1)));
  }

  /** A title that its own commas cut, above a wider row. */
  private boolean isSentence(List<GridCell> row, List<GridCell> next) {
    boolean wider = next.size() > row.size() && !heads.isHeader(row);
    boolean side = row.get(0).column() == 1 && row.get(row.size() - 1).column() == row.size();
    return wider
        && side
        && row.stream().noneMatch(cell -> heads.isName(cell.text()))
        && row.stream().anyMatch(cell -> cell.text().strip().split("\\s+").length > 3);
  }

  private boolean isDetail(List<GridCell> row) {
    boolean figures = row.stream().skip(1).anyMatch(cell -> heads.isMeasure(cell.text()));
    if (figures && !row.get(0).text().contains(":")) {
      return false;
    }
    return !DetailLines.of(List.of(row)).byTopic().isEmpty();
  }

  /** One cell, or one text that is spread over merged cells. */
  static boolean isLone(List<GridCell> row) {
    String text = row.get(0).text();
    for (GridCell cell : row) {
      if (!cell.text().equals(text) || cell.number() != null && row.size() > 1) {
        return false;
      }
    }
    return true;
  }

  /** Cuts where a header stands below rows of figures. */
  private void cut(List<List<GridCell>> rows, Piece piece, List<Piece> into) {
    int first = piece.first;
    boolean figures = false;
    String header = null;
    for (int i = piece.first; i <= piece.last; i++) {
      List<GridCell> row = rows.get(i);
      boolean head = (i < piece.first + SEARCHED || heads.hasNameWord(row)) && isHeader(row);
      if (head && header == null) {
        header = key(row);
      }
      if (figures && head && !key(row).equals(header)) {
        int start = i;
        while (start > first + 1 && isLone(rows.get(start - 1)) && !isLone(rows.get(start - 2))) {
          start--;
        }
        addTrimmed(rows, first, start - 1, into);
        first = i;
        figures = false;
        header = key(row);
      }
      figures |= !head && hasFigures(row);
    }
    addTrimmed(rows, first, piece.last, into);
  }

  private void addTrimmed(List<List<GridCell>> rows, int first, int last, List<Piece> into) {
    int end = last;
    while (end > first && isLone(rows.get(end))) {
      end--;
    }
    into.add(new Piece(first, end));
  }

  private static String key(List<GridCell> row) {
    return row.stream().map(cell -> cell.text().strip()).collect(Collectors.joining("\n"));
  }

  /** No numbers, and words that head tyres and figures, or at least two that head figures. */
  boolean isHeader(List<GridCell> row) {
    return !hasFigures(row) && heads.isHeader(row);
  }

  private static boolean hasFigures(List<GridCell> row) {
    return row.stream().anyMatch(cell -> CellSort.of(cell) == CellSort.NUMBER);
  }

  /** A piece without a header of its own, in the columns of the one above, goes on with it. */
  private void join(List<List<GridCell>> rows, List<Piece> pieces) {
    for (int i = 1; i < pieces.size(); i++) {
      Piece above = pieces.get(i - 1);
      Piece here = pieces.get(i);
      List<List<GridCell>> part = rows.subList(here.first, here.last + 1);
      List<GridCell> wide = part.stream().filter(row -> !isLone(row)).findFirst().orElse(null);
      boolean between = true;
      for (int r = above.last + 1; r < here.first; r++) {
        between &=
            isLone(rows.get(r))
                && rows.get(r).get(0).text().length() < 60
                && !isDetail(rows.get(r));
      }
      if (wide != null
          && between
          && !isHeader(wide)
          && hasFigures(wide)
          && CellSort.of(wide.get(0)) == CellSort.TEXT
          && (hasFigures(rows.get(above.last)) || isHeaderOnly(rows, above, here))
          && columns(rows.subList(above.first, above.last + 1)).containsAll(columns(part))) {
        pieces.set(i - 1, new Piece(above.first, here.last));
        pieces.remove(i);
        i--;
      }
    }
  }

  /** A header that a rule or a blank row parts from its table. */
  private boolean isHeaderOnly(List<List<GridCell>> rows, Piece above, Piece here) {
    boolean header = false;
    for (int r = above.first; r <= above.last; r++) {
      header |= isHeader(rows.get(r));
      if (hasFigures(rows.get(r))) {
        return false;
      }
    }
    return header && here.first == above.last + 1;
  }

  private static Set<Integer> columns(List<List<GridCell>> rows) {
    Set<Integer> columns = new TreeSet<>();
    rows.forEach(row -> row.forEach(cell -> columns.add(cell.column())));
    return columns;
  }

  /** Parts at blank columns, or where tyres are headed again, each with names and figures. */
  private List<Region> sideBySide(Region region) {
    TreeSet<Integer> used = (TreeSet<Integer>) columns(wide(region.rows()));
    List<Integer> cuts = new ArrayList<>();
    int before = Integer.MIN_VALUE;
    for (int column : used) {
      if (before != Integer.MIN_VALUE && column > before + 1) {
        cuts.add(column);
      }
      before = column;
    }
    for (List<GridCell> row : region.rows()) {
      if (isHeader(row)) {
        boolean figures = false;
        for (GridCell cell : row) {
          if (heads.isName(cell.text()) && figures) {
            cuts.add(cell.column());
            figures = false;
          }
          figures |= heads.isFigure(cell.text());
        }
        break;
      }
    }
    List<Region> parts = new ArrayList<>();
    int from = Integer.MIN_VALUE;
    for (int cut : new TreeSet<>(cuts)) {
      Region left = part(region, from, cut);
      if (isTable(left) && isTable(part(region, cut, Integer.MAX_VALUE))) {
        parts.add(left);
        from = cut;
      }
    }
    parts.add(parts.isEmpty() ? region : part(region, from, Integer.MAX_VALUE));
    return parts;
  }

  private static List<List<GridCell>> wide(List<List<GridCell>> rows) {
    return rows.stream().filter(row -> !isLone(row)).toList();
  }

  private static Region part(Region region, int from, int to) {
    List<List<GridCell>> rows = new ArrayList<>();
    for (List<GridCell> row : region.rows()) {
      List<GridCell> cells =
          row.stream().filter(cell -> cell.column() >= from && cell.column() < to).toList();
      if (!cells.isEmpty()) {
        rows.add(cells);
      }
    }
    return region.with(rows);
  }

  /** Texts in its first column and figures in another, over at least two rows. */
  private static boolean isTable(Region region) {
    int rows = 0;
    for (List<GridCell> row : region.rows()) {
      rows += row.size() > 1 && CellSort.of(row.get(0)) == CellSort.TEXT && hasFigures(row) ? 1 : 0;
    }
    return rows >= 2;
  }
}
