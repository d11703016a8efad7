package org.griplore.ingest.forms;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.griplore.ingest.reduce.Reduced;
import org.griplore.ingest.reduce.RunFigure;
import org.griplore.ingest.reduce.RunReducer;
import org.griplore.ingest.reduce.RunSet;
import org.griplore.store.vocabulary.Discipline;
import org.griplore.store.vocabulary.Finding;
import org.griplore.store.vocabulary.LoggedRun;
import org.griplore.store.vocabulary.Result;
import org.griplore.store.vocabulary.ResultCells;
import org.griplore.store.vocabulary.Unit;

/** Reduces the runs of one discipline to results in its unit, and says how in the results' rule. */
final class LogReduction {
  private final Discipline discipline;
  private final List<LoggedRun> runs;
  private final SourceContext context;

  LogReduction(Discipline discipline, List<LoggedRun> runs, SourceContext context) {
    this.discipline = discipline;
    this.runs = runs;
    this.context = context;
  }

  /** The candidates' results by model. */
  Map<String, Result> results() {
    Map<String, Result> results = new LinkedHashMap<>();
    RunFigure.Kind kind =
        runs.stream().map(RunFigure::kind).filter(Objects::nonNull).findFirst().orElse(null);
    if (kind == null) {
      return results;
    }
    RunReducer reducer = new RunReducer(runs, kind);
    remark(reducer);
    double from = nominal(reducer.sets(), true);
    double to = nominal(reducer.sets(), false);
    for (Reduced reduced : reducer.results()) {
      if (results.containsKey(reduced.set().model())) {
        repeated(reduced.set());
        continue;
      }
      results.put(reduced.set().model(), result(reduced, kind, reducer, from, to));
    }
    return results;
  }

  private Result result(
      Reduced reduced, RunFigure.Kind kind, RunReducer reducer, double from, double to) {
    RunSet set = reduced.set();
    double value = reduced.corrected();
    double spread = set.spread() * (kind == RunFigure.Kind.LEVEL ? 1 : value / set.mean());
    String how = how(reduced, reducer);
    Unit unit = discipline.unit();
    if (kind == RunFigure.Kind.DECELERATION) {
      if (discipline.unit() == Unit.METRE) {
        spread = spread / value * RunFigure.distance(from, to, value);
        value = RunFigure.distance(from, to, value);
        how =
            String.format(
                Locale.ROOT,
                "mean deceleration as distance from %.0f to %.0f km/h; %s",
                from,
                to,
                how);
      } else {
        unit = Unit.METRE_PER_SECOND_SQUARED;
      }
    } else if (kind == RunFigure.Kind.TIME) {
      unit = Unit.SECOND;
    } else if (kind == RunFigure.Kind.LEVEL) {
      unit = Unit.DECIBEL_A;
    } else if (set.runs().get(0).unit() != null) {
      unit = set.runs().get(0).unit();
    }
    if (unit != discipline.unit() && unit.convertsTo(discipline.unit())) {
      value = unit.convert(value, discipline.unit());
      spread = unit.convert(spread, discipline.unit());
      unit = discipline.unit();
    }
    return new Result(
        discipline.key(),
        value,
        unit,
        Double.isNaN(spread) ? null : (Double) spread,
        set.count(),
        null,
        ResultCells.ofValue(set.runs().get(0).cell()),
        how);
  }

  private static String how(Reduced reduced, RunReducer reducer) {
    String runs = "mean of " + reduced.set().count() + " runs";
    if (!reduced.isCorrected()) {
      return runs + "; no reference set, not corrected";
    }
    return runs
        + "; corrected by the reference set interpolated by position, as on the average of its "
        + reducer.references().size()
        + " measurements";
  }

  /** The speed that the runs aimed at: their mean, to the nearest 5 km/h. */
  private static double nominal(List<RunSet> sets, boolean first) {
    double mean =
        sets.stream()
            .flatMap(set -> set.runs().stream())
            .map(run -> first ? run.fromKmh() : run.toKmh())
            .filter(Objects::nonNull)
            .collect(Collectors.averagingDouble(Double::doubleValue));
    return 5 * Math.rint(mean / 5);
  }

  private void remark(RunReducer reducer) {
    if (reducer.references().isEmpty() && !reducer.sets().isEmpty()) {
      assumed(
          reducer.sets().get(0),
          "no run of a reference set",
          "the runs were averaged as they are; a drift of the track stays in them");
    }
    for (RunSet open : reducer.openEnds()) {
      assumed(
          open,
          open.model() + " has a reference on one side only",
          "the nearest measurement of the reference was taken");
    }
  }

  private void repeated(RunSet set) {
    context
        .receiver()
        .finding(
            new Finding(
                Finding.Kind.CONFLICT,
                set.runs().get(0).cell(),
                set.model() + ", " + discipline.key() + ", sequence " + set.sequence(),
                "each candidate once in a log; the first set was taken",
                "give the second set a name of its own"));
  }

  private void assumed(RunSet set, String found, String what) {
    context
        .receiver()
        .finding(
            new Finding(
                Finding.Kind.ASSUMED,
                set.runs().get(0).cell(),
                discipline.key() + ": " + found,
                what,
                "log the reference set before the first and after the last candidate"));
  }
}
