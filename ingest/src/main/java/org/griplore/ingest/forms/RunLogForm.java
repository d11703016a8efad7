package org.griplore.ingest.forms;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.griplore.ingest.grid.Grid;
import org.griplore.ingest.grid.GridCell;
import org.griplore.ingest.names.FieldNames;
import org.griplore.ingest.recognise.CellNumber;
import org.griplore.ingest.recognise.DecimalMark;
import org.griplore.ingest.recognise.DetailLines;
import org.griplore.ingest.recognise.DetailsReader;
import org.griplore.ingest.recognise.NumberReader;
import org.griplore.store.vocabulary.Cell;
import org.griplore.store.vocabulary.Details;
import org.griplore.store.vocabulary.Discipline;
import org.griplore.store.vocabulary.Entry;
import org.griplore.store.vocabulary.Finding;
import org.griplore.store.vocabulary.HeaderKey;
import org.griplore.store.vocabulary.LoggedRun;
import org.griplore.store.vocabulary.Note;
import org.griplore.store.vocabulary.Reduction;
import org.griplore.store.vocabulary.Result;
import org.griplore.store.vocabulary.TestReport;
import org.griplore.store.vocabulary.Unit;
import org.griplore.store.vocabulary.UnitWords;

/**
 * Our run log, a row a run: {@code test, discipline, sequence, tyre, role, run, from_kmh, to_kmh,
 * distance_m, time_s, level_db, value, unit, surface_c, air_c, remark}. The runs are kept, and each
 * candidate's runs are reduced to a result. The reference set is no entry of the test.
 */
public final class RunLogForm {
  private final Grid grid;
  private final SourceContext context;
  private final Map<String, Integer> columns = new HashMap<>();
  private final NumberReader numbers;
  private final Map<String, String> candidates = new HashMap<>();
  private final FieldNames field;

  /** Runs and remarks of one test. */
  private static final class Log {
    final Map<Discipline, List<LoggedRun>> runs = new LinkedHashMap<>();
    final List<Note> notes = new ArrayList<>();
  }

  private RunLogForm(Grid grid, SourceContext context) {
    this.grid = grid;
    this.context = context;
    this.field = new FieldNames(context.names());
    List<GridCell> header = grid.rows().get(0);
    OwnForm.columns(header.stream().map(GridCell::text).toList())
        .forEach((topic, position) -> columns.put(topic, header.get(position).column()));
    OwnForm.understand(grid, OwnForm.RUN_LOG.words(), context);
    this.numbers =
        new NumberReader(
            DecimalMark.of(grid.rows().stream().skip(1).flatMap(List::stream).map(GridCell::text)));
  }

  /** Reads the log whose header is the grid's first row. */
  public static void read(Grid grid, SourceContext context) {
    new RunLogForm(grid, context).read();
  }

  private void read() {
    Map<String, Log> tests = new LinkedHashMap<>();
    field.add(written());
    for (List<GridCell> row : grid.rows().subList(1, grid.rows().size())) {
      GridCell key = cell(row, "test");
      String test = key == null ? context.given().get("test") : key.text().strip();
      if (test == null) {
        notRead(row.get(0), "the key of a test in its row");
        continue;
      }
      run(row).ifPresent(run -> add(tests.computeIfAbsent(test, t -> new Log()), run));
    }
    tests.forEach(this::tell);
  }

  /** The names of all candidates; a log tells of one test as a rule. */
  private List<String> written() {
    List<String> written = new ArrayList<>();
    for (List<GridCell> row : grid.rows().subList(1, grid.rows().size())) {
      GridCell tyre = tyre(row);
      GridCell role = cell(row, "role");
      if (tyre != null && role != null && roleOf(role.text()) == LoggedRun.Role.CANDIDATE) {
        written.add(tyre.text().strip());
      }
    }
    return written;
  }

  private GridCell tyre(List<GridCell> row) {
    return cell(row, columns.containsKey("tyre") ? "tyre" : "model");
  }

  private void add(Log log, LoggedRun run) {
    Discipline discipline = context.catalogue().get(run.discipline());
    log.runs.computeIfAbsent(discipline, d -> new ArrayList<>()).add(run);
    if (run.remark() != null) {
      boolean reference = run.role() == LoggedRun.Role.REFERENCE;
      log.notes.add(
          new Note(reference ? null : run.model(), run.discipline(), run.remark(), run.cell()));
    }
  }

  private void tell(String test, Log log) {
    Details details =
        DetailsReader.read(
            DetailLines.NONE, context.given(), grid.name(), context.receiver()::finding);
    Map<String, List<Result>> results = new LinkedHashMap<>();
    Map<String, Cell> names = new HashMap<>();
    List<LoggedRun> all = new ArrayList<>();
    List<Reduction> reductions = new ArrayList<>();
    log.runs.forEach(
        (discipline, runs) -> {
          all.addAll(runs);
          LogReduction.Outcome outcome = new LogReduction(discipline, runs, context).outcome();
          if (outcome.account() != null) {
            reductions.add(outcome.account());
          }
          outcome
              .results()
              .forEach(
                  (model, result) -> {
                    results.computeIfAbsent(model, m -> new ArrayList<>()).add(result);
                    names.putIfAbsent(model, result.cells().value());
                  });
        });
    List<Entry> entries = new ArrayList<>();
    results.forEach(
        (model, figures) -> entries.add(new Entry(model, names.get(model), null, figures)));
    context.receiver().report(new TestReport(test, details, entries, log.notes, all, reductions));
  }

