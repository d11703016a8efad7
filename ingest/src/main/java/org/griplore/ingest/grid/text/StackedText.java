package org.griplore.ingest.grid.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.griplore.ingest.grid.Content;
import org.griplore.ingest.grid.Grid;
import org.griplore.ingest.grid.GridCell;
import org.griplore.store.vocabulary.Cell;
import org.griplore.store.vocabulary.Finding;

/**
 * A table pasted with one cell a line: the heads, then the cells of each row, one below the other.
 * It is known by its rhythm: every so many lines a text, and figures in between, each column of one
 * kind throughout.
 */
public final class StackedText {
  private static final Pattern NO_FIGURE =
      Pattern.compile("(?i)[-\u2013\u2014]|n/?a|k\\. ?a\\.|dnf|");
  private static final int MOST_LINES = 20_000;
  private static final int LONGEST_CELL = 60;
  private static final int MOST_COLUMNS = 40;
  private static final int MOST_TITLES = 12;
  private static final int FEWEST_ROWS = 2;

  /** The table is at least this share of the lines. */
  private static final double LEAST_SHARE = 0.6;

  private StackedText() {}

  /** The table; empty when the lines are none. */
  public static Optional<Content> read(List<Content.Line> lines) {
    List<Content.Line> cells = lines.stream().filter(line -> !line.text().isBlank()).toList();
    if (cells.size() < 6 || cells.size() > MOST_LINES) {
      return Optional.empty();
    }
    int best = 0;
    int bestTitles = 0;
    int bestColumns = 0;
    for (int titles = 0; titles <= MOST_TITLES; titles++) {
      for (int columns = 2; columns <= MOST_COLUMNS; columns++) {
        int covered =
            columns * rows(cells.subList(Math.min(titles, cells.size()), cells.size()), columns);
        if (covered > best) {
          best = covered;
          bestTitles = titles;
          bestColumns = columns;
        }
      }
    }
    return LEAST_SHARE * cells.size() <= best
        ? Optional.of(table(cells, bestTitles, bestColumns, best / bestColumns))
        : Optional.empty();
  }

  /** How many rows, the heads with them, keep the rhythm; 0 where there are fewer than three. */
  private static int rows(List<Content.Line> cells, int columns) {
    int figures = 0;
    for (int column = 0; column < columns && 2 * columns <= cells.size(); column++) {
      String head = cells.get(column).text().strip();
      if (AlignedTable.isFigure(head) || head.length() > LONGEST_CELL) {
        return 0;
      }
      figures += AlignedTable.isFigure(cells.get(columns + column).text().strip()) ? 1 : 0;
    }
    if (figures == 0 || 2 * figures < columns - 1) {
      return 0;
    }
    int rows = 1;
    while ((rows + 1) * columns <= cells.size() && keepsRhythm(cells, columns, rows)) {
      rows++;
    }
    return rows > FEWEST_ROWS ? rows : 0;
  }

  /** Whether a row has figures where the first has, and texts where it has texts. */
  private static boolean keepsRhythm(List<Content.Line> cells, int columns, int row) {
    for (int column = 0; column < columns; column++) {
      String first = cells.get(columns + column).text().strip();
      String text = cells.get(row * columns + column).text().strip();
      boolean open = NO_FIGURE.matcher(text).matches() || NO_FIGURE.matcher(first).matches();
      boolean same = AlignedTable.isFigure(first) == AlignedTable.isFigure(text);
      if (text.length() > LONGEST_CELL
          || column == 0 && AlignedTable.isFigure(text)
          || !same && !open) {
        return false;
      }
    }
    return true;
  }

  private static Content table(List<Content.Line> cells, int titles, int columns, int count) {
    List<List<GridCell>> rows = new ArrayList<>();
    List<Finding> findings = new ArrayList<>();
    for (int i = 0; i < titles; i++) {
      rows.add(List.of(cell(cells.get(i), 1)));
    }
    int end = titles + columns * count;
    for (int at = titles; at < end; at += columns) {
      List<GridCell> row = new ArrayList<>();
      for (int column = 0; column < columns; column++) {
        row.add(cell(cells.get(at + column), column + 1));
      }
      rows.add(row);
    }
    for (Content.Line line : cells.subList(end, cells.size())) {
      rows.add(List.of(cell(line, 1)));
      if (AlignedTable.isFigure(line.text().strip())) {
        findings.add(leftOver(line));
      }
    }
    Grid grid = new Grid("", List.of(), rows, List.of(), true);
    return new Content.Tables("one cell a line", List.of(grid), findings);
  }

  private static Finding leftOver(Content.Line line) {
    String text = line.text().strip();
    return new Finding(
        Finding.Kind.NOT_READ,
        new Cell("", line.number(), 1, text),
        text,
        "a row with as many lines as those above it",
        "write the table with one row a line, its cells parted by tabs");
  }

  private static GridCell cell(Content.Line line, int column) {
    return GridCell.of(line.number(), column, line.text().strip());
  }
}
