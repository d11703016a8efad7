package org.griplore.ingest.forms;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.griplore.ingest.grid.Grid;
import org.griplore.ingest.grid.GridRows;
import org.griplore.ingest.grid.RowSource;
import org.griplore.ingest.recognise.DetailLines;
import org.griplore.ingest.recognise.NumberReader;
import org.griplore.store.names.EntryName;
import org.griplore.store.vocabulary.Cell;
import org.griplore.store.vocabulary.Discipline;
import org.griplore.store.vocabulary.Entry;
import org.griplore.store.vocabulary.Finding;
import org.griplore.store.vocabulary.Note;
import org.griplore.store.vocabulary.Result;
import org.griplore.store.vocabulary.ResultCells;
import org.griplore.store.vocabulary.TestReport;
import org.griplore.store.vocabulary.TyreState;
import org.griplore.store.vocabulary.Unit;
import org.griplore.store.vocabulary.UnitWords;
import org.griplore.store.vocabulary.Variant;

/**
 * Our long table, a row a result, read row by row however long it is: {@code test, date, source,
 * source_kind, title, size, season, vehicle, vehicle_mass_kg, venue, model, discipline, value,
 * unit, spread, runs, place, note}. Rows of one test that stand together are told together.
 */
public final class LongTableForm {
  /** So many rows of one test at most are kept before they are told. */
  private static final int ROWS_A_PIECE = 5000;

  private final RowSource records;
  private final LongRows rows;
  private final LongTests tests;
  private final SourceContext context;
  private final Map<String, Optional<Discipline>> disciplines = new HashMap<>();
  private final Map<String, Optional<Unit>> units = new HashMap<>();
  private final Map<String, Tyre> tyres = new HashMap<>();
  private final Map<String, String> meanings = new HashMap<>();
  private final Set<String> assumed = new HashSet<>();
  private final Set<String> assumedUnits = new HashSet<>();
  private Piece piece;

  private LongTableForm(
      RowSource records, String sheet, DetailLines beside, SourceContext context) {
    this.records = records;
    this.context = context;
    this.rows = new LongRows(records, sheet, context);
    this.tests = new LongTests(rows, sheet, beside, context);
  }

  /** Reads on from the header, on which the records stand. */
  public static void read(RowSource records, SourceContext context) throws IOException {
    new LongTableForm(records, "", DetailLines.NONE, context).read();
  }

  /**
   * Reads a list of results whose test is told beside it.
   *
   * @param beside the details that stand beside the list
   */
  static void read(Grid grid, DetailLines beside, SourceContext context) {
    try {
      GridRows rows = new GridRows(grid);
      rows.next();
      new LongTableForm(rows, grid.name(), beside, context).read();
    } catch (IOException e) {
      throw new IllegalStateException("a grid is in memory", e);
    }
  }

  private void read() throws IOException {
    int width = records.count();
    while (records.next()) {
      if (records.count() == 1 && records.field(0).isBlank()) {
        continue;
      }
      if (records.count() > width && !extraEmpty(width)) {
        rows.finding(
            Finding.Kind.NOT_READ,
            width,
            records.field(width),
            "a row of " + width + " fields; the others were left");
      }
      row();
    }
    flush();
    rows.tellRest();
  }

  private boolean extraEmpty(int width) {
    for (int i = width; i < records.count(); i++) {
      if (!records.field(i).isBlank()) {
        return false;
      }
    }
    return true;
  }

  private void row() {
    LongTests.Told test = tests.ofRow(piece == null ? null : piece.test);
    if (test == null) {
      return;
    }
    if (piece == null || piece.test != test || ++piece.rows >= ROWS_A_PIECE) {
      flush();
      piece = new Piece(test);
    }
    String written = rows.text("model").strip();
    if (!rows.text("note").isBlank() || !rows.text("remark").isBlank()) {
      note(written);
    }
    if (written.isEmpty()) {
      if (!rows.text("discipline").isBlank()) {
        rows.finding(Finding.Kind.NOT_READ, "model", "", "the name of a model");
      }
      return;
    }
    String size = tests.ownSize(test);
    EntryRow entry = piece.entry(tyre(written), size, rows.cell("model"));
    result().ifPresent(entry.results::add);
  }

