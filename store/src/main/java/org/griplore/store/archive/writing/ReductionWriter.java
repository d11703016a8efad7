package org.griplore.store.archive.writing;

import java.util.List;
import java.util.Map;
import org.griplore.store.archive.database.BatchInsert;
import org.griplore.store.vocabulary.LoggedRun;
import org.griplore.store.vocabulary.ReducedSet;
import org.griplore.store.vocabulary.Reduction;
import org.griplore.store.wording.PhraseBook;

/** Writes how runs were reduced, beside the runs themselves. */
public final class ReductionWriter {
  private final RowWriters rows;

  public ReductionWriter(RowWriters rows) {
    this.rows = rows;
  }

  /**
   * @param numbers database numbers of the report's runs
   */
  public void put(long report, Reduction reduction, Map<LoggedRun, Long> numbers) {
    Reduction.Trace trace = reduction.trace();
    long id =
        rows.reductions.add(
            report,
            rows.disciplines.number(reduction.discipline()),
            rows.units.number(reduction.unit().symbol()),
            reduction.byRatio() ? 1 : 0,
            reduction.better().word(),
            reduction.coastBy(),
            reduction.fromKmh(),
            reduction.toKmh(),
            reduction.level(),
            trace.slope(),
            trace.trendP(),
            trace.stepAfter(),
            trace.stepSize(),
            trace.stepP());
    account(rows.reductionAccounts, id, "measure", List.of(reduction.measure()));
    account(rows.reductionAccounts, id, "level", List.of(reduction.levelWords()));
    account(rows.reductionAccounts, id, "trace", List.of(trace.words()));
    account(rows.reductionAccounts, id, "cycle", reduction.cycles());
    account(rows.reductionAccounts, id, "limit", reduction.limits());
    reduction.sets().forEach(set -> put(id, set, numbers));
  }

  private void put(long reduction, ReducedSet set, Map<LoggedRun, Long> numbers) {
    long id =
        rows.reducedSets.add(
            reduction,
            set.sequence(),
            rows.model(set.model()),
            set.role().word(),
            set.cycle(),
            set.mean(),
            set.deviation(),
            set.counted(),
            set.reference(),
            set.effect(),
            set.effectError(),
            set.valid() ? 1 : 0);
    if (!set.referenceWords().isEmpty()) {
      account(rows.setAccounts, id, "reference", List.of(set.referenceWords()));
    }
    account(rows.setAccounts, id, "standing", List.of(set.standing()));
    account(rows.setAccounts, id, "reason", set.reasons());
    for (ReducedSet.ReducedRun run : set.runs()) {
      rows.reducedRuns.add(
          id,
          numbers.get(run.run()),
          run.figure(),
          RowWriters.phrase(run.leftOut()),
          RowWriters.phrase(run.flag()));
    }
  }

  private static void account(BatchInsert into, long of, String part, List<String> words) {
    for (int i = 0; i < words.size(); i++) {
      into.add(of, part, i + 1, PhraseBook.phrase(words.get(i)));
    }
  }
}
