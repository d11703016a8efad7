package org.griplore.store.archive;

import java.util.List;
import java.util.Map;
import org.griplore.store.vocabulary.LoggedRun;
import org.griplore.store.vocabulary.ReducedSet;
import org.griplore.store.vocabulary.Reduction;

/** Writes how runs were reduced, beside the runs themselves. */
final class ReductionWriter {
  private final RowWriters rows;

  ReductionWriter(RowWriters rows) {
    this.rows = rows;
  }

  /**
   * @param numbers database numbers of the report's runs
   */
  void put(long report, Reduction reduction, Map<LoggedRun, Long> numbers) {
    Reduction.Trace trace = reduction.trace();
    long id =
        rows.reductions.add(
            report,
            rows.disciplines.number(reduction.discipline()),
            reduction.measure(),
            rows.units.number(reduction.unit().symbol()),
            reduction.byRatio() ? 1 : 0,
            reduction.better().name(),
            reduction.coastBy(),
            reduction.fromKmh(),
            reduction.toKmh(),
            reduction.level(),
            reduction.levelWords(),
            trace.words(),
            trace.slope(),
            trace.trendP(),
            trace.stepAfter(),
            trace.stepSize(),
            trace.stepP(),
            lines(reduction.cycles()),
            lines(reduction.limits()));
    reduction.sets().forEach(set -> put(id, set, numbers));
  }

  private void put(long reduction, ReducedSet set, Map<LoggedRun, Long> numbers) {
    long id =
        rows.reducedSets.add(
            reduction,
            set.sequence(),
            rows.model(set.model()),
            set.role().name(),
            set.cycle(),
            set.mean(),
            set.deviation(),
            set.counted(),
            set.reference(),
            set.referenceWords(),
            set.effect(),
            set.effectError(),
            set.valid() ? 1 : 0,
            set.standing(),
            lines(set.reasons()));
    for (ReducedSet.ReducedRun run : set.runs()) {
      rows.reducedRuns.add(id, numbers.get(run.run()), run.figure(), run.leftOut(), run.flag());
    }
  }

  private static String lines(List<String> sentences) {
    return String.join("\n", sentences);
  }
}