  private String model(String written) {
    return tyre(written).model();
  }

  private Tyre tyre(String written) {
    Tyre known = tyres.get(written);
    if (known == null) {
      EntryName entry = EntryName.of(written);
      SettledName name =
          SettledName.of(entry.model(context.names()::isListed), rows.cell("model"), context);
      TyreState state = entry.state() == null ? TyreState.NEW : entry.state();
      known = new Tyre(name.kept(), state, entry.variant());
      tyres.put(written, known);
      meanings.put(known.model(), name.model());
      if (name.assumed()) {
        assumed.add(known.model());
      }
    }
    return known;
  }

  private void note(String written) {
    String topic = rows.text("note").isBlank() ? "remark" : "note";
    Discipline discipline = discipline(rows.text("discipline")).orElse(null);
    piece.notes.add(
        new Note(
            written.isEmpty() ? null : model(written),
            discipline == null || discipline.key().equals("overall") ? null : discipline.key(),
            rows.text(topic).strip(),
            rows.cell(topic)));
  }

  private Optional<Result> result() {
    String word = rows.text("discipline");
    Optional<Discipline> discipline = discipline(word);
    if (discipline.isEmpty()) {
      if (!word.isBlank()) {
        rows.finding(
            Finding.Kind.NOT_READ,
            "discipline",
            word,
            "a discipline of the catalogue, like wet-braking, or overall");
      }
      return Optional.empty();
    }
    ValueReader.Read value = value(discipline.get());
    Integer place = rows.whole("place");
    if (value == null && place == null) {
      return Optional.empty();
    }
    Double spread = value == null ? null : spread(value, discipline.get());
    Integer runs = rows.whole("runs");
    return Optional.of(
        new Result(
            discipline.get().key(),
            value == null ? null : (Double) value.value(),
            value == null ? null : value.unit(),
            spread,
            runs,
            place,
            new ResultCells(
                value == null ? null : rows.cell("value"),
                spread == null ? null : rows.cell("spread"),
                runs == null ? null : rows.cell("runs"),
                place == null ? null : rows.cell("place")),
            value == null ? "" : value.rule(),
            value == null ? List.of() : value.steps()));
  }

  private Optional<Discipline> discipline(String word) {
    return disciplines.computeIfAbsent(
        word,
        text -> {
          return context
              .catalogue()
              .find(text.strip())
              .or(() -> context.catalogue().byHeader(text).map(match -> match.discipline()));
        });
  }

  private ValueReader.Read value(Discipline discipline) {
    String text = rows.text("value");
    if (text.isEmpty()) {
      return null;
    }
    NumberReader.Reading read = LongRows.number(text);
    if (!(read instanceof NumberReader.Reading.Number number)) {
      if (!(read instanceof NumberReader.Reading.Missing)) {
        rows.finding(Finding.Kind.NOT_READ, "value", text, "a number");
      }
      return null;
    }
    boolean stated = !rows.text("unit").isBlank();
    Unit unit = stated ? stated(discipline) : given(discipline);
    if (unit == null) {
      return null;
    }
    ValueReader.Read value =
        ValueReader.read(number, discipline, unit, !stated && !isGiven(discipline));
    if (value.problem() != null) {
      rows.finding(
          Finding.Kind.CONFLICT,
          "value",
          (text + " " + rows.text("unit")).strip(),
          value.problem());
      return null;
    }
    if (!number.aside().isEmpty()) {
      String left = "a figure alone; what stands behind it was left out";
      rows.finding(Finding.Kind.ASSUMED, "value", text, left);
    }
    if (value.remark() != null) {
      rows.finding(Finding.Kind.ASSUMED, "value", text, value.remark());
    }
    return value;
  }

  private Unit stated(Discipline discipline) {
    String text = rows.text("unit");
    Optional<Unit> unit =
        units.computeIfAbsent(text, t -> UnitWords.ofText(t).map(UnitWords.Recognised::unit));
    if (unit.isEmpty()) {
      rows.finding(
          Finding.Kind.NOT_READ, "unit", text, "a unit, like " + discipline.unit().symbol());
    }
    return unit.orElse(null);
  }

