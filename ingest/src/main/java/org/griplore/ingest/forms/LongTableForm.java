package org.griplore.ingest.forms;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.griplore.ingest.grid.Grid;
import org.griplore.ingest.grid.GridRows;
import org.griplore.ingest.grid.RowSource;
import org.griplore.ingest.recognise.DateReader;
import org.griplore.ingest.recognise.DecimalMark;
import org.griplore.ingest.recognise.DetailLines;
import org.griplore.ingest.recognise.DetailsReader;
import org.griplore.ingest.recognise.NumberReader;
import org.griplore.store.tyre.TyreSize;
import org.griplore.store.vocabulary.Cell;
import org.griplore.store.vocabulary.Details;
import org.griplore.store.vocabulary.Discipline;
import org.griplore.store.vocabulary.Entry;
import org.griplore.store.vocabulary.Finding;
import org.griplore.store.vocabulary.Note;
import org.griplore.store.vocabulary.Result;
import org.griplore.store.vocabulary.ResultCells;
import org.griplore.store.vocabulary.SeasonClass;
import org.griplore.store.vocabulary.SourceKind;
import org.griplore.store.vocabulary.TestDate;
import org.griplore.store.vocabulary.TestReport;
import org.griplore.store.vocabulary.Unit;
import org.griplore.store.vocabulary.UnitWords;

/**
 * Our long table, a row a result, read row by row however long it is: {@code test, date, source,
 * source_kind, title, size, season, vehicle, vehicle_mass_kg, venue, model, discipline, value,
 * unit, spread, runs, place, note}. Rows of one test that stand together are told together.
 */
public final class LongTableForm {
  /** Findings of one sort beyond this many are counted only. */
  private static final int LISTED = 1000;

  private static final NumberReader NUMBERS = new NumberReader(DecimalMark.OPEN);

  private final RowSource records;
  private final String sheet;
  private final DetailLines beside;
  private final SourceContext context;
  private final Map<String, Integer> columns;
  private final Map<String, Optional<Discipline>> disciplines = new HashMap<>();
  private final Map<String, Optional<Unit>> units = new HashMap<>();
  private final Map<String, String> models = new HashMap<>();
  private final Map<String, Integer> findingsByWords = new HashMap<>();
  private Piece piece;

