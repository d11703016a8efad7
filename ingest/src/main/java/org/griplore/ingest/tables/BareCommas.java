package org.griplore.ingest.tables;

import java.util.ArrayList;
import java.util.List;
import org.griplore.ingest.grid.Grid;
import org.griplore.ingest.grid.GridCell;
import org.griplore.ingest.recognise.ColumnRole;
import org.griplore.ingest.recognise.PlausibleRange;

/**
 * Decimal commas that nobody quoted in a file set apart by commas: its rows have more cells than
 * its header. Where one set of columns explains the width of every row, whole and fraction are put
 * together again; where none or several do, the grid is a draft.
 */
final class BareCommas {
  private static final int WIDEST = 16;
  private static final int SEARCHED = 400;

  private final KnownHeads heads;

  BareCommas(KnownHeads heads) {
    this.heads = heads;
  }

  /** The grid with its figures put together; the same where its rows fit their header. */
  Grid joined(Grid grid) {
    int header = header(grid);
    if (header < 0 || !grid.merges().isEmpty()) {
      return grid;
    }
    List<GridCell> head = grid.rows().get(header);
    List<GridCell> cut = head;
    head = whole(head, grid.rows().subList(header + 1, grid.rows().size()));
    int columns = head.get(head.size() - 1).column();
    List<List<GridCell>> body = new ArrayList<>();
    int wide = 0;
    int rows = 0;
    for (List<GridCell> row : grid.rows().subList(header + 1, grid.rows().size())) {
      boolean tabular = row.size() > 1 && row.get(0).column() == 1 && hasFigure(row);
      rows += tabular ? 1 : 0;
      if (tabular && width(row) > columns) {
        wide++;
        body.add(row);
      }
    }
    boolean marked =
        body.stream()
            .flatMap(List::stream)
            .anyMatch(cell -> cell.text().matches("\\s*[-+]?\\d+[.,]\\d+\\s*\\D{0,8}"));
    if (marked) {
      return grid;
    }
    if (columns > WIDEST || wide < 2 || 2 * wide < rows) {
      return cut.size() == head.size()
          ? grid
          : grid.asDraft("its header is cut by its own commas, and its rows do not fit it");
    }
    Integer best = decimals(head, body, columns);
    if (best == null) {
      return grid.asDraft(
          "its rows have more cells than its header, and in more than one way"
              + " decimal commas can explain that");
    }
    List<List<GridCell>> all = new ArrayList<>(grid.rows().subList(0, header));
    all.add(head);
    for (List<GridCell> row : grid.rows().subList(header + 1, grid.rows().size())) {
      List<GridCell> cells =
          width(row) > columns && hasFigure(row) ? cells(row, best, columns) : null;
      all.add(cells == null ? row : cells);
    }
    return grid.with(all);
  }

  /** A header whose own commas set units and surfaces apart, put together again. */
  private List<GridCell> whole(List<GridCell> head, List<List<GridCell>> rows) {
    int units = 0;
    for (GridCell cell : head) {
      boolean figures = rows.stream().anyMatch(row -> wholeIn(row, cell.column()));
      units += figures && heads.isUnit(cell.text()) ? 1 : 0;
    }
    if (units < 2) {
      return head;
    }
    List<GridCell> whole = new ArrayList<>();
    for (GridCell cell : head) {
      GridCell last = whole.isEmpty() ? null : whole.get(whole.size() - 1);
      String both = last == null ? "" : last.text() + ", " + cell.text().strip();
      boolean open = last != null && heads.role(last.text()) instanceof ColumnRole.Unknown;
      boolean joins =
          last != null
              && (heads.isUnit(cell.text().strip())
                  || open && heads.role(both) instanceof ColumnRole.Value);
      if (joins) {
        whole.set(whole.size() - 1, GridCell.of(last.row(), last.column(), both));
      } else {
        whole.add(GridCell.of(cell.row(), whole.size() + 1, cell.text()));
      }
    }
    return whole;
  }

  private static boolean wholeIn(List<GridCell> row, int column) {
    return row.stream().anyMatch(cell -> cell.column() == column && isWhole(cell.text()));
  }