  /** All runs of one model in a log go by the name that stands there first. */
  private String candidate(SettledName name) {
    return candidates.computeIfAbsent(name.model(), model -> name.kept());
  }

  private Optional<LoggedRun> run(List<GridCell> row) {
    GridCell tyre = tyre(row);
    GridCell word = cell(row, "discipline");
    Integer sequence = whole(row, "sequence");
    LoggedRun.Role role = role(row);
    if (tyre == null || word == null || sequence == null || role == null) {
      notRead(row.get(0), "discipline, sequence, tyre and role in each row");
      return Optional.empty();
    }
    Discipline discipline =
        context
            .catalogue()
            .find(word.text().strip())
            .or(() -> context.catalogue().byHeader(word.text()).map(match -> match.discipline()))
            .orElse(null);
    if (discipline == null) {
      notRead(word, "a discipline of the catalogue, like wet-braking");
      return Optional.empty();
    }
    if (isImpossible(row)) {
      return Optional.empty();
    }
    String written = tyre.text().strip();
    Cell at = new Cell(grid.name(), tyre.row(), tyre.column(), tyre.text());
    String model =
        role == LoggedRun.Role.REFERENCE
            ? context.names().known(written).orElse(written)
            : candidate(SettledName.of(written, at, field, context));
    GridCell unit = cell(row, "unit");
    GridCell remark = cell(row, "remark");
    return Optional.of(
        new LoggedRun(
            discipline.key(),
            sequence,
            model,
            role,
            whole(row, "run"),
            number(row, "from_kmh"),
            number(row, "to_kmh"),
            number(row, "distance_m"),
            number(row, "time_s"),
            number(row, "level_db"),
            number(row, "value"),
            unit == null ? null : unit(unit),
            number(row, "surface_c"),
            number(row, "air_c"),
            remark == null ? null : remark.text(),
            at));
  }

  /** Distances and times are above 0, speeds 0 or more. */
  private boolean isImpossible(List<GridCell> row) {
    for (String topic : List.of("distance_m", "time_s", "from_kmh", "to_kmh")) {
      boolean zeroMay = topic.endsWith("kmh");
      GridCell cell = cell(row, topic);
      if (cell != null
          && CellNumber.read(cell, numbers) instanceof NumberReader.Reading.Number number
          && (number.value() < 0 || number.value() == 0 && !zeroMay)) {
        notRead(
            cell,
            zeroMay
                ? "a number that is not negative; the run was not taken"
                : "a number above 0; the run was not taken");
        return true;
      }
    }
    return false;
  }

  private Unit unit(GridCell cell) {
    Optional<Unit> unit = UnitWords.ofText(cell.text()).map(UnitWords.Recognised::unit);
    if (unit.isEmpty()) {
      notRead(cell, "a unit, like m/s2");
    }
    return unit.orElse(null);
  }

  private LoggedRun.Role role(List<GridCell> row) {
    GridCell cell = cell(row, "role");
    LoggedRun.Role role = cell == null ? null : roleOf(cell.text());
    if (cell != null && role == null) {
      notRead(cell, "reference or candidate");
    }
    return role;
  }

  private static LoggedRun.Role roleOf(String text) {
    return switch (HeaderKey.of(text)) {
      case "reference", "control", "ref", "r", "referenz", "kontrolle", "referens", "srtt" ->
          LoggedRun.Role.REFERENCE;
      case "candidate", "test", "t", "c", "kandidat", "candidat", "prufling" ->
          LoggedRun.Role.CANDIDATE;
      default -> null;
    };
  }

  private Double number(List<GridCell> row, String topic) {
    GridCell cell = cell(row, topic);
    if (cell == null) {
      return null;
    }
    NumberReader.Reading read = CellNumber.read(cell, numbers);
    if (read instanceof NumberReader.Reading.Number number) {
      return number.value();
    }
    if (!(read instanceof NumberReader.Reading.Missing)) {
      notRead(
          cell,
          read instanceof NumberReader.Reading.NotFinished
              ? "a number; taken as broken off"
              : "a number");
    }
    return null;
  }

  private Integer whole(List<GridCell> row, String topic) {
    Double number = number(row, topic);
    return number == null || number != Math.rint(number) ? null : (Integer) number.intValue();
  }

  private GridCell cell(List<GridCell> row, String topic) {
    Integer column = columns.get(topic);
    return column == null
        ? null
        : row.stream().filter(cell -> cell.column() == column).findFirst().orElse(null);
  }

  private void notRead(GridCell cell, String expected) {
    context
        .receiver()
        .finding(
            new Finding(
                Finding.Kind.NOT_READ,
                new Cell(grid.name(), cell.row(), cell.column(), cell.text()),
                cell.text(),
                expected,
                "correct it in the source and add it again"));
  }
}
