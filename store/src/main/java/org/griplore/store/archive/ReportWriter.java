package org.griplore.store.archive;

import java.sql.Connection;
import java.util.BitSet;
import java.util.HashMap;
import java.util.Map;
import org.griplore.store.vocabulary.Cell;
import org.griplore.store.vocabulary.Details;
import org.griplore.store.vocabulary.Entry;
import org.griplore.store.vocabulary.Finding;
import org.griplore.store.vocabulary.LoggedRun;
import org.griplore.store.vocabulary.Note;
import org.griplore.store.vocabulary.Result;
import org.griplore.store.vocabulary.Step;
import org.griplore.store.vocabulary.TestReport;

/** Writes test reports, puts pieces of one test together and takes each figure once. */
final class ReportWriter {
  private final RowWriters rows;
  private final ReductionWriter reductions;
  private final Map<String, Integer> tests = new HashMap<>();
  private final Map<String, Long> reports = new HashMap<>();
  private final Map<EntryKey, EntryState> entries = new HashMap<>();
  private long entryCount;
  private long resultCount;
  private long noteCount;
  private long repeated;

  /** Repeated figures beyond this many are counted in one finding. */
  private static final int LISTED = 1000;

  private static final String ONCE =
      "one figure for a model and discipline in a test; the first was kept";

  private record EntryKey(long report, int name, String size) {}

  private record EntryState(long id, BitSet disciplines) {}

  ReportWriter(Connection connection, RowWriters rows) {
    this.rows = rows;
    this.reductions = new ReductionWriter(rows);
    Sql.list(
            connection,
            "SELECT key, id FROM test",
            row -> Map.entry(row.getString(1), row.getInt(2)))
        .forEach(test -> tests.put(test.getKey(), test.getValue()));
  }

  void put(TestReport report) {
    long id = report(report);
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
            details.kind() == null ? null : details.kind().name(),
            details.date() == null ? null : details.date().text(),
            details.size(),
            details.season() == null ? null : details.season().name(),
            details.vehicle(),
            details.vehicleMassKg(),
            details.venue(),
            details.surfaceC(),
            details.airC(),
            DetailCells.write(details.cells(), rows.sheets));
    reports.put(report.key(), id);
    return id;
  }

  private void put(long report, Entry entry) {
    EntryState state =
        entries.computeIfAbsent(
            new EntryKey(report, rows.model(entry.model()), entry.size()),
            key -> {
              entryCount++;
              long id = rows.entries.add(report, key.name(), key.size(), rows.at(entry.name()));
              return new EntryState(id, new BitSet());
            });
    for (Result result : entry.results()) {
      put(state, entry, result);
    }
  }

  private void put(EntryState state, Entry entry, Result result) {
    int discipline = rows.disciplines.number(result.discipline());
    if (state.disciplines().get(discipline)) {
      repeated(entry, result);
      return;
    }
    state.disciplines().set(discipline);
    long id =
        rows.results.add(
            state.id(),
            discipline,
            result.value(),
            result.unit() == null ? null : rows.units.number(result.unit().symbol()),
            result.spread(),
            result.runs(),
            result.place(),
            rows.at(result.cells().value()),
            rows.at(result.cells().spread()),
            rows.at(result.cells().runs()),
            rows.at(result.cells().place()),
            result.rule().isEmpty() ? null : rows.rules.number(result.rule()));
    resultCount++;
    result.steps().forEach(step -> put(id, step));
  }

  private void put(long result, Step step) {
    rows.steps.add(
        result,
        step.rule(),
        step.before(),
        step.beforeUnit() == null ? null : rows.units.number(step.beforeUnit().symbol()),
        step.after(),
        rows.units.number(step.afterUnit().symbol()),
        step.label(),
        rows.at(step.cell()));
  }

  private void repeated(Entry entry, Result result) {
    repeated++;
    if (repeated <= LISTED) {
      conflict(
          result.value() == null ? result.cells().place() : result.cells().value(),
          entry.model() + ", " + result.discipline() + ": " + told(result));
    }
  }

  private void conflict(Cell cell, String found) {
    rows.finding(
        new Finding(
            Finding.Kind.CONFLICT,
            cell,
            found,
            ONCE,
            "remove the repeated row, or give the second its own size or test"));
  }

  /** Tells what was only counted. */
  void finish() {
    if (repeated > LISTED) {
      conflict(null, (repeated - LISTED) + " more repeated figures");
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
        rows.at(note.cell()));
    noteCount++;
  }

  private long put(long report, LoggedRun run) {
    return rows.runs.add(
        report,
        rows.disciplines.number(run.discipline()),
        run.sequence(),
        rows.model(run.model()),
        run.role().name(),
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
        rows.at(run.cell()));
  }

  long tests() {
    return reports.size();
  }

  long entries() {
    return entryCount;
  }

  long results() {
    return resultCount;
  }

  long notes() {
    return noteCount;
  }
}
