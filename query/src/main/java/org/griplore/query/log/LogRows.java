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
    return new LogRowBuilder()
        .discipline(of.discipline())
        .sequence(set.sequence())
        .tyre(set.model())
        .role(word(set.role()))
        .counted(set.counted())
        .mean(set.mean())
        .unit(of.unit().symbol())
        .variation(
            of.byRatio() && set.deviation() != null
                ? (Double) (set.deviation() / set.mean())
                : null)
        .deviation(set.deviation())
        .reference(set.reference())
        .referenceWords(set.referenceWords().isEmpty() ? null : set.referenceWords())
        .difference(difference)
        .differenceUnit(difference == null ? null : of.byRatio() ? "%" : of.unit().symbol())
        .error(log == null || error == null ? error : (Double) (100 * Math.exp(log) * error))
        .logDifference(log)
        .logSe(log == null ? null : error)
        .standing(set.standing())
        .reasons(set.reasons())
        .file(file)
        .runs(
            set.runs().stream()
                .map(
                    run ->
                        new LogRun(
                            run.run(),
                            run.figure(),
                            run.leftOut() == null,
                            run.leftOut() == null ? run.flag() : run.leftOut()))
                .toList())
        .build();
  }

  private static Double times(Double value, int sign) {
    return value == null ? null : (Double) (sign * value + 0.0);
  }

  private static LogRow row(List<RunRecord> set) {
    LoggedRun first = set.get(0).run();
    return new LogRowBuilder()
        .discipline(first.discipline())
        .sequence(first.sequence())
        .tyre(first.model())
        .role(word(first.role()))
        .standing(NOT_REDUCED)
        .file(set.get(0).file())
        .runs(set.stream().map(record -> new LogRun(record.run(), null, null, null)).toList())
        .build();
  }

  private static String word(LoggedRun.Role role) {
    return role.name().toLowerCase(Locale.ROOT);
  }
}
