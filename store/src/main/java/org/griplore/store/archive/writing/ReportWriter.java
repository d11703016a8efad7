package org.griplore.store.archive.writing;

import java.sql.Connection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.griplore.store.archive.database.Sql;
import org.griplore.store.vocabulary.Cell;
import org.griplore.store.vocabulary.Details;
import org.griplore.store.vocabulary.Entry;
import org.griplore.store.vocabulary.Finding;
import org.griplore.store.vocabulary.LoggedRun;
import org.griplore.store.vocabulary.Note;
import org.griplore.store.vocabulary.Price;
import org.griplore.store.vocabulary.ReportWeight;
import org.griplore.store.vocabulary.Result;
import org.griplore.store.vocabulary.Step;
import org.griplore.store.vocabulary.TestReport;
import org.griplore.store.vocabulary.TyreState;
import org.griplore.store.vocabulary.Variant;

/** Writes test reports, puts pieces of one test together and takes each figure once. */
public final class ReportWriter {
  private final RowWriters rows;
  private final ReductionWriter reductions;
  private final Map<String, Integer> tests = new HashMap<>();
  private final Map<String, Long> reports = new HashMap<>();
  private final Map<EntryKey, Told> entries = new HashMap<>();
  private final Set<WeightKey> weights = new HashSet<>();
  private long entryCount;
  private long resultCount;
  private long noteCount;
  private long repeated;
  private long sets;

  /** Repeated figures beyond this many are counted in one finding. */
  private static final int LISTED = 1000;

  private static final String ONCE =
      "one figure for a model and discipline in a test; the first was kept";

  private static final String ANOTHER_SET =
      "one figure for a model and discipline in a test; taken as another set of the day, which"
          + " questions average";

  private record EntryKey(long report, int name, String size, TyreState state, Variant variant) {}

  /** An entry's number and what it holds a figure of. */
  private record Told(long id, String sheet, Set<FigureKey> figures) {}

  private record FigureKey(int discipline, int circumstance, int repeat) {}

  private record WeightKey(long report, int discipline) {}

  public ReportWriter(Connection connection, RowWriters rows) {
    this.rows = rows;
    this.reductions = new ReductionWriter(rows);
    Sql.list(
            connection,
            "SELECT key, id FROM test",
            row -> Map.entry(row.getString(1), row.getInt(2)))
        .forEach(test -> tests.put(test.getKey(), test.getValue()));
  }

  public void put(TestReport report) {
    long id = report(report);
    report.weights().forEach(weight -> put(id, weight));
    report.entries().forEach(entry -> put(id, entry));
    report.notes().forEach(note -> put(id, note));
    Map<LoggedRun, Long> numbers = new HashMap<>();
    report.runs().forEach(run -> numbers.put(run, put(id, run)));
    report.reductions().forEach(reduction -> reductions.put(id, reduction, numbers));
  }

  private long report(TestReport report) {
    Long known = reports.get(report.key());
    if (known != null) {
      return known;
    }
    int test = tests.computeIfAbsent(report.key(), key -> (int) rows.tests.add(key));
    Details details = report.details();
    long id =
        rows.reports.add(
            test,
            rows.revision,
            details.title(),
            details.publication(),
            details.kind() == null ? null : details.kind().key(),
            details.date() == null ? null : details.date().text(),
            details.size(),
            details.season() == null ? null : details.season().key(),
            details.vehicle(),
            details.vehicleMassKg(),
            details.venue(),
            details.surfaceC(),
            details.airC());
    new TreeMap<>(details.cells()).forEach((detail, cell) -> rows.details.add(id, detail, cell));
    reports.put(report.key(), id);
    return id;
  }

  private void put(long report, Entry entry) {
    Told told =
        entries.computeIfAbsent(
            new EntryKey(
                report, rows.model(entry.model()), entry.size(), entry.state(), entry.variant()),
            key -> new Told(entry(key, entry.name()), sheetOf(entry.name()), new HashSet<>()));
    for (Result result : entry.results()) {
      put(told, entry, result);
    }
    entry.prices().forEach(price -> put(told.id(), price));
  }

  private long entry(EntryKey key, Cell name) {
    entryCount++;
    return rows.entries.add(
        key.report(),
        key.name(),
        key.size(),
        key.state().wear().key(),
        key.state().treadMm(),
        key.state().mileageKm(),
        key.state().ageYears(),
        key.variant().ev() ? 1 : 0,
        key.variant().extraLoad() ? 1 : 0,
        key.variant().runFlat() ? 1 : 0,
        key.variant().seal() ? 1 : 0,
        name);
  }

