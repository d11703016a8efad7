package org.griplore.ingest.forms;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalInt;
import org.griplore.ingest.grid.GridCell;
import org.griplore.ingest.names.FieldNames;
import org.griplore.ingest.recognise.ColumnRole;
import org.griplore.ingest.recognise.DetailLines;
import org.griplore.ingest.recognise.FigureColumn;
import org.griplore.ingest.recognise.FoundThing;
import org.griplore.ingest.recognise.NumberReader;
import org.griplore.ingest.recognise.PlaceText;
import org.griplore.ingest.recognise.ReadFigure;
import org.griplore.ingest.recognise.Setting;
import org.griplore.ingest.recognise.TableArea;
import org.griplore.ingest.tables.RowKind;
import org.griplore.ingest.tables.TableReading;
import org.griplore.store.names.EntryName;
import org.griplore.store.tyre.TyreSize;
import org.griplore.store.vocabulary.Cell;
import org.griplore.store.vocabulary.Discipline;
import org.griplore.store.vocabulary.Entry;
import org.griplore.store.vocabulary.Finding;
import org.griplore.store.vocabulary.NameKey;
import org.griplore.store.vocabulary.Note;
import org.griplore.store.vocabulary.Result;
import org.griplore.store.vocabulary.TyreState;

/** Reads one table: a row a tyre, each cell by its column's role. */
final class TableReader {
  private static final String CORRECT = "correct it in the source and add it again";

  private final String sheet;
  private final TableArea area;
  private final List<RowKind> kinds;
  private final SourceContext context;
  private final FieldNames field;
  private final String testSize;
  private final TableColumns columns;
  private final List<ColumnRole> roles;
  private final List<Note> notes = new ArrayList<>();
  private final Map<String, Integer> rowOfModel = new HashMap<>();

  /**
   * A reader of one table.
   *
   * @param testSize the test's size; null when it states none
   * @param field the names of the test, as far as earlier tables tell them
   */
  TableReader(
      String sheet,
      TableReading reading,
      DetailLines lines,
      SourceContext context,
      String testSize,
      FieldNames field) {
    this.field = field;
    this.sheet = sheet;
    this.area = reading.area();
    this.kinds = reading.kinds();
    this.context = context;
    this.testSize = testSize;
    this.columns = new TableColumns(reading, lines, context);
    this.roles = columns.roles();
    columns.findings().forEach(this::tell);
    for (int column = 0; column < roles.size(); column++) {
      context.receiver().column(understood(column));
    }
  }

  private UnderstoodColumn understood(int column) {
    TableArea.Head head = area.heads().get(column);
    FigureColumn figures = columns.figures(column);
    List<String> samples =
        area.rows().stream()
            .map(row -> row.get(column))
            .filter(Objects::nonNull)
            .map(GridCell::text)
            .limit(3)
            .toList();
    String unitText = head.unitText() == null ? "" : " " + head.unitText();
    return new UnderstoodColumn(
        column + 1,
        (head.text() + unitText).strip(),
        head.cell() == null ? null : cell(head.cell(), head.cell().text()),
        roles.get(column).words(),
        figures == null ? "" : figures.unitWords(),
        columns.isSaid(column)
            ? "as was said"
            : roles.get(column) instanceof ColumnRole.Unknown ? "" : "by its header",
        samples);
  }

  List<Entry> entries() {
    Map<String, Integer> rowOf = new HashMap<>();
    List<Entry> entries = new ArrayList<>();
    field.add(tyres());
    for (int row = 0; row < area.rows().size(); row++) {
      List<GridCell> cells = area.rows().get(row);
      Named named = named(cells);
      switch (kinds.get(row)) {
        case TYRE -> {
          if (named == null) {
            cells.stream().filter(Objects::nonNull).forEach(this::loose);
          } else {
            entry(named, row, rowOf, entries);
          }
        }
        case SUMMARY -> left(cells, "a summary of the table and no tyre: the row was left out");
        case REFERENCE -> left(cells, "the reference set, which is no entry of the test");
        case WEIGHT -> left(cells, "weights of the columns and no tyre: the row was left out");
        case LIMIT -> left(cells, "a limit or target and no tyre: the row was left out");
        case NO_TYRE -> left(cells, "a tyre's name; the row was left out");
        case UNIT, HEADER -> {
          // told with the columns
        }
        case SUBHEAD, NOTE, NAMELESS ->
            cells.stream().filter(Objects::nonNull).distinct().forEach(this::loose);
      }
    }
    return entries;
  }

  /** The names in the rows of tyres. */
  private List<String> tyres() {
    List<String> tyres = new ArrayList<>();
    for (int row = 0; row < area.rows().size(); row++) {
      Named named = kinds.get(row) == RowKind.TYRE ? named(area.rows().get(row)) : null;
      if (named != null) {
        tyres.add(tyre(named));
      }
    }
    return tyres;
  }

  /** A row that is no tyre's, told by its first cell. */
  private void left(List<GridCell> cells, String what) {
    cells.stream()
        .filter(Objects::nonNull)
        .findFirst()
        .ifPresent(
            first ->
                tell(
                    Finding.Kind.ASSUMED,
                    first,
                    first.text(),
                    what,
                    "give the tyre its full name if it is one"));
  }

