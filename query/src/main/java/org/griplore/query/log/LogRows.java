package org.griplore.query.log;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.griplore.store.archive.ReductionRecord;
import org.griplore.store.archive.RunRecord;
import org.griplore.store.vocabulary.LoggedRun;
import org.griplore.store.vocabulary.ReducedSet;
import org.griplore.store.vocabulary.Reduction;

/** The sets of a test's logs; runs that could not be reduced are there too. */
final class LogRows {
  private static final String NOT_REDUCED =
      "kept, but not reduced to a result: see the findings of its file";

  private LogRows() {}

  static List<LogRow> of(List<ReductionRecord> reductions, List<RunRecord> runs) {
    List<LogRow> rows = new ArrayList<>();
    Set<List<Object>> reduced = new HashSet<>();
    for (ReductionRecord record : reductions) {
      reduced.add(List.of(record.report(), record.reduction().discipline()));
      record
          .reduction()
          .sets()
          .forEach(set -> rows.add(row(set, record.reduction(), record.file())));
    }
    Map<List<Object>, List<RunRecord>> left = new LinkedHashMap<>();
    for (RunRecord record : runs) {
      LoggedRun run = record.run();
      if (!reduced.contains(List.of(record.report(), run.discipline()))) {
        left.computeIfAbsent(
                List.of(record.report(), run.discipline(), run.sequence(), run.model(), run.role()),
                key -> new ArrayList<>())
            .add(record);
      }
    }
    left.values().forEach(set -> rows.add(row(set)));
    return rows;
  }

  private static LogRow row(ReducedSet set, Reduction of, String file) {
    int sign = of.better().sign();
    Double log = of.byRatio() ? times(set.effect(), sign) : null;
    Double error = set.effectError();
    Double difference = log == null ? times(set.effect(), sign) : (Double) (100 * Math.expm1(log));
    return new LogRow(
        of.discipline(),
        set.sequence(),
        set.model(),
        word(set.role()),
        set.counted(),
        set.mean(),
        of.unit().symbol(),
        of.byRatio() && set.deviation() != null ? (Double) (set.deviation() / set.mean()) : null,
        set.deviation(),
        set.reference(),
        set.referenceWords().isEmpty() ? null : set.referenceWords(),
        difference,
        difference == null ? null : of.byRatio() ? "%" : of.unit().symbol(),
        log == null || error == null ? error : (Double) (100 * Math.exp(log) * error),
        log,
        log == null ? null : error,
        set.standing(),
        set.reasons(),
        file,
        set.runs().stream()
            .map(
                run ->
                    new LogRun(
                        run.run(),
                        run.figure(),
                        run.leftOut() == null,
                        run.leftOut() == null ? run.flag() : run.leftOut()))
            .toList());
  }

  private static Double times(Double value, int sign) {
    return value == null ? null : (Double) (sign * value + 0.0);
  }

  private static LogRow row(List<RunRecord> set) {
    LoggedRun first = set.get(0).run();
    return new LogRow(
        first.discipline(),
        first.sequence(),
        first.model(),
        word(first.role()),
        0,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        NOT_REDUCED,
        List.of(),
        set.get(0).file(),
        set.stream().map(record -> new LogRun(record.run(), null, null, null)).toList());
  }

  private static String word(LoggedRun.Role role) {
    return role.name().toLowerCase(Locale.ROOT);
  }
}