  private int header(Grid grid) {
    for (int i = 0; i < Math.min(grid.rows().size(), 40); i++) {
      List<GridCell> row = grid.rows().get(i);
      if (row.size() > 1 && !hasFigure(row) && (heads.isHeader(row) || heads.hasNameWord(row))) {
        return i;
      }
    }
    return -1;
  }

  private static boolean hasFigure(List<GridCell> row) {
    return row.stream().anyMatch(cell -> isWhole(cell.text()));
  }

  private static int width(List<GridCell> row) {
    return row.get(row.size() - 1).column();
  }

  private static boolean isWhole(String text) {
    return text.strip().matches("[-+]?\\d{1,4}");
  }

  /** The columns, as bits, whose figures have a fraction; null where that is not clear. */
  private Integer decimals(List<GridCell> head, List<List<GridCell>> body, int columns) {
    int longest = body.stream().mapToInt(BareCommas::width).max().orElse(columns) - columns;
    int best = 0;
    double most = 0;
    double second = 0;
    for (int bits = 2; bits < 1 << columns; bits += 2) {
      if (Integer.bitCount(bits) < longest) {
        continue;
      }
      double score = score(head, body, bits, columns);
      if (score > most) {
        second = most;
        most = score;
        best = bits;
      } else {
        second = Math.max(second, score);
      }
    }
    return most > 0 && most > second * 1.02 ? (Integer) best : null;
  }

  /** How well a set of columns explains the rows; 0 when it leaves one unexplained. */
  private double score(List<GridCell> head, List<List<GridCell>> body, int bits, int columns) {
    int figures = 0;
    int likely = 0;
    int step = Math.max(1, body.size() / SEARCHED);
    for (int r = 0; r < body.size(); r += step) {
      List<GridCell> cells = cells(body.get(r), bits, columns);
      if (cells == null) {
        return 0;
      }
      for (GridCell cell : cells) {
        if (cell.column() > 1) {
          ColumnRole role = role(head, cell.column());
          if (role instanceof ColumnRole.Value value) {
            figures++;
            likely += isLikely(value, cell.text()) ? 1 : 0;
          }
        }
      }
    }
    return figures == 0 ? 0.1 : 0.1 + (double) likely / figures;
  }

  private ColumnRole role(List<GridCell> head, int column) {
    for (GridCell cell : head) {
      if (cell.column() == column) {
        return heads.role(cell.text());
      }
    }
    return new ColumnRole.Unknown();
  }

  private static boolean isLikely(ColumnRole.Value role, String text) {
    String plain = text.replace(',', '.').strip();
    if (!plain.matches("[-+]?\\d+(\\.\\d+)?")) {
      return false;
    }
    double value = Double.parseDouble(plain);
    PlausibleRange range = PlausibleRange.of(role.discipline().key());
    boolean own = role.unit() == null || role.unit() == role.discipline().unit();
    boolean points = role.discipline().key().equals("overall");
    return points ? value > 0 && value <= 100 : !own || range.holds(value);
  }

  /** The row's cells by these columns with fractions; null when the row is not used up by them. */
  private static List<GridCell> cells(List<GridCell> row, int bits, int columns) {
    GridCell[] tokens = new GridCell[width(row) + 1];
    row.forEach(cell -> tokens[cell.column()] = cell);
    List<GridCell> cells = new ArrayList<>();
    int at = 1;
    for (int column = 1; column <= columns; column++) {
      if (at >= tokens.length) {
        return null;
      }
      GridCell cell = tokens[at];
      GridCell next = at + 1 < tokens.length ? tokens[at + 1] : null;
      boolean fraction = (bits & 1 << (column - 1)) != 0;
      if (fraction && cell != null && isWhole(cell.text())) {
        if (next == null || !next.text().strip().matches("\\d{1,3}(\\s*\\D{1,8})?")) {
          return null;
        }
        String text = cell.text().strip() + "," + next.text().strip();
        cells.add(GridCell.of(cell.row(), column, text));
        at += 2;
      } else {
        if (cell != null) {
          cells.add(cell.in(column));
        }
        at++;
      }
    }
    return at == tokens.length ? cells : null;
  }
}
