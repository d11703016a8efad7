package org.griplore.ui.web.record;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.griplore.ingest.grid.Content;
import org.griplore.ingest.grid.Grid;
import org.griplore.ingest.grid.GridCell;
import org.griplore.ingest.grid.source.DocumentReader;
import org.griplore.query.browse.OriginQuestion.OriginRow;
import org.griplore.query.browse.ProvenanceStep;
import org.griplore.store.archive.Original;
import org.griplore.store.archive.OriginalFiles;
import org.griplore.store.vocabulary.Refusal;

/**
 * Cells with their neighbours, read anew from the kept original.
 *
 * @param heading the file and sheet
 * @param columns the columns shown
 * @param rows the rows shown
 * @param missing why nothing is shown; null when there is something
 */
public record SourceExcerpt(String heading, List<Head> columns, List<Row> rows, String missing) {
  private static final int ROWS_AROUND = 4;
  private static final int COLUMNS_AROUND = 2;

  /** No meaning: so many columns are shown whole. */
  private static final int NARROW_SHEET = 14;

  private static final int HEADER_ROWS = 2;
  private static final long LONGEST = 4_000_000;

  /**
   * A column. Where there is little room, those between the first and the last of the cells that
   * the figure comes from are left out, so that these cells are in sight.
   *
   * @param kind how it is set: {@code name} for the first, {@code far} for one that may be left
   *     out; null for any other
   * @param gap whether columns before it are left out
   */
  public record Head(int number, String kind, boolean gap) {}

  /** A row; {@code gap} when rows before it are left out. */
  public record Row(int number, boolean gap, List<Box> boxes) {}

  /** One cell's text; {@code here} when the figure comes from it. */
  public record Box(String text, boolean here) {}

  public static SourceExcerpt of(List<OriginRow> cells, OriginalFiles originals) {
    OriginRow first = cells.get(0);
    String heading = first.file() + (first.sheet().isEmpty() ? "" : ", sheet " + first.sheet());
    Path kept = originals.path(first.sha256());
    try {
      if (Files.size(kept) > LONGEST) {
        return none(heading, "The file is too long to show its cells here.");
      }
      Content content =
          DocumentReader.read(
              Original.of(kept.toString(), first.file(), () -> Files.newInputStream(kept)));
      return shown(heading, cells, lines(content, first.sheet()));
    } catch (IOException | Refusal e) {
      return none(heading, "The kept original cannot be read: `griplore check` says why.");
    }
  }

  private static SourceExcerpt none(String heading, String why) {
    return new SourceExcerpt(heading, List.of(), List.of(), why);
  }

  private static Map<Integer, Map<Integer, String>> lines(Content content, String sheet) {
    Map<Integer, Map<Integer, String>> lines = new HashMap<>();
    if (content instanceof Content.Prose prose) {
      prose.lines().forEach(line -> lines.put(line.number(), Map.of(1, line.text())));
    } else if (content instanceof Content.Tables tables) {
      for (Grid grid : tables.grids()) {
        if (tables.grids().size() == 1 || grid.name().equals(sheet)) {
          grid.rows().stream().flatMap(List::stream).forEach(cell -> put(lines, cell));
        }
      }
    }
    return lines;
  }

  private static void put(Map<Integer, Map<Integer, String>> lines, GridCell cell) {
    lines
        .computeIfAbsent(cell.row(), row -> new HashMap<>())
        .putIfAbsent(cell.column(), cell.text());
  }

  private static SourceExcerpt shown(
      String heading, List<OriginRow> cells, Map<Integer, Map<Integer, String>> lines) {
    TreeSet<Integer> rows = new TreeSet<>();
    TreeSet<Integer> columns = new TreeSet<>();
    TreeSet<Integer> known = new TreeSet<>();
    lines.values().forEach(line -> known.addAll(line.keySet()));
    if (known.isEmpty()) {
      return none(heading, "The sheet is not found in the kept original.");
    }
    columns.add(known.first());
    for (OriginRow cell : cells) {
      around(rows, cell.row(), ROWS_AROUND);
      around(columns, cell.column(), known.size() > NARROW_SHEET ? COLUMNS_AROUND : known.last());
      cell.steps().stream()
          .map(ProvenanceStep::cell)
          .filter(at -> at != null)
          .forEach(at -> rows.add(at.row()));
    }
    rows.retainAll(lines.keySet());
    columns.retainAll(known);
    rows.addAll(header(lines, columns));
    lines.keySet().stream()
        .filter(row -> rows.contains(row - 1) && rows.contains(row + 1))
        .toList()
        .forEach(rows::add);
    List<Row> shown = new ArrayList<>();
    int before = 0;
    for (int row : rows) {
      Map<Integer, String> line = lines.get(row);
      List<Box> boxes =
          columns.stream()
              .map(column -> new Box(line.getOrDefault(column, ""), isHere(cells, row, column)))
              .toList();
      int previous = before;
      boolean gap = lines.keySet().stream().anyMatch(other -> other > previous && other < row);
      shown.add(new Row(row, gap, boxes));
      before = row;
    }
    return new SourceExcerpt(heading, heads(columns, known, cells), shown, null);
  }

  private static List<Head> heads(
      TreeSet<Integer> columns, TreeSet<Integer> known, List<OriginRow> cells) {
    List<Integer> from = cells.stream().map(OriginRow::column).sorted().toList();
    int last = from.get(from.size() - 1);
    List<Head> heads = new ArrayList<>();
    for (int column : columns) {
      boolean far = column < last && !from.contains(column);
      String kind = column == columns.first() ? "name" : far ? "far" : null;
      Integer left = known.lower(column);
      heads.add(new Head(column, kind, left != null && !columns.contains(left)));
    }
    return heads;
  }

  private static void around(TreeSet<Integer> numbers, int centre, int reach) {
    for (int number = centre - reach; number <= centre + reach; number++) {
      numbers.add(number);
    }
  }

  /** The first rows that fill most of the columns: there the column heads stand. */
  private static List<Integer> header(
      Map<Integer, Map<Integer, String>> lines, TreeSet<Integer> columns) {
    return lines.keySet().stream()
        .sorted()
        .filter(
            row ->
                lines.get(row).keySet().stream().filter(columns::contains).count() * 2
                    > columns.size())
        .limit(HEADER_ROWS)
        .toList();
  }

  private static boolean isHere(List<OriginRow> cells, int row, int column) {
    return cells.stream()
        .anyMatch(
            cell ->
                cell.row() == row && cell.column() == column
                    || cell.steps().stream()
                        .map(ProvenanceStep::cell)
                        .anyMatch(at -> at != null && at.row() == row && at.column() == column));
  }
}