  private boolean isGiven(Discipline discipline) {
    return context.given().containsKey("unit " + discipline.key());
  }

  /** The unit that the user gave for a discipline, else its canonical one; told once. */
  private Unit given(Discipline discipline) {
    if (isGiven(discipline)) {
      return UnitWords.ofText(context.given().get("unit " + discipline.key()))
          .map(UnitWords.Recognised::unit)
          .orElse(discipline.unit());
    }
    if (assumedUnits.add(discipline.key())) {
      rows.finding(
          Finding.Kind.ASSUMED,
          rows.column("value"),
          rows.text("value"),
          "no unit is stated; taken as "
              + discipline.unit().symbol()
              + ", here and in further rows of "
              + discipline.key(),
          "if that is wrong, fill the column `unit`, or write `unit "
              + discipline.key()
              + ": ...` into FILE.details beside it");
    }
    return discipline.unit();
  }

  private Double spread(ValueReader.Read value, Discipline discipline) {
    String text = rows.text("spread");
    if (text.isBlank()) {
      return null;
    }
    NumberReader.Reading read = LongRows.number(text);
    if (!(read instanceof NumberReader.Reading.Number number) || number.value() < 0) {
      if (!(read instanceof NumberReader.Reading.Missing)) {
        rows.finding(Finding.Kind.NOT_READ, "spread", text, "a spread, a number from 0");
      }
      return null;
    }
    Unit stated =
        rows.text("unit").isBlank()
            ? given(discipline)
            : units.get(rows.text("unit")).orElse(discipline.unit());
    return stated == value.unit()
        ? (Double) number.value()
        : (Double) stated.convert(number.value(), value.unit());
  }

  private void flush() {
    if (piece != null) {
      if (!assumed.isEmpty()) {
        part(piece);
      }
      context.receiver().report(piece.report());
      piece = null;
    }
  }

  /** Says which names cannot be misspellings, for another name of the model stands beside them. */
  private void part(Piece piece) {
    Map<String, EntryRow> byName = new LinkedHashMap<>();
    piece.entries.values().forEach(entry -> byName.putIfAbsent(entry.model(), entry));
    byName.forEach(
        (name, entry) -> {
          String model = meanings.get(name);
          byName.keySet().stream()
              .filter(other -> !other.equals(name) && meanings.get(other).equals(model))
              .filter(other -> assumed.remove(name))
              .forEach(
                  other ->
                      context
                          .receiver()
                          .finding(
                              SettledName.parted(
                                  name, other, model, piece.test.key, entry.name())));
        });
  }

  /** What a written name tells of a tyre: two that differ in it are two entries. */
  private record Tyre(String model, TyreState state, Variant variant) {}

  /** What makes rows of one test one entry. */
  private record Subject(Tyre tyre, String size) {}

  /** An entry's rows that stand together. */
  private record EntryRow(Tyre tyre, String size, Cell name, List<Result> results) {
    String model() {
      return tyre.model();
    }
  }

  /** The rows of one test that stand together. */
  private static final class Piece {
    final LongTests.Told test;
    int rows;
    final Map<Subject, EntryRow> entries = new LinkedHashMap<>();
    final List<Note> notes = new ArrayList<>();

    Piece(LongTests.Told test) {
      this.test = test;
    }

    EntryRow entry(Tyre tyre, String size, Cell name) {
      return entries.computeIfAbsent(
          new Subject(tyre, size), k -> new EntryRow(tyre, size, name, new ArrayList<>()));
    }

    TestReport report() {
      List<Entry> told = new ArrayList<>();
      entries
          .values()
          .forEach(
              e ->
                  told.add(
                      new Entry(
                          e.model(),
                          e.name(),
                          e.size(),
                          e.tyre().state(),
                          e.tyre().variant(),
                          e.results(),
                          List.of())));
      return new TestReport(test.key, test.takeDetails(), told, notes, List.of());
    }
  }
}