  private void put(long entry, Price price) {
    rows.prices.add(
        entry,
        price.amount(),
        price.currency(),
        price.day() == null ? null : price.day().text(),
        price.per().key(),
        price.size(),
        price.shop(),
        price.cell());
  }

  /** The first weight of a discipline counts, as the first figure does. */
  private void put(long report, ReportWeight weight) {
    int discipline = rows.disciplines.number(weight.discipline());
    if (weights.add(new WeightKey(report, discipline))) {
      rows.weights.add(report, discipline, weight.weight(), weight.cell());
    }
  }

  private void put(Told told, Entry entry, Result result) {
    int discipline = rows.disciplines.number(result.discipline());
    int circumstance = rows.circumstances.number(result.circumstance());
    int repeat = result.repeat();
    if (!told.figures().add(new FigureKey(discipline, circumstance, repeat))) {
      boolean anotherSet = isAnotherSet(told, result);
      repeated(entry, result, anotherSet);
      if (!anotherSet) {
        return;
      }
      while (!told.figures().add(new FigureKey(discipline, circumstance, repeat))) {
        repeat++;
      }
    }
    long id =
        rows.results.add(
            told.id(),
            discipline,
            circumstance,
            repeat,
            result.sequence(),
            result.value(),
            result.unit() == null ? null : rows.units.number(result.unit().symbol()),
            result.spread(),
            result.runs(),
            result.place(),
            rows.rules.number(result.rule()),
            result.cells().value(),
            result.cells().spread(),
            result.cells().runs(),
            result.cells().place());
    resultCount++;
    result.steps().forEach(step -> put(id, step));
  }

  private void put(long result, Step step) {
    rows.steps.add(
        result,
        RowWriters.phrase(step.rule()),
        step.before(),
        step.beforeUnit() == null ? null : rows.units.number(step.beforeUnit().symbol()),
        step.after(),
        rows.units.number(step.afterUnit().symbol()),
        RowWriters.phrase(step.label()),
        step.cell());
  }

  /** A further row of a table is a set of the day; another sheet tells the same figure again. */
  private static boolean isAnotherSet(Told told, Result result) {
    return told.sheet().equals(sheetOf(cellOf(result)));
  }

  private static Cell cellOf(Result result) {
    return result.value() == null ? result.cells().place() : result.cells().value();
  }

  private static String sheetOf(Cell cell) {
    return cell == null ? "" : cell.sheet();
  }

  private void repeated(Entry entry, Result result, boolean anotherSet) {
    if (anotherSet) {
      sets++;
    } else {
      repeated++;
    }
    if (sets + repeated <= LISTED) {
      twice(
          anotherSet,
          cellOf(result),
          entry.model() + ", " + result.discipline() + ": " + told(result));
    }
  }

  private void twice(boolean anotherSet, Cell cell, String found) {
    rows.finding(
        anotherSet
            ? new Finding(
                Finding.Kind.ASSUMED,
                cell,
                found,
                ANOTHER_SET,
                "remove the row if it tells the same set again, or give it its own size or test")
            : new Finding(
                Finding.Kind.CONFLICT,
                cell,
                found,
                ONCE,
                "remove the repeated row, or give the second its own size or test"));
  }

  /** Tells what was only counted. */
  public void finish() {
    if (sets + repeated > LISTED) {
      twice(repeated == 0, null, (sets + repeated - LISTED) + " more repeated figures");
    }
  }

  private static String told(Result result) {
    return result.value() == null
        ? "place " + result.place()
        : (result.value() + " " + result.unit().symbol()).strip();
  }

  private void put(long report, Note note) {
    rows.notes.add(
        report,
        note.model() == null ? null : rows.model(note.model()),
        rows.disciplines.number(note.discipline()),
        note.text(),
        note.cell());
    noteCount++;
  }

  private long put(long report, LoggedRun run) {
    return rows.runs.add(
        report,
        rows.disciplines.number(run.discipline()),
        run.sequence(),
        rows.model(run.model()),
        run.role().word(),
        run.run(),
        run.fromKmh(),
        run.toKmh(),
        run.distanceM(),
        run.timeS(),
        run.levelDb(),
        run.value(),
        run.unit() == null ? null : rows.units.number(run.unit().symbol()),
        run.surfaceC(),
        run.airC(),
        run.remark(),
        run.cell());
  }

  public long tests() {
    return reports.size();
  }

  public long entries() {
    return entryCount;
  }

  public long results() {
    return resultCount;
  }

  public long notes() {
    return noteCount;
  }
}
