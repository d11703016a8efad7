package org.griplore.ingest.forms;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.griplore.ingest.grid.GridCell;
import org.griplore.ingest.recognise.ColumnRole;
import org.griplore.ingest.recognise.ColumnUnits;
import org.griplore.ingest.recognise.DecimalMark;
import org.griplore.ingest.recognise.DetailLines;
import org.griplore.ingest.recognise.HeaderReader;
import org.griplore.ingest.recognise.NumberReader;
import org.griplore.ingest.recognise.TableArea;
import org.griplore.store.tyre.TyreSize;
import org.griplore.store.vocabulary.Cell;
import org.griplore.store.vocabulary.Discipline;
import org.griplore.store.vocabulary.Entry;
import org.griplore.store.vocabulary.Finding;
import org.griplore.store.vocabulary.Note;
import org.griplore.store.vocabulary.Result;
import org.griplore.store.vocabulary.ResultCells;
import org.griplore.store.vocabulary.Unit;

/** Reads one table: a row a tyre, each cell by its column's role. */
final class TableReader {
  private final String sheet;
  private final TableArea area;
  private final SourceContext context;
  private final List<ColumnRole> roles = new ArrayList<>();
  private final NumberReader numbers;
  private final ColumnUnits units;
  private final List<Note> notes = new ArrayList<>();

  TableReader(String sheet, TableArea area, DetailLines lines, SourceContext context) {
    this.sheet = sheet;
    this.area = area;
    this.context = context;
    this.numbers = new NumberReader(mark());
    HeaderReader headers = new HeaderReader(context.catalogue());
    for (int column = 0; column < area.heads().size(); column++) {
      TableArea.Head head = area.heads().get(column);
      roles.add(settled(headers.role(head.text(), head.unitText()), column));
    }
    this.units = new ColumnUnits(area, roles, numbers, unitBeside(lines));
    units.roles().forEach((column, role) -> roles.set(column, role));
    units.assumptions().forEach(this::assumed);
    reportUnknown();
  }

  private DecimalMark mark() {
    Stream<String> texts =
        area.rows().stream()
            .flatMap(List::stream)
            .filter(Objects::nonNull)
            .filter(cell -> cell.number() == null)
            .map(GridCell::text)
            .filter(text -> text.length() < 30);
    DecimalMark mark = DecimalMark.of(texts);
    if (mark == DecimalMark.MIXED) {
      GridCell first =
          area.heads().stream()
              .map(TableArea.Head::cell)
              .filter(Objects::nonNull)
              .findFirst()
              .orElse(null);
      context
          .receiver()
          .finding(
              new Finding(
                  Finding.Kind.ASSUMED,
                  first == null ? null : cell(first),
                  "decimal comma and decimal point in one table",
                  "each number was read by itself",
                  "write all numbers of the table alike"));
    }
    return mark;
  }

  private String unitBeside(DetailLines lines) {
    GridCell stated = lines.byTopic().get("unit");
    return stated != null ? stated.text() : context.given().get("unit");
  }

  /** "Note" heads remarks in English and marks in German: the cells decide. */
  private ColumnRole settled(ColumnRole role, int column) {
    boolean mostlyNumbers = share(column) > 0.5;
    if (role instanceof ColumnRole.Remark && mostlyNumbers) {
      return new ColumnRole.Value(context.catalogue().get("overall"), null);
    }
    if (role instanceof ColumnRole.Tyre && mostlyNumbers && column > 0) {
      return new ColumnRole.Unknown();
    }
    return role;
  }

  private double share(int column) {
    int filled = 0;
    int numeric = 0;
    for (List<GridCell> row : area.rows()) {
      GridCell cell = row.get(column);
      if (cell != null) {
        NumberReader.Reading read = read(cell);
        filled += read instanceof NumberReader.Reading.Missing ? 0 : 1;
        numeric += read instanceof NumberReader.Reading.Number ? 1 : 0;
      }
    }
    return filled == 0 ? 0 : (double) numeric / filled;
  }

  private NumberReader.Reading read(GridCell cell) {
    return CellNumber.read(cell, numbers);
  }

  private void assumed(int column, String found, String assumed, String remedy) {
    GridCell head = area.heads().get(column).cell();
    context
        .receiver()
        .finding(
            new Finding(
                Finding.Kind.ASSUMED, head == null ? null : cell(head), found, assumed, remedy));
  }

  private void assumed(ColumnUnits.Assumption assumption) {
    assumed(assumption.column(), assumption.found(), assumption.assumed(), assumption.remedy());
  }

