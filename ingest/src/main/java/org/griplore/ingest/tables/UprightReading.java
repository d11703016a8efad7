package org.griplore.ingest.tables;

import java.util.ArrayList;
import java.util.List;
import org.griplore.ingest.grid.GridCell;
import org.griplore.ingest.recognise.ColumnRole;
import org.griplore.ingest.recognise.ColumnWords;
import org.griplore.ingest.recognise.Setting;
import org.griplore.ingest.recognise.TableArea;
import org.griplore.store.names.EntryName;
import org.griplore.store.vocabulary.Circumstance;
import org.griplore.store.vocabulary.Discipline;

/** Reads a block by one header band: tyres down, disciplines across. */
final class UprightReading {
  private final CellBlock block;
  private final HeaderBand band;
  private final KnownHeads heads;
  private final ColumnFigures figures;
  private final TitleWords title;
  private final List<TableArea.Head> columns = new ArrayList<>();
  private final List<HeadText> said = new ArrayList<>();
  private final List<ColumnRole> roles = new ArrayList<>();
  private final HeadRoles headRoles;

  UprightReading(CellBlock block, HeaderBand band, KnownHeads heads, TitleWords title) {
    this.block = block;
    this.band = band;
    this.heads = heads;
    this.title = withCorner(title, block, band, heads);
    this.figures = new ColumnFigures(block, band.body());
    this.headRoles = new HeadRoles(heads, this.title);
  }

  /** A discipline over the column of names heads the figures beside it. */
  private static TitleWords withCorner(
      TitleWords title, CellBlock block, HeaderBand band, KnownHeads heads) {
    for (int c = 0; c < block.columns() && band.own() >= 0; c++) {
      String corner = block.text(band.own(), c);
      boolean names = band.body() < block.rows() && block.sort(band.body(), c) == CellSort.TEXT;
      if (!names) {
        return title;
      }
      if (heads.role(corner) instanceof ColumnRole.Value) {
        TitleWords own = TitleWords.of(List.of(corner), heads.catalogue());
        return own.discipline() == null ? title : own;
      }
    }
    return title;
  }

  /** The reading; its lines above and below are for the region to give. */
  TableReading read(boolean turned, List<List<GridCell>> before, List<List<GridCell>> after) {
    for (int c = 0; c < block.columns(); c++) {
      TableArea.Head head = band.head(block, heads, c);
      columns.add(head);
      String own = band.own() < 0 ? "" : block.text(band.own(), c);
      said.add(HeadText.of(band.upper(block, heads, c), own));
    }
    for (int c = 0; c < block.columns(); c++) {
      ColumnRole role =
          headRoles.role(columns.get(c), said.get(c), figures.typical(c), figures.formatUnit(c));
      roles.add(settled(role, c));
    }
    headless();
    unitColumns();
    states();
    parts();
    bareRuns();
    NameColumns names =
        new NameColumns(block, heads, band.body(), column -> columns.get(column).text().isEmpty());
    names.find(roles);
    mapped();
    List<RowKind> kinds = new BodyRows(block, band, roles, heads).kinds();
    List<List<GridCell>> rows = new ArrayList<>();
    for (int r = band.body(); r < block.rows(); r++) {
      rows.add(row(r, kinds.get(r - band.body())));
    }
    ReadingEvidence evidence = new ReadingEvidence(block, band, columns, roles, kinds, figures);
    return new TableReading(
        turned,
        new TableArea(columns, rows, before, after),
        roles,
        kinds,
        evidence.list(),
        headRoles.findings(),
        evidence.doubt());
  }

  private void mapped() {
    List<ColumnRole> over = heads.reader().mapped(columns, roles);
    roles.clear();
    roles.addAll(over);
  }

  /** What the header says, where the cells do not say otherwise. */
  private ColumnRole settled(ColumnRole role, int column) {
    double share = figures.share(column);
    boolean names = NameColumns.isName(role) && !(role instanceof ColumnRole.Generation);
    if (names && share > 0.5 && column > 0) {
      return new ColumnRole.Unknown();
    }
    boolean blank = columns.get(column).text().isEmpty() && share < 0.9;
    boolean beside = columns.get(column).text().isEmpty() && column > 0 && isMain(column - 1);
    if (role instanceof ColumnRole.Value && (blank || beside && others(column))) {
      return new ColumnRole.Unknown();
    }
    boolean texts = share < 0.34 && role instanceof ColumnRole.Value;
    return texts && column == 0 ? new ColumnRole.Unknown() : role;
  }

  /** A title heads one column only: of several without a header nothing is known. */
  private void headless() {
    List<Integer> open = new ArrayList<>();
    for (int c = 0; c < roles.size(); c++) {
      if (columns.get(c).text().isEmpty() && roles.get(c) instanceof ColumnRole.Value) {
        open.add(c);
      }
    }
    if (open.size() > 1) {
      open.forEach(c -> roles.set(c, new ColumnRole.Unknown()));
    }
  }

  /** A column that nothing heads tells the state where its cells do. */
  private void states() {
    boolean told = roles.stream().anyMatch(ColumnRole.State.class::isInstance);
    for (int c = 0; c < roles.size() && !told; c++) {
      if (roles.get(c) instanceof ColumnRole.Unknown
          && figures.all(c, text -> EntryName.state(text).isPresent()) > 0.7) {
        roles.set(c, new ColumnRole.State());
        told = true;
      }
    }
  }