  private void entry(Named named, int row, Map<String, Integer> rowOf, List<Entry> entries) {
    Cell cell = cell(named.cell(), named.written());
    EntryName written = EntryName.of(named.written());
    SettledName name = SettledName.of(tyre(named), cell, field, context);
    String model = name.kept();
    String size = size(area.rows().get(row));
    if (size == null && written.size() != null && !written.size().equals(testSize)) {
      size = written.size();
    }
    TyreState state = written.state() == null ? stateBeside(row) : written.state();
    String sort = "\n" + size + state + written.variant();
    Integer earlier = rowOf.putIfAbsent(model + sort, named.cell().row());
    Integer other = rowOfModel.putIfAbsent(name.model() + sort, named.cell().row());
    if (earlier == null && other != null && !context.names().isDecided(model)) {
      tell(
          Finding.Kind.CONFLICT,
          named.cell(),
          named.written(),
          "each tyre once in a test; row "
              + other
              + " is "
              + name.model()
              + " too, written otherwise; both rows were taken",
          "say whether they are one: `griplore settle \"" + model + "\" --new` parts them");
    }
    // a further row of a tyre is another set of the day: the archive keeps both and tells it
    Map<TyreState, List<Result>> byState = results(row, model, state);
    String own = size;
    byState.forEach(
        (of, results) ->
            entries.add(new Entry(model, cell, own, of, written.variant(), results, List.of())));
  }

  /** The tyre's name without what is said of its state and variant beside it. */
  private String tyre(Named named) {
    return EntryName.of(named.written()).model(context.names()::isListed);
  }

  /** The state that a column beside the name tells; new where none does. */
  private TyreState stateBeside(int row) {
    for (int column = 0; column < roles.size(); column++) {
      GridCell cell = area.rows().get(row).get(column);
      if (cell != null && roles.get(column) instanceof ColumnRole.State) {
        return EntryName.state(cell.text()).orElse(TyreState.NEW);
      }
    }
    return TyreState.NEW;
  }

  /** The rows' remarks; complete after {@link #entries}. */
  List<Note> notes() {
    return notes;
  }

  /** A row without a tyre's name: nothing is lost. */
  private void loose(GridCell cell) {
    if (columns.read(cell) instanceof NumberReader.Reading.NotNumber) {
      notes.add(new Note(null, null, cell.text(), cell(cell, cell.text())));
    } else {
      tell(
          Finding.Kind.NOT_READ,
          cell,
          cell.text(),
          "a tyre's name in its row",
          "write the name in the column of tyres");
    }
  }

  private record Named(String written, GridCell cell) {}

  private Named named(List<GridCell> row) {
    GridCell main = null;
    String written = "";
    boolean whole = roles.stream().anyMatch(ColumnRole.Tyre.class::isInstance);
    for (int column = 0; column < roles.size(); column++) {
      ColumnRole role = roles.get(column);
      GridCell cell = row.get(column);
      boolean part =
          role instanceof ColumnRole.Tyre
              || !whole
                  && (role instanceof ColumnRole.Maker
                      || role instanceof ColumnRole.Line
                      || role instanceof ColumnRole.Model)
              || role instanceof ColumnRole.Generation;
      if (part && cell != null && !bare(cell.text()).isEmpty()) {
        written = joined(written, bare(cell.text()));
        boolean first = main == null || roles.get(column) instanceof ColumnRole.Model;
        main = role instanceof ColumnRole.Maker ? main : first ? cell : main;
      }
    }
    return main == null ? null : new Named(written, main);
  }

  /** Maker and model as one name, the maker only once. */
  private static String joined(String maker, String model) {
    if (maker.isEmpty()) {
      return model;
    }
    boolean there = (NameKey.of(model) + " ").startsWith(NameKey.of(maker) + " ");
    return there ? model : maker + " " + model;
  }

  /** A name without footnote marks and without a number that counts the rows. */
  private static String bare(String name) {
    return name.replaceAll("^\\s*(?:#\\s?)?\\d{1,2}[.)]\\s+(?=\\p{L})", "")
        .replaceAll(
            "\\s*(\\[\\d{1,2}\\]|[*\u2020\u2021\u00b9\u00b2\u00b3\u2070-\u207e]+\\)?)\\s*$", "")
        .strip();
  }

  /** The row's own size where it differs from the test's. */
  private String size(List<GridCell> row) {
    for (int column = 0; column < roles.size(); column++) {
      GridCell cell = row.get(column);
      if (roles.get(column) instanceof ColumnRole.Size && cell != null) {
        String size = TyreSize.find(cell.text()).map(TyreSize::toString).orElse(null);
        if (size == null && !(columns.read(cell) instanceof NumberReader.Reading.Missing)) {
          tell(Finding.Kind.NOT_READ, cell, cell.text(), "a size like 205/55 R16 91V", CORRECT);
        }
        return Objects.equals(size, testSize) ? null : size;
      }
    }
    return null;
  }

  /** What a figure is a figure of. */
  private record Of(Discipline discipline, Setting setting) {}

