package org.griplore.ingest.tables;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.griplore.ingest.grid.Grid;
import org.griplore.ingest.grid.GridCell;
import org.griplore.ingest.recognise.ColumnMap;
import org.griplore.store.vocabulary.DisciplineCatalogue;

/** Finds the tables of grids: for each region the readings that there are, the best first. */
public final class TableReadings {
  /** More columns than this are no tyres across. */
  private static final int MOST_ACROSS = 400;

  /** A reading with less evidence is not taken. */
  private static final double ENOUGH = 55;

  private final KnownHeads heads;
  private final ColumnMap map;

  /** Knows these disciplines; what a map says of columns counts first. */
  public TableReadings(DisciplineCatalogue catalogue, ColumnMap map) {
    this.heads = new KnownHeads(catalogue, map);
    this.map = map;
  }

  /**
   * A region with its readings.
   *
   * @param readings the best first; empty only where the map names a header row elsewhere
   * @param said whether the map names its header row, so that it is read in any case
   */
  public record Found(List<TableReading> readings, boolean said) {
    /** Keeps the list from changing. */
    public Found {
      readings = List.copyOf(readings);
    }

    /** The readings that differ from each other, the best first. */
    public List<TableReading> different() {
      List<TableReading> different = new ArrayList<>();
      for (TableReading reading : readings) {
        if (different.stream().noneMatch(other -> other.words().equals(reading.words()))) {
          different.add(reading);
        }
      }
      return different;
    }

    /** The best reading. */
    public TableReading best() {
      return readings.get(0);
    }

    /** Whether the best reading is taken; else the region is a draft. */
    public boolean isTaken() {
      return said || best().score() >= ENOUGH && best().doubt() == null;
    }
  }

  /**
   * The regions of a grid that hold figures, with their readings, from top to bottom. Regions that
   * hold none are lines beside the others.
   */
  public List<Found> of(Grid original) {
    Grid grid = new BareCommas(heads).joined(original);
    List<Found> all = new ArrayList<>();
    List<List<GridCell>> carried = new ArrayList<>();
    for (Region region : new RegionFinder(heads).find(grid)) {
      List<List<GridCell>> before = new ArrayList<>(carried);
      before.addAll(region.before());
      Found found = of(new Region(region.rows(), before, region.after()), grid);
      if (found.readings().isEmpty()) {
        continue;
      }
      if (found.said() || found.best().score() >= ENOUGH || hasFigures(region)) {
        all.add(found);
        carried = new ArrayList<>();
      } else {
        carried = before;
        carried.addAll(lines(region.rows()));
        carried.addAll(region.after());
      }
    }
    if (!carried.isEmpty() && !all.isEmpty()) {
      Found last = all.get(all.size() - 1);
      List<List<GridCell>> more = carried;
      all.set(
          all.size() - 1,
          new Found(last.readings().stream().map(r -> r.followedBy(more)).toList(), last.said()));
    }
    return all;
  }

  /** At least two rows of texts with figures: no text that may be passed over. */
  private static boolean hasFigures(Region region) {
    int rows = 0;
    for (List<GridCell> row : region.rows()) {
      boolean figure = false;
      boolean text = false;
      for (GridCell cell : row) {
        CellSort sort = CellSort.of(cell);
        figure |= sort.isFigure();
        text |= sort == CellSort.TEXT;
      }
      rows += figure && text ? 1 : 0;
    }
    return rows >= 2;
  }

  /** Whether a cell of a line is a figure. */
  public static boolean hasFigure(List<GridCell> line) {
    return line.stream().anyMatch(cell -> CellSort.of(cell).isFigure());
  }

  private static List<List<GridCell>> lines(List<List<GridCell>> rows) {
    return rows.stream().map(row -> RegionFinder.isLone(row) ? List.of(row.get(0)) : row).toList();
  }

  private Found of(Region region, Grid grid) {
    CellBlock block = CellBlock.of(region.rows());
    List<TableReading> readings = new ArrayList<>();
    TitleWords title = title(region, grid);
    for (HeaderBand band : HeaderBand.of(block, heads, said(region))) {
      readings.add(reading(block, band, title, false, region));
      CellBlock list = LongReading.laidOut(block, band, heads);
      if (list != null) {
        HeaderBand laidOut = new HeaderBand(List.of(0), 1, -1, 2);
        List<List<GridCell>> before = before(region, band);
        readings.add(
            new UprightReading(list, laidOut, heads, title)
                .read(false, before, region.after())
                .with(new ReadingReason(12, "a row a result: one column names disciplines")));
      }
    }
    if (map.headerRow() == null && block.rows() <= MOST_ACROSS) {
      CellBlock turned = block.turned();
      for (HeaderBand band : HeaderBand.of(turned, heads, null)) {
        readings.add(reading(turned, band, title, true, region));
      }
    }
    if (grid.draft() != null) {
      readings.replaceAll(reading -> reading.doubted(grid.draft()));
    }
    readings.sort(Comparator.comparingDouble(TableReading::score).reversed());
    Found found = new Found(readings, map.headerRow() != null);
    if (map.reading() == null || found.readings().isEmpty() || found.isTaken()) {
      return found;
    }
    List<TableReading> different = found.different();
    return new Found(List.of(different.get(Math.min(map.reading(), different.size()) - 1)), true);
  }

  private TableReading reading(
      CellBlock block, HeaderBand band, TitleWords title, boolean turned, Region region) {
    List<List<GridCell>> before = turned ? region.before() : before(region, band);
    return new UprightReading(block, band, heads, title).read(turned, before, region.after());
  }

  /** The lines above the header, those of the region included. */
  private static List<List<GridCell>> before(Region region, HeaderBand band) {
    List<List<GridCell>> before = new ArrayList<>(region.before());
    int top = band.rows().isEmpty() ? band.body() : band.rows().get(0);
    before.addAll(region.rows().subList(0, top));
    return before;
  }

  /** The row in the region that the map names as header; null when it names none of them. */
  private Integer said(Region region) {
    for (int r = 0; r < region.rows().size() && map.headerRow() != null; r++) {
      if (region.rows().get(r).get(0).row() == map.headerRow()) {
        return r;
      }
    }
    return map.headerRow() == null ? null : (Integer) Integer.MAX_VALUE;
  }

  private TitleWords title(Region region, Grid grid) {
    List<String> lines = new ArrayList<>();
    for (int i = region.before().size() - 1; i >= 0; i--) {
      lines.add(
          region.before().get(i).stream()
              .map(GridCell::text)
              .collect(java.util.stream.Collectors.joining(", ")));
    }
    lines.add(grid.name());
    lines.add(grid.from());
    for (int i = grid.preamble().size() - 1; i >= 0; i--) {
      lines.add(grid.preamble().get(i).text());
    }
    for (List<GridCell> line : region.after()) {
      String text = line.get(0).text();
      boolean label = text.indexOf(':') >= 0 || text.indexOf('=') >= 0;
      if (line.size() == 1 && !label && text.length() < 60) {
        lines.add(text);
      }
    }
    return TitleWords.of(lines, heads.catalogue());
  }
}