  private boolean isMain(int column) {
    ColumnRole role = roles.get(column);
    return role instanceof ColumnRole.Model
        || role instanceof ColumnRole.Line
        || role instanceof ColumnRole.Generation;
  }

  /** Whether a column with a header holds figures. */
  private boolean others(int column) {
    for (int c = column + 1; c < block.columns(); c++) {
      if (!columns.get(c).text().isEmpty() && figures.share(c) > 0.5) {
        return true;
      }
    }
    return false;
  }

  /** A column of units tells those of the figures before it; each cell takes its own along. */
  private void unitColumns() {
    for (int c = 1; c < roles.size(); c++) {
      if (figures.texts(c, heads::isUnit) < 0.8) {
        continue;
      }
      int of = c - 1;
      while (of >= 0 && !(roles.get(of) instanceof ColumnRole.Value)) {
        of--;
      }
      boolean open = of >= 0 && ((ColumnRole.Value) roles.get(of)).unit() == null;
      if (open && figures.share(of) > 0.5) {
        for (int r = band.body(); r < block.rows(); r++) {
          block.join(r, of, c);
        }
        roles.set(c, new ColumnRole.Ignored("units of the column before"));
      }
    }
  }

  /** A spread or number of runs belongs to the discipline before it; so do places, if several. */
  private void parts() {
    long places = roles.stream().filter(ColumnRole.Place.class::isInstance).count();
    Discipline before = null;
    Setting setting = Setting.PLAIN;
    int values = 0;
    boolean behind = false;
    for (int c = 0; c < roles.size(); c++) {
      ColumnRole role = roles.get(c);
      String topic = ColumnWords.topic(columns.get(c).text()).orElse("");
      if (role instanceof ColumnRole.Unknown && before != null && (behind || values == 1)) {
        role =
            switch (topic) {
              case "spread" -> new ColumnRole.Spread(before, setting);
              case "runs" -> new ColumnRole.Runs(before, setting);
              default -> role;
            };
      }
      if (places > 1 && behind && topic.equals("place") && role instanceof ColumnRole.Place) {
        role = new ColumnRole.Place(before, setting);
      }
      role = beside(role, before, setting);
      roles.set(c, role);
      behind = role instanceof ColumnRole.Value || behind && !(role instanceof ColumnRole.Unknown);
      if (role instanceof ColumnRole.Value value) {
        before = value.discipline();
        setting = value.setting();
        values++;
      } else if (role instanceof ColumnRole.Run run) {
        before = run.discipline();
        setting = run.setting();
      }
    }
  }

  /** A part of the discipline before it is a part of that very column. */
  private static ColumnRole beside(ColumnRole role, Discipline before, Setting setting) {
    if (role instanceof ColumnRole.Place place && place.discipline().equals(before)) {
      return new ColumnRole.Place(before, setting);
    } else if (role instanceof ColumnRole.Spread spread && spread.discipline().equals(before)) {
      return new ColumnRole.Spread(before, setting);
    } else if (role instanceof ColumnRole.Runs runs && runs.discipline().equals(before)) {
      return new ColumnRole.Runs(before, setting);
    }
    return role;
  }

  /** Columns headed 1, 2, 3 are runs of the discipline that the title or the group names. */
  private void bareRuns() {
    int run = 0;
    for (int c = 0; c < roles.size(); c++) {
      String own = band.own() < 0 ? "" : block.text(band.own(), c).strip();
      run = own.equals(String.valueOf(run + 1)) ? run + 1 : own.equals("1") ? 1 : 0;
      boolean last = c + 1 == roles.size() || !next(c + 1, run + 1);
      if (run > 1 && last) {
        for (int k = c - run + 1; k <= c; k++) {
          Discipline of =
              roles.get(k) instanceof ColumnRole.Value value
                  ? value.discipline()
                  : title.discipline();
          if (of != null) {
            Setting setting =
                roles.get(k) instanceof ColumnRole.Value value ? value.setting() : titled(of);
            roles.set(k, new ColumnRole.Run(of, title.unit(), setting));
          }
        }
      }
    }
  }

  private Setting titled(Discipline discipline) {
    return title.window() == null || !discipline.key().endsWith("-braking")
        ? Setting.PLAIN
        : new Setting(
            Circumstance.MEASURED.within(title.window().fromKmh(), title.window().toKmh()), null);
  }

  private boolean next(int column, int run) {
    return band.own() >= 0 && block.text(band.own(), column).strip().equals(String.valueOf(run));
  }

  /** A row's cells; a maker that is written once for rows below each other stands in each. */
  private List<GridCell> row(int row, RowKind kind) {
    List<GridCell> cells = new ArrayList<>();
    for (int c = 0; c < block.columns(); c++) {
      GridCell cell = block.at(row, c);
      ColumnRole role = roles.get(c);
      boolean once = role instanceof ColumnRole.Maker || role instanceof ColumnRole.Line;
      if (cell == null && once && kind == RowKind.TYRE) {
        cell = above(row, c);
      }
      cells.add(cell);
    }
    return cells;
  }

  private GridCell above(int row, int column) {
    for (int r = row - 1; r >= band.body(); r--) {
      if (block.at(r, column) != null) {
        return block.at(r, column);
      }
    }
    return null;
  }
}
