package org.griplore.ingest.reduce;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.griplore.ingest.reduce.run.ResultUnit;
import org.griplore.ingest.reduce.run.RunMeasure;
import org.griplore.ingest.reduce.run.RunPosition;
import org.griplore.ingest.reduce.run.Window;
import org.griplore.store.vocabulary.Discipline;
import org.griplore.store.vocabulary.LoggedRun;

/**
 * Reduces the runs of one discipline of one test to a result each candidate: mean of the runs
 * ({@link SetStatistics}), reference interpolated by position ({@link LocalReference}), corrected
 * to a level, T x level / reference or T + level - reference ({@link Anchor}), uncertainty
 * propagated ({@link SetErrors}), judged by the limits ({@link LimitCheck}).
 *
 * <p>The runs may come in any order: their sequence numbers count, and within a set their run
 * numbers. A place in the order is a sequence number that occurs; gaps in the numbering are no
 * places.
 */
public final class RunReducer {
  private static final Comparator<LoggedRun> BY_RUN =
      Comparator.comparing(LoggedRun::run, Comparator.nullsLast(Comparator.naturalOrder()))
          .thenComparing(
              run -> run.cell() == null ? 0 : run.cell().row(), Comparator.naturalOrder());

  private final RunMeasure measure;
  private final ReductionOptions options;
  private final List<SetStatistics> sets;
  private final List<SetStatistics> references;
  private final List<ReferenceCycle> cycles;
  private final ControlTrace trace;
  private final SetErrors errors;
  private final ResultUnit resultUnit;
  private final LogRemarks remarks;

  private RunReducer(
      List<LoggedRun> runs, RunMeasure measure, Discipline discipline, ReductionOptions options) {
    this.measure = measure;
    this.options = options;
    this.remarks = new LogRemarks(measure);
    remarks.unitTaken(runs);
    this.sets = sets(runs);
    this.references = sets.stream().filter(s -> s.isReference() && s.isUsable()).toList();
    oneReference();
    this.cycles = ReferenceCycle.of(sets);
    this.trace = ControlTrace.of(references);
    this.errors = new SetErrors(measure, options.spread(), sets, references);
    this.resultUnit = new ResultUnit(measure, discipline.unit(), window(runs));
  }

  /**
   * Reduces a log.
   *
   * @param runs of one discipline of one test
   * @return empty when no run measured anything
   * @throws org.griplore.store.vocabulary.Refusal naming the run, for figures that cannot be, two
   *     tyres at one place, two reference tyres, or an open end that is to be refused
   */
  public static Optional<ReducedLog> reduce(
      List<LoggedRun> runs, Discipline discipline, ReductionOptions options) {
    List<LoggedRun> ordered =
        runs.stream()
            .sorted(Comparator.comparingInt(LoggedRun::sequence).thenComparing(BY_RUN))
            .toList();
    return RunMeasure.of(ordered, discipline)
        .map(measure -> new RunReducer(ordered, measure, discipline, options).log());
  }

  private List<SetStatistics> sets(List<LoggedRun> ordered) {
    Map<Integer, List<LoggedRun>> places = new TreeMap<>();
    ordered.forEach(run -> places.computeIfAbsent(run.sequence(), s -> new ArrayList<>()).add(run));
    List<SetStatistics> all = new ArrayList<>();
    for (List<LoggedRun> together : places.values()) {
      all.add(set(all.size() + 1, together));
    }
    return List.copyOf(all);
  }

  private SetStatistics set(int position, List<LoggedRun> together) {
    if (measure.kind() != RunMeasure.Kind.LEVEL || options.coastBy() == null) {
      return SetStatistics.of(position, together, measure);
    }
    PassLevels passes = PassLevels.of(together, options.coastBy());
    if (passes.withoutTemperature()) {
      remarks.noSurfaceTemperature(together.get(0));
    }
    return SetStatistics.of(position, together, "level and speed", passes::figure);
  }

