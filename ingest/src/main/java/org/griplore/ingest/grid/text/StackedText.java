package org.griplore.ingest.grid.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.griplore.ingest.grid.Content;
import org.griplore.ingest.grid.Grid;
import org.griplore.ingest.grid.GridCell;

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
  private static final int MOST_TITLES = 8;
  private static final int FEWEST_ROWS = 2;

  private StackedText() {}

  /** The table; empty when the lines are none. */
  public static Optional<Content> read(List<Content.Line> lines) {
    List<Content.Line> cells = lines.stream().filter(line -> !line.text().isBlank()).toList();
    if (cells.size() < 6 || cells.size() > MOST_LINES) {
      return Optional.empty();
    }
    for (int titles = 0; titles <= MOST_TITLES; titles++) {
      for (int columns = 2; columns <= MOST_COLUMNS; columns++) {
        int rest = cells.size() - titles;
        boolean whole = rest > 0 && rest % columns == 0 && rest / columns > FEWEST_ROWS;
        if (whole && isTable(cells.subList(titles, cells.size()), columns)) {
          return Optional.of(table(cells, titles, columns));
        }
      }
    }
    return Optional.empty();
  }

  private static boolean isTable(List<Content.Line> cells, int columns) {
    int figures = 0;
    for (int column = 0; column < columns; column++) {
      boolean allFigures = true;
      boolean allTexts = true;
      for (int at = columns + column; at < cells.size(); at += columns) {
        String text = cells.get(at).text().strip();
        boolean figure = AlignedTable.isFigure(text);
        allFigures &= figure || NO_FIGURE.matcher(text).matches();
        allTexts &= !figure && text.length() <= LONGEST_CELL;
      }
      String head = cells.get(column).text().strip();
      boolean headed = !AlignedTable.isFigure(head) && head.length() <= LONGEST_CELL;
      if (!headed || !allFigures && !allTexts || column == 0 && !allTexts) {
        return false;
      }
      figures += allFigures && !allTexts ? 1 : 0;
    }
    return figures > 0 && 2 * figures >= columns - 1;
  }

  private static Content table(List<Content.Line> cells, int titles, int columns) {
    List<List<GridCell>> rows = new ArrayList<>();
    for (int i = 0; i < titles; i++) {
      rows.add(List.of(cell(cells.get(i), 1)));
    }
    for (int at = titles; at < cells.size(); at += columns) {
      List<GridCell> row = new ArrayList<>();
      for (int column = 0; column < columns; column++) {
        row.add(cell(cells.get(at + column), column + 1));
      }
      rows.add(row);
    }
    Grid grid = new Grid("", List.of(), rows, List.of(), true);
    return new Content.Tables("one cell a line", List.of(grid));
  }

  private static GridCell cell(Content.Line line, int column) {
    return GridCell.of(line.number(), column, line.text().strip());
  }
}