  /** The results by the state in which the tyre gave them. */
  private Map<TyreState, List<Result>> results(int row, String model, TyreState otherwise) {
    Map<Of, EntryFigures> figures = new LinkedHashMap<>();
    for (int column = 0; column < roles.size(); column++) {
      GridCell cell = area.rows().get(row).get(column);
      if (cell != null) {
        take(figures, row, column, cell, model);
      }
    }
    Map<TyreState, List<Result>> byState = new LinkedHashMap<>();
    figures.forEach(
        (of, figure) -> {
          TyreState state = of.setting().state() == null ? otherwise : of.setting().state();
          figure
              .result(of.discipline(), of.setting().circumstance())
              .ifPresent(
                  result -> byState.computeIfAbsent(state, s -> new ArrayList<>()).add(result));
        });
    if (byState.isEmpty()) {
      byState.put(otherwise, List.of());
    }
    return byState;
  }

  private void take(
      Map<Of, EntryFigures> figures, int row, int column, GridCell cell, String model) {
    ColumnRole role = roles.get(column);
    if (role instanceof ColumnRole.Remark) {
      if (!(columns.read(cell) instanceof NumberReader.Reading.Missing)) {
        notes.add(new Note(model, null, cell.text(), cell(cell, cell.text())));
      }
    } else if (role instanceof ColumnRole.Value value) {
      FigureColumn read = columns.figures(column);
      ReadFigure figure = read.at(row);
      EntryFigures of = figure == null ? null : of(figures, value.discipline(), value.setting());
      if (figure != null && read.holdsPlaces()) {
        of.place((int) figure.value(), cell(cell, cell.text()));
      } else if (figure != null) {
        of.value(figure, cell(cell, cell.text()));
        beside(of, read, row, cell);
      }
    } else if (role instanceof ColumnRole.Run run) {
      ReadFigure figure = columns.figures(column).at(row);
      if (figure != null && figure.unit() != null) {
        of(figures, run.discipline(), run.setting()).run(figure, cell(cell, cell.text()));
      }
    } else if (role instanceof ColumnRole.Place place) {
      place(of(figures, place.discipline(), place.setting()), cell);
    } else if (role instanceof ColumnRole.Runs runs) {
      runs(of(figures, runs.discipline(), runs.setting()), cell);
    } else if (role instanceof ColumnRole.Spread spread) {
      spread(of(figures, spread.discipline(), spread.setting()), cell);
    }
  }

  /** A place or a scatter that stands in the figure's own cell. */
  private void beside(EntryFigures figures, FigureColumn column, int row, GridCell cell) {
    if (column.placeBeside(row) != null) {
      figures.place(column.placeBeside(row), cell(cell, cell.text()));
    }
    String scatter = column.spreadBeside(row);
    if (scatter != null
        && columns.read(GridCell.of(cell.row(), cell.column(), scatter))
            instanceof NumberReader.Reading.Number number) {
      figures.spread(number.value(), cell(cell, cell.text()));
    }
  }

  private void runs(EntryFigures figures, GridCell cell) {
    NumberReader.Reading read = columns.read(cell);
    if (read instanceof NumberReader.Reading.Number number
        && number.value() >= 1
        && number.value() == Math.rint(number.value())) {
      figures.runs((int) number.value(), cell(cell, cell.text()));
    } else if (!(read instanceof NumberReader.Reading.Missing)) {
      tell(Finding.Kind.NOT_READ, cell, cell.text(), "a number of runs, whole, from 1", CORRECT);
    }
  }

  private void spread(EntryFigures figures, GridCell cell) {
    NumberReader.Reading read = columns.read(cell);
    if (read instanceof NumberReader.Reading.Number number && number.value() >= 0) {
      figures.spread(number.value(), cell(cell, cell.text()));
    } else if (!(read instanceof NumberReader.Reading.Missing)) {
      tell(Finding.Kind.NOT_READ, cell, cell.text(), "a spread, a number from 0", CORRECT);
    }
  }

  private static EntryFigures of(
      Map<Of, EntryFigures> figures, Discipline discipline, Setting setting) {
    return figures.computeIfAbsent(new Of(discipline, setting), d -> new EntryFigures());
  }

  private void place(EntryFigures figures, GridCell cell) {
    OptionalInt place = PlaceText.of(cell.text());
    if (place.isPresent()) {
      figures.place(place.getAsInt(), cell(cell, cell.text()));
    } else if (!(columns.read(cell) instanceof NumberReader.Reading.Missing)) {
      tell(Finding.Kind.NOT_READ, cell, cell.text(), "a place from 1", CORRECT);
    }
  }

  private void tell(FoundThing found) {
    tell(found.kind(), found.cell(), found.found(), found.expected(), found.remedy());
  }

  private void tell(
      Finding.Kind kind, GridCell cell, String found, String expected, String remedy) {
    context
        .receiver()
        .finding(
            new Finding(
                kind, cell == null ? null : cell(cell, cell.text()), found, expected, remedy));
  }

  private Cell cell(GridCell cell, String found) {
    return new Cell(sheet, cell.row(), cell.column(), found);
  }
}
