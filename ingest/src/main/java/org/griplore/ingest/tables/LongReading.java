package org.griplore.ingest.tables;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.griplore.ingest.grid.GridCell;
import org.griplore.ingest.recognise.ColumnWords;

/**
 * Reads a block as a list of results, a row each, under any headings: one column names disciplines,
 * one tyres, one holds the figures. The list is laid out as a table, a row a tyre and a column a
 * discipline and unit, each cell keeping its position.
 */
final class LongReading {
  private final CellBlock block;
  private final HeaderBand band;
  private final KnownHeads heads;
  private int measure = -1;
  private int surface = -1;
  private int value = -1;
  private int unit = -1;
  private final List<Integer> names = new ArrayList<>();

  /** Figures beside the value, by column, with the word that heads them as a part. */
  private final Map<Integer, String> parts = new LinkedHashMap<>();

  private LongReading(CellBlock block, HeaderBand band, KnownHeads heads) {
    this.block = block;
    this.band = band;
    this.heads = heads;
  }

  /** The block as a table, with its two rows of header; null where it is no list of results. */
  static CellBlock laidOut(CellBlock block, HeaderBand band, KnownHeads heads) {
    LongReading reading = new LongReading(block, band, heads);
    return band.own() >= 0 && reading.finds() ? reading.table() : null;
  }

  private boolean finds() {
    ColumnFigures figures = new ColumnFigures(block, band.body());
    for (int c = 0; c < block.columns(); c++) {
      String topic = ColumnWords.topic(block.text(band.own(), c)).orElse("");
      if (measure < 0 && share(c, heads::isFigure) > 0.7) {
        measure = c;
      } else if (unit < 0 && share(c, heads::isUnit) > 0.7) {
        unit = c;
      } else if (surface < 0 && share(c, KnownHeads::isSurface) > 0.9) {
        surface = c;
      } else if (figures.share(c) > 0.6 && !heads.isFigure(block.text(band.own(), c))) {
        figure(c, topic, figures);
      } else {
        names.add(c);
      }
    }
    return measure >= 0 && value >= 0 && hasNames();
  }

  private void figure(int column, String topic, ColumnFigures figures) {
    switch (topic) {
      case "place", "spread", "runs" -> parts.put(column, block.text(band.own(), column));
      case "run", "sequence", "number", "year" -> {
        // tells repeated rows apart, which stand as runs side by side
      }
      case "generation", "model", "tyre" -> names.add(column);
      default -> {
        if (value < 0 && !(topic.isEmpty() && figures.counts(column))) {
          value = column;
        } else {
          names.add(column);
        }
      }
    }
  }

  private boolean hasNames() {
    for (int column : names) {
      boolean texts = block.sort(band.body(), column) == CellSort.TEXT;
      if (texts || heads.isName(block.text(band.own(), column))) {
        return true;
      }
    }
    return false;
  }

  private double share(int column, java.util.function.Predicate<String> is) {
    int filled = 0;
    int fitting = 0;
    for (int r = band.body(); r < block.rows() && filled < 300; r++) {
      if (block.at(r, column) != null) {
        filled++;
        boolean text = block.sort(r, column) == CellSort.TEXT;
        fitting += text && is.test(block.text(r, column)) ? 1 : 0;
      }
    }
    return filled < 2 ? 0 : (double) fitting / filled;
  }

  /** A column of the table: a discipline in a unit, the how-manieth time, and which part. */
  private record Column(String words, String unit, int repeat, int part) {}

  private CellBlock table() {
    Map<String, Map<Column, GridCell>> rows = new LinkedHashMap<>();
    Map<String, Integer> first = new LinkedHashMap<>();
    Map<Column, Integer> columns = new LinkedHashMap<>();
    Map<Column, Integer> repeats = new LinkedHashMap<>();
    GridCell[] above = new GridCell[block.columns()];
    for (int r = band.body(); r < block.rows(); r++) {
      StringBuilder name = new StringBuilder();
      for (int c : names) {
        boolean carried = heads.isName(block.text(band.own(), c));
        above[c] = block.at(r, c) != null || !carried ? block.at(r, c) : above[c];
        name.append(above[c] == null ? "" : above[c].text()).append('\n');
      }
      if (block.at(r, measure) == null) {
        continue;
      }
      first.putIfAbsent(name.toString(), r);
      Map<Column, GridCell> row = rows.computeIfAbsent(name.toString(), n -> new LinkedHashMap<>());
      String unitText = unit < 0 ? "" : block.text(r, unit);
      int repeat = 1;
      while (row.containsKey(new Column(words(r), unitText, repeat, value))) {
        repeat++;
      }
      put(row, columns, new Column(words(r), unitText, repeat, value), block.at(r, value), r);
      for (int part : parts.keySet()) {
        put(row, columns, new Column(words(r), unitText, repeat, part), block.at(r, part), r);
      }
      repeats.merge(new Column(words(r), unitText, 0, value), repeat, Math::max);
    }
    return table(rows, first, columns, repeats);
  }

  private static void put(
      Map<Column, GridCell> row,
      Map<Column, Integer> columns,
      Column column,
      GridCell cell,
      int at) {
    if (cell != null) {
      row.put(column, cell);
      columns.putIfAbsent(column, at);
    }
  }

  private String words(int row) {
    String words = block.text(row, measure);
    boolean short0 = surface >= 0 && heads.catalogue().byHeader(words).isEmpty();
    return short0 ? block.text(row, surface) + " " + words : words;
  }

  private CellBlock table(
      Map<String, Map<Column, GridCell>> rows,
      Map<String, Integer> first,
      Map<Column, Integer> columns,
      Map<Column, Integer> repeats) {
    List<List<GridCell>> all = new ArrayList<>();
    List<GridCell> header = new ArrayList<>();
    List<GridCell> units = new ArrayList<>();
    for (int c : names) {
      header.add(block.at(band.own(), c));
      units.add(null);
    }
    columns.forEach(
        (column, row) -> {
          GridCell cell = block.at(row, measure);
          boolean repeated = repeats.get(new Column(column.words(), column.unit(), 0, value)) > 1;
          String words = column.words() + (repeated ? " run " + column.repeat() : "");
          header.add(GridCell.of(cell.row(), cell.column(), words));
          GridCell below =
              column.part() != value
                  ? block.at(band.own(), column.part())
                  : unit < 0 ? null : block.at(row, unit);
          units.add(below);
        });
    all.add(header);
    all.add(units);
    rows.forEach(
        (name, row) -> {
          List<GridCell> cells = new ArrayList<>();
          for (int c : names) {
            cells.add(block.at(first.get(name), c));
          }
          columns.keySet().forEach(column -> cells.add(row.get(column)));
          all.add(cells);
        });
    return CellBlock.laidOut(all, header.size());
  }
}