  private void reportUnknown() {
    Map<ColumnRole, Integer> seen = new HashMap<>();
    for (int column = 0; column < roles.size(); column++) {
      GridCell head = area.heads().get(column).cell();
      ColumnRole role = roles.get(column);
      int at = column;
      boolean filled = area.rows().stream().anyMatch(row -> row.get(at) != null);
      if (role instanceof ColumnRole.Unknown && filled) {
        GridCell where = head == null ? firstCell(column) : head;
        context
            .receiver()
            .finding(
                new Finding(
                    Finding.Kind.NOT_READ,
                    cell(where),
                    head == null ? "a column without a header" : head.text(),
                    "a discipline, a place, a size or a remark",
                    "head the column with a word for the discipline, or add the discipline"));
      }
      boolean single = role instanceof ColumnRole.Value || role instanceof ColumnRole.Place;
      if (single && seen.putIfAbsent(sameThing(role), column) != null) {
        context
            .receiver()
            .finding(
                new Finding(
                    Finding.Kind.CONFLICT,
                    head == null ? null : cell(head),
                    area.heads().get(column).text(),
                    "one column for a discipline; the first was taken",
                    "give the columns different headers, or leave one out"));
        roles.set(column, new ColumnRole.Ignored("a second column for the same thing"));
      }
    }
  }

  private static ColumnRole sameThing(ColumnRole role) {
    return role instanceof ColumnRole.Value value
        ? new ColumnRole.Value(value.discipline(), null)
        : role;
  }

  private GridCell firstCell(int column) {
    return area.rows().stream()
        .map(row -> row.get(column))
        .filter(Objects::nonNull)
        .findFirst()
        .orElseThrow();
  }

  List<Entry> entries() {
    Map<String, Integer> rowOf = new HashMap<>();
    List<Entry> entries = new ArrayList<>();
    for (List<GridCell> row : area.rows()) {
      Named named = named(row);
      if (named == null) {
        row.stream().filter(Objects::nonNull).forEach(this::loose);
        continue;
      }
      String model = SettledName.of(named.written(), cell(named.cell(), named.written()), context);
      String size = size(row);
      if (rowOf.putIfAbsent(model + "\n" + size, named.cell().row()) != null) {
        context
            .receiver()
            .finding(
                new Finding(
                    Finding.Kind.CONFLICT,
                    cell(named.cell(), named.written()),
                    named.written(),
                    "each tyre once in a test; it stands in row "
                        + rowOf.get(model + "\n" + size)
                        + " already, and that row was taken",
                    "remove the repeated row, or give it its own size"));
        continue;
      }
      entries.add(new Entry(model, cell(named.cell(), named.written()), size, results(row, model)));
    }
    return entries;
  }

  /** The rows' remarks; complete after {@link #entries}. */
  List<Note> notes() {
    return notes;
  }

  /** A row without a tyre's name: nothing is lost. */
  private void loose(GridCell cell) {
    if (read(cell) instanceof NumberReader.Reading.NotNumber) {
      notes.add(new Note(null, null, cell.text(), cell(cell)));
    } else {
      context
          .receiver()
          .finding(
              new Finding(
                  Finding.Kind.NOT_READ,
                  cell(cell),
                  cell.text(),
                  "a tyre's name in its row",
                  "write the name in the column of tyres"));
    }
  }

  private record Named(String written, GridCell cell) {}

  private Named named(List<GridCell> row) {
    GridCell tyre = null;
    GridCell maker = null;
    GridCell model = null;
    for (int column = 0; column < roles.size(); column++) {
      ColumnRole role = roles.get(column);
      tyre = role instanceof ColumnRole.Tyre && tyre == null ? row.get(column) : tyre;
      maker = role instanceof ColumnRole.Maker ? row.get(column) : maker;
      model = role instanceof ColumnRole.Model ? row.get(column) : model;
    }
    GridCell main = tyre != null ? tyre : model;
    if (main == null || bare(main.text()).isEmpty()) {
      return null;
    }
    String written = bare(main.text());
    if (tyre == null && maker != null) {
      written = bare(maker.text()) + " " + written;
    }
    return new Named(written, main);
  }

  /** A name without footnote marks. */
  private static String bare(String name) {
    return name.replaceAll("\\s*(\\[\\d{1,2}\\]|[*\u2020\u2021\u00b9\u00b2\u00b3]+\\)?)\\s*$", "")
        .strip();
  }

  private String size(List<GridCell> row) {
    for (int column = 0; column < roles.size(); column++) {
      GridCell cell = row.get(column);
      if (roles.get(column) instanceof ColumnRole.Size && cell != null) {
        return TyreSize.find(cell.text()).map(TyreSize::toString).orElseGet(() -> noSize(cell));
      }
    }
    return null;
  }

  private String noSize(GridCell cell) {
    context
        .receiver()
        .finding(
            new Finding(
                Finding.Kind.NOT_READ,
                cell(cell),
                cell.text(),
                "a size like 205/55 R16 91V",
                "correct it in the source and add it again"));
    return null;
  }