  /** A changed reference tyre begins a new series: its measurements are not interpolated across. */
  private void oneReference() {
    for (SetStatistics reference : references) {
      SetStatistics first = references.get(0);
      if (!reference.model().equals(first.model())) {
        throw RunPosition.refusal(
            RunPosition.of(reference.first()),
            "reference " + reference.model(),
            "reference "
                + first.model()
                + " as in sequence "
                + first.sequence()
                + " (another reference tyre begins another log)");
      }
    }
  }

  private Window window(List<LoggedRun> runs) {
    if (measure.kind() != RunMeasure.Kind.DECELERATION) {
      return null;
    }
    Window window = options.window();
    if (window == null) {
      window = Window.aimedAt(runs).orElse(null);
      remarks.windowTaken(window);
    }
    if (window != null) {
      remarks.deviations(sets, window);
    }
    return window;
  }

  private ReducedLog log() {
    boolean steady =
        options.drift() == ReductionOptions.Drift.WHERE_SIGNIFICANT
            && !references.isEmpty()
            && !trace.isToBeCorrected();
    Double level = level(steady);
    String levelWords = levelWords(steady);
    SetSteps steps =
        new SetSteps(
            measure,
            resultUnit,
            new RunSteps(measure, resultUnit.figureUnit(), options.coastBy()),
            level,
            levelWords);
    LimitCheck check = new LimitCheck(options.limits(), measure);
    Map<String, List<SetResult>> byModel = new LinkedHashMap<>();
    for (ReferenceCycle cycle : cycles) {
      remarks.openEnd(cycle, !references.isEmpty(), options.openEnd());
      for (SetStatistics set : cycle.candidates()) {
        if (set.isUsable()) {
          LocalReference reference =
              steady ? LocalReference.steady(references) : LocalReference.at(set.position(), cycle);
          byModel
              .computeIfAbsent(set.model(), m -> new ArrayList<>())
              .add(result(set, cycle, reference, level, steps, check));
        }
      }
    }
    List<ReducedResult> results =
        byModel.values().stream()
            .map(of -> CandidateMean.of(of, measure, level, resultUnit))
            .toList();
    remarks.sets(sets);
    remarks.trace(trace);
    remarks.uncertainties(results);
    remarks.add(check.remarks(sets, cycles));
    return new ReducedLog(
        measure,
        resultUnit.window(),
        options.anchor(),
        level,
        levelWords,
        sets,
        cycles,
        trace,
        errors.pooled(),
        results,
        remarks.all());
  }

  private Double level(boolean steady) {
    if (references.isEmpty()) {
      return null;
    }
    return options.anchor() == Anchor.FIRST_REFERENCE && !steady
        ? references.get(0).mean()
        : (Double) references.stream().mapToDouble(SetStatistics::mean).average().orElseThrow();
  }

  private String levelWords(boolean steady) {
    if (references.isEmpty()) {
      return "as measured: no reference in the log, a drift of the track stays in the values";
    }
    return steady
        ? "as measured: the drift of the reference is not significant"
        : options.anchor().words() + " (" + references.size() + " in the log)";
  }

  private SetResult result(
      SetStatistics set,
      ReferenceCycle cycle,
      LocalReference reference,
      Double level,
      SetSteps steps,
      LimitCheck check) {
    Effect effect =
        reference.basis() == LocalReference.Basis.ABSENT
            ? null
            : Correction.effect(set, reference, measure, errors);
    double figure = effect == null ? set.mean() : Correction.at(level, effect.value(), measure);
    double corrected = resultUnit.of(figure);
    return new SetResult(
        set,
        cycle,
        reference,
        effect,
        corrected,
        resultUnit.spread(set.deviation(), set.mean(), corrected),
        resultUnit.unit(),
        steps.of(set, reference, effect),
        check.standing(set, cycle));
  }
}
