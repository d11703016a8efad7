package org.griplore.ingest.grid.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.griplore.ingest.grid.GridCell;

/**
 * Columns of a table that nothing marks but that its texts stand below one another: in a text of
 * fixed width, on a printed page. A column is a stretch of the line that texts cover; what hardly
 * any row covers parts two of them.
 */
public final class AlignedTable {
  private static final Pattern FIGURE =
      Pattern.compile("[<>~\u2248]?\\s?[-+\u2212]?\\d[\\d.,:]*\\s?\\S{0,6}");
  private static final int WIDEST = 4000;
  private static final int MOST_COLUMNS = 200;
  private static final int FEWEST_ROWS = 3;

  /** From so many rows on, one that reaches across a gap does not close it. */
  private static final int ROWS_PER_STRAY = 6;

  private AlignedTable() {}

  /**
   * A text and the stretch it covers.
   *
   * @param start where it begins, in characters or points, from 0
   * @param end where it ends
   * @param cell the text with its marks; row and column do not count
   */
  public record Piece(int start, int end, GridCell cell) {}

  /**
   * A line.
   *
   * @param number its number from 1
   * @param pieces its texts, from left to right
   */
  public record Line(int number, List<Piece> pieces) {
    private boolean isRow() {
      return pieces.size() > 1;
    }

    private boolean holdsFigure() {
      return pieces.stream().skip(1).anyMatch(p -> FIGURE.matcher(p.cell().text()).matches());
    }
  }

  /** Whether a text is a figure, with a unit or without. */
  static boolean isFigure(String text) {
    return FIGURE.matcher(text).matches();
  }

  /**
   * The lines as rows of cells; empty when they are no table: fewer than three rows of two texts or
   * more, or hardly any figures in them.
   */
  public static Optional<List<List<GridCell>>> rows(List<Line> lines) {
    List<Line> rows = lines.stream().filter(Line::isRow).toList();
    long figures = rows.stream().filter(Line::holdsFigure).count();
    if (rows.size() < FEWEST_ROWS || 2 * figures < rows.size()) {
      return Optional.empty();
    }
    List<int[]> columns = columns(rows);
    if (columns.size() < 2 || columns.size() > MOST_COLUMNS) {
      return Optional.empty();
    }
    List<List<GridCell>> cells = new ArrayList<>();
    for (Line line : lines) {
      List<GridCell> row = row(line, columns);
      if (!row.isEmpty()) {
        cells.add(row);
      }
    }
    return Optional.of(cells);
  }

  private static List<int[]> columns(List<Line> rows) {
    int[] covered = new int[WIDEST + 1];
    for (Line row : rows) {
      for (Piece piece : row.pieces()) {
        for (int x = piece.start(); x < Math.min(WIDEST, piece.end()); x++) {
          covered[x]++;
        }
      }
    }
    int strays = rows.size() / ROWS_PER_STRAY;
    List<int[]> columns = new ArrayList<>();
    int begun = -1;
    for (int x = 0; x <= WIDEST; x++) {
      boolean inside = covered[x] > strays;
      if (inside && begun < 0) {
        begun = x;
      } else if (!inside && begun >= 0) {
        columns.add(new int[] {begun, x});
        begun = -1;
      }
    }
    return columns;
  }

  private static List<GridCell> row(Line line, List<int[]> columns) {
    List<GridCell> row = new ArrayList<>();
    int last = 0;
    for (Piece piece : line.pieces()) {
      int column = Math.max(last, best(piece, columns) + 1);
      GridCell text = piece.cell();
      if (column == last) {
        GridCell before = row.remove(row.size() - 1);
        text = new GridCell(1, 1, before.text() + " " + text.text(), null, null, text.look());
      }
      row.add(new GridCell(line.number(), column, text.text(), null, null, text.look()));
      last = column;
    }
    return row;
  }

  /** The column that a piece covers most of; the nearest where it covers none. */
  private static int best(Piece piece, List<int[]> columns) {
    int best = 0;
    int most = Integer.MIN_VALUE;
    for (int i = 0; i < columns.size(); i++) {
      int[] column = columns.get(i);
      int common = Math.min(piece.end(), column[1]) - Math.max(piece.start(), column[0]);
      if (common > most) {
        most = common;
        best = i;
      }
    }
    return best;
  }
}