  private LongTableForm(
      RowSource records, String sheet, DetailLines beside, SourceContext context) {
    this.records = records;
    this.sheet = sheet;
    this.beside = beside;
    this.context = context;
    List<String> header = new ArrayList<>();
    for (int i = 0; i < records.count(); i++) {
      header.add(records.field(i));
    }
    this.columns = OwnForm.columns(header);
    for (int i = 0; i < header.size(); i++) {
      if (!header.get(i).isBlank() && !columns.containsValue(i)) {
        finding(Finding.Kind.NOT_READ, i, header.get(i), "a column of the long table");
      }
    }
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
        finding(
            Finding.Kind.NOT_READ,
            width,
            records.field(width),
            "a row of " + width + " fields; the others were left");
      }
      row();
    }
    flush();
    findingsByWords.forEach(
        (words, count) -> {
          if (count > LISTED) {
            context
                .receiver()
                .finding(
                    new Finding(
                        Finding.Kind.NOT_READ,
                        null,
                        (count - LISTED) + " more like it",
                        words,
                        "correct them in the source and add it again"));
          }
        });
  }

  private boolean extraEmpty(int width) {
    for (int i = width; i < records.count(); i++) {
      if (!records.field(i).isBlank()) {
        return false;
      }
    }
    return true;
  }

  private String text(String topic) {
    Integer column = columns.get(topic);
    return column == null ? "" : records.field(column);
  }

  private Cell cell(String topic) {
    Integer column = columns.get(topic);
    return column == null || records.field(column).isEmpty()
        ? null
        : new Cell(sheet, records.rowOf(column), records.columnOf(column), records.field(column));
  }

  private void row() {
    String key = text("test").strip();
    if (key.isEmpty() && !columns.containsKey("test")) {
      key = keyBeside();
    }
    if (key.isEmpty()) {
      finding(Finding.Kind.NOT_READ, columns.get("test"), "", "the key of a test");
      return;
    }
    if (piece == null || !piece.key.equals(key)) {
      flush();
      piece = new Piece(key, details());
    }
    String written = text("model").strip();
    if (!text("note").isBlank() || !text("remark").isBlank()) {
      note(written);
    }
    if (written.isEmpty()) {
      if (!text("discipline").isBlank()) {
        finding(Finding.Kind.NOT_READ, columns.get("model"), "", "the name of a model");
      }
      return;
    }
    String model = model(written);
    String ownSize = sizeBeside(piece.details);
    EntryRow entry = piece.entry(model, ownSize, cell("model"));
    result().ifPresent(entry.results::add);
  }

  /** The key of the one test that a list tells of. */
  private String keyBeside() {
    if (piece != null) {
      return piece.key;
    }
    Details told = DetailsReader.read(beside, context.given(), sheet, finding -> {});
    return TestKey.of(beside, context.given(), told, context.file());
  }

  private String model(String written) {
    String known = models.get(written);
    if (known == null) {
      known = SettledName.of(written, cell("model"), context);
      models.put(written, known);
    }
    return known;
  }

  private void note(String written) {
    String topic = text("note").isBlank() ? "remark" : "note";
    Discipline discipline = discipline(text("discipline")).orElse(null);
    piece.notes.add(
        new Note(
            written.isEmpty() ? null : model(written),
            discipline == null || discipline.key().equals("overall") ? null : discipline.key(),
            text(topic).strip(),
            cell(topic)));
  }

  private String sizeBeside(Details details) {
    String size = text("size");
    if (size.isBlank() || size.equals(piece.sizeText)) {
      return null;
    }
    String read = TyreSize.find(size).map(TyreSize::toString).orElse(null);
    return read == null || read.equals(details.size()) ? null : read;
  }

  private Optional<Result> result() {
    String word = text("discipline");
    Optional<Discipline> discipline = discipline(word);
    if (discipline.isEmpty()) {
      if (!word.isBlank()) {
        finding(
            Finding.Kind.NOT_READ,
            columns.get("discipline"),
            word,
            "a discipline of the catalogue, like wet-braking, or overall");
      }
      return Optional.empty();
    }
    ValueReader.Read value = value(discipline.get());
    Integer place = whole("place");
    if (value == null && place == null) {
      return Optional.empty();
    }
    return Optional.of(
        new Result(
            discipline.get().key(),
            value == null ? null : (Double) value.value(),
            value == null ? null : value.unit(),
            value == null ? null : spread(value, discipline.get()),
            whole("runs"),
            place,
            new ResultCells(
                value == null ? null : cell("value"),
                value == null ? null : cell("spread"),
                cell("runs"),
                place == null ? null : cell("place")),
            value == null ? "" : value.rule()));
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
    String text = text("value");
    if (text.isEmpty()) {
      return null;
    }
    NumberReader.Reading read = number(text);
    if (!(read instanceof NumberReader.Reading.Number number)) {
      if (!(read instanceof NumberReader.Reading.Missing)) {
        finding(Finding.Kind.NOT_READ, columns.get("value"), text, "a number");
      }
      return null;
    }
    String unitText = text("unit");
    boolean assumed = unitText.isBlank();
    Unit unit = discipline.unit();
    if (!assumed) {
      Optional<Unit> stated =
          units.computeIfAbsent(unitText, t -> UnitWords.ofText(t).map(UnitWords.Recognised::unit));
      if (stated.isEmpty()) {
        finding(
            Finding.Kind.NOT_READ, columns.get("unit"), unitText, "a unit, like " + unit.symbol());
        return null;
      }
      unit = stated.get();
    }
    ValueReader.Read value = ValueReader.read(number, discipline, unit, assumed);
    if (value.problem() != null) {
      finding(Finding.Kind.CONFLICT, columns.get("value"), text + " " + unitText, value.problem());
      return null;
    }
    return value;
  }

  /** Plain numbers are the most; everything else goes the long way. */
  private static NumberReader.Reading number(String text) {
    boolean plain = text.length() <= 17;
    boolean point = false;
    int digitsBehind = 0;
    for (int i = 0; i < text.length() && plain; i++) {
      char c = text.charAt(i);
      if (c == '.' && !point && i > 0) {
        point = true;
      } else if (c < '0' || c > '9') {
        plain = false;
      } else if (point) {
        digitsBehind++;
      }
    }
    boolean clear = plain && !text.isEmpty() && (!point || digitsBehind != 3);
    return clear
        ? new NumberReader.Reading.Number(Double.parseDouble(text), Optional.empty(), "", false)
        : machine(text);
  }

  /** In our own form a point is always the decimal mark; other marks are read as people write. */
  private static NumberReader.Reading machine(String text) {
    if (text.strip().matches("[-+]?\\d+\\.\\d+([eE][-+]?\\d+)?")) {
      return new NumberReader.Reading.Number(
          Double.parseDouble(text.strip()), Optional.empty(), "", false);
    }
    return NUMBERS.read(text);
  }

  private Double spread(ValueReader.Read value, Discipline discipline) {
    String text = text("spread");
    if (text.isBlank() || !(number(text) instanceof NumberReader.Reading.Number number)) {
      return null;
    }
    String unitText = text("unit");
    Unit stated =
        unitText.isBlank()
            ? discipline.unit()
            : units
                .getOrDefault(unitText, Optional.of(discipline.unit()))
                .orElse(discipline.unit());
    return stated == value.unit()
        ? (Double) number.value()
        : (Double) stated.convert(number.value(), value.unit());
  }

  private Integer whole(String topic) {
    String text = text(topic).strip();
    if (text.isEmpty()) {
      return null;
    }
    int number = plainWhole(text);
    if (number > 0) {
      return number;
    }
    if (!(NUMBERS.read(text) instanceof NumberReader.Reading.Missing)) {
      finding(Finding.Kind.NOT_READ, columns.get(topic), text, "a whole number from 1");
    }
    return null;
  }

  /** The number that up to six digits make; 0 when the text is anything else. */
  private static int plainWhole(String text) {
    int number = 0;
    for (int i = 0; i < text.length(); i++) {
      int digit = text.charAt(i) - '0';
      if (digit < 0 || digit > 9 || i == 6) {
        return 0;
      }
      number = 10 * number + digit;
    }
    return number;
  }

  private Details details() {
    if (!beside.equals(DetailLines.NONE)) {
      return DetailsReader.read(beside, context.given(), sheet, context.receiver()::finding);
    }
    Map<String, Cell> cells = new LinkedHashMap<>();
    String date = filled("date");
    TestDate on = null;
    if (date != null) {
      on = DateReader.read(date).map(DateReader.Reading::date).orElse(null);
      if (on == null) {
        finding(
            Finding.Kind.NOT_READ,
            columns.get("date"),
            date,
            "a date that exists, like 2021-05-04");
      }
    }
    String size = filled("size");
    Optional<TyreSize> of = size == null ? Optional.empty() : TyreSize.find(size);
    if (size != null && of.isEmpty()) {
      finding(Finding.Kind.NOT_READ, columns.get("size"), size, "a size like 205/55 R16 91V");
    }
    String mass = filled("vehicle_mass_kg");
    for (String topic :
        List.of(
            "date",
            "source",
            "source_kind",
            "title",
            "size",
            "season",
            "vehicle",
            "vehicle_mass_kg",
            "venue",
            "surface_c",
            "air_c")) {
      Cell cell = cell(topic);
      if (cell != null) {
        cells.put(topic, cell);
      }
    }
    SeasonClass season = filled("season") == null ? null : DetailsReader.seasonOf(filled("season"));
    SourceKind kind =
        filled("source_kind") == null ? null : DetailsReader.kindOf(filled("source_kind"));
    return new Details(
        filled("title"),
        on,
        kind,
        filled("source"),
        of.map(TyreSize::toString).orElse(null),
        season,
        filled("vehicle"),
        mass == null ? null : plainNumber("vehicle_mass_kg", mass),
        filled("venue"),
        filled("surface_c") == null ? null : plainNumber("surface_c", filled("surface_c")),
        filled("air_c") == null ? null : plainNumber("air_c", filled("air_c")),
        cells);
  }

  private Double plainNumber(String topic, String text) {
    if (NUMBERS.read(text) instanceof NumberReader.Reading.Number number) {
      return number.value();
    }
    finding(Finding.Kind.NOT_READ, columns.get(topic), text, "a number");
    return null;
  }

  /**
   * A detail's text, from the row or else from what was given beside it; null when there is none.
   */
  private String filled(String topic) {
    String text = text(topic).strip();
    return text.isEmpty() ? context.given().get(topic) : text;
  }

  private void flush() {
    if (piece != null) {
      context.receiver().report(piece.report());
      piece = null;
    }
  }

  private void finding(Finding.Kind kind, Integer column, String found, String expected) {
    if (findingsByWords.merge(expected, 1, Integer::sum) <= LISTED) {
      context
          .receiver()
          .finding(
              new Finding(
                  kind,
                  column == null
                      ? null
                      : new Cell(sheet, records.rowOf(column), records.columnOf(column), found),
                  found,
                  expected,
                  "correct it in the source and add it again"));
    }
  }

  /** An entry's rows that stand together. */
  private record EntryRow(String model, String size, Cell name, List<Result> results) {}

  /** The rows of one test that stand together. */
  private final class Piece {
    final String key;
    final Details details;
    final String sizeText;
    final Map<String, EntryRow> entries = new LinkedHashMap<>();
    final List<Note> notes = new ArrayList<>();

    Piece(String key, Details details) {
      this.key = key;
      this.details = details;
      this.sizeText = text("size");
    }

    EntryRow entry(String model, String size, Cell name) {
      return entries.computeIfAbsent(
          size == null ? model : model + "\n" + size,
          k -> new EntryRow(model, size, name, new ArrayList<>()));
    }

    TestReport report() {
      List<Entry> told = new ArrayList<>();
      entries
          .values()
          .forEach(e -> told.add(new Entry(e.model(), e.name(), e.size(), e.results())));
      return new TestReport(key, details, told, notes, List.of());
    }
  }
}