  private List<Result> results(List<GridCell> row, String model) {
    Map<Discipline, Figures> figures = new java.util.LinkedHashMap<>();
    for (int column = 0; column < roles.size(); column++) {
      GridCell cell = row.get(column);
      if (cell == null) {
        continue;
      }
      ColumnRole role = roles.get(column);
      if (role instanceof ColumnRole.Remark) {
        if (!(read(cell) instanceof NumberReader.Reading.Missing)) {
          notes.add(new Note(model, null, cell.text(), cell(cell)));
        }
      } else if (role instanceof ColumnRole.Value value) {
        value(figures.computeIfAbsent(value.discipline(), d -> new Figures()), value, column, cell);
      } else if (role instanceof ColumnRole.Place place) {
        whole(cell, "a place from 1")
            .ifPresent(
                n ->
                    figures
                        .computeIfAbsent(place.discipline(), d -> new Figures())
                        .place(n, cell(cell)));
      } else if (role instanceof ColumnRole.Runs runs) {
        whole(cell, "a number of runs")
            .ifPresent(
                n ->
                    figures
                        .computeIfAbsent(runs.discipline(), d -> new Figures())
                        .runs(n, cell(cell)));
      } else if (role instanceof ColumnRole.Spread spread) {
        if (number(cell) instanceof NumberReader.Reading.Number number) {
          figures
              .computeIfAbsent(spread.discipline(), d -> new Figures())
              .spread(number.value(), cell(cell));
        }
      }
    }
    List<Result> results = new ArrayList<>();
    figures.forEach((discipline, figure) -> figure.result(discipline).ifPresent(results::add));
    return results;
  }

  private void value(Figures figures, ColumnRole.Value role, int column, GridCell cell) {
    if (!(number(cell) instanceof NumberReader.Reading.Number number)) {
      return;
    }
    ValueReader.Read read =
        ValueReader.read(number, role.discipline(), role.unit(), units.isAssumed(column));
    if (read.problem() != null) {
      context
          .receiver()
          .finding(
              new Finding(
                  Finding.Kind.CONFLICT,
                  cell(cell),
                  cell.text(),
                  read.problem(),
                  "correct the unit in the source and add it again"));
      return;
    }
    if (read.remark() != null) {
      context
          .receiver()
          .finding(
              new Finding(
                  Finding.Kind.ASSUMED,
                  cell(cell),
                  cell.text(),
                  read.remark(),
                  "check the source"));
    }
    figures.value(read.value(), read.unit(), read.rule(), cell(cell));
  }

  /** The cell's number; what is neither number nor a mark for missing becomes a finding. */
  private NumberReader.Reading number(GridCell cell) {
    NumberReader.Reading read = read(cell);
    if (read instanceof NumberReader.Reading.NotFinished) {
      context
          .receiver()
          .finding(
              new Finding(
                  Finding.Kind.NOT_READ,
                  cell(cell),
                  cell.text(),
                  "a number; taken as broken off, without a result",
                  "nothing, if the tyre did not finish"));
    } else if (read instanceof NumberReader.Reading.NotNumber not) {
      context
          .receiver()
          .finding(
              new Finding(
                  Finding.Kind.NOT_READ,
                  cell(cell),
                  cell.text(),
                  not.expected(),
                  "correct it in the source and add it again"));
    }
    return read;
  }

  private java.util.Optional<Integer> whole(GridCell cell, String expected) {
    GridCell plain =
        new GridCell(
            cell.row(),
            cell.column(),
            cell.text().replaceAll("(?<=\\d)(\\.|st|nd|rd|th|er|e|:a|:e)$", ""),
            cell.number(),
            null);
    NumberReader.Reading read = number(plain);
    if (read instanceof NumberReader.Reading.Number number) {
      if (number.value() >= 1
          && number.value() == Math.rint(number.value())
          && number.value() < 1e6) {
        return java.util.Optional.of((int) number.value());
      }
      context
          .receiver()
          .finding(
              new Finding(
                  Finding.Kind.NOT_READ,
                  cell(cell),
                  cell.text(),
                  expected,
                  "correct it in the source and add it again"));
    }
    return java.util.Optional.empty();
  }

  private Cell cell(GridCell cell) {
    return cell(cell, cell.text());
  }

  private Cell cell(GridCell cell, String found) {
    return new Cell(sheet, cell.row(), cell.column(), found);
  }

  /** The figures of one tyre in one discipline, gathered from several columns. */
  private static final class Figures {
    private Double value;
    private Unit unit;
    private String rule = "";
    private Double spread;
    private Integer runs;
    private Integer place;
    private ResultCells cells = new ResultCells(null, null, null, null);

    void value(double given, Unit its, String rules, Cell at) {
      value = given;
      unit = its;
      rule = rules;
      cells = new ResultCells(at, cells.spread(), cells.runs(), cells.place());
    }

    void spread(double given, Cell at) {
      spread = given;
      cells = new ResultCells(cells.value(), at, cells.runs(), cells.place());
    }

    void runs(int given, Cell at) {
      runs = given;
      cells = new ResultCells(cells.value(), cells.spread(), at, cells.place());
    }

    void place(int given, Cell at) {
      place = given;
      cells = new ResultCells(cells.value(), cells.spread(), cells.runs(), at);
    }

    java.util.Optional<Result> result(Discipline discipline) {
      if (value == null && place == null) {
        return java.util.Optional.empty();
      }
      return java.util.Optional.of(
          new Result(discipline.key(), value, unit, spread, runs, place, cells, rule));
    }
  }
}
