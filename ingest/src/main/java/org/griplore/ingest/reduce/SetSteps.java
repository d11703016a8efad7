package org.griplore.ingest.reduce;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.griplore.ingest.reduce.run.ResultUnit;
import org.griplore.ingest.reduce.run.RunMeasure;
import org.griplore.store.vocabulary.Step;
import org.griplore.store.vocabulary.Unit;

/** The steps from a candidate's runs to its result at the level that results stand on. */
final class SetSteps {
  private final RunMeasure measure;
  private final ResultUnit resultUnit;
  private final RunSteps runs;
  private final Double level;
  private final String levelWords;

  /**
   * @param level the reference's figure that results stand on; null without a reference
   * @param levelWords what that level means
   */
  SetSteps(
      RunMeasure measure, ResultUnit resultUnit, RunSteps runs, Double level, String levelWords) {
    this.measure = measure;
    this.resultUnit = resultUnit;
    this.runs = runs;
    this.level = level;
    this.levelWords = levelWords;
  }

  /** All steps; the last one's figure is the set's result. */
  List<Step> of(SetStatistics set, LocalReference reference, Effect effect) {
    Unit unit = resultUnit.figureUnit();
    List<Step> steps = new ArrayList<>(runs.of(set));
    steps.add(Step.to(mean(set), set.mean(), unit));
    double figure = set.mean();
    if (effect != null) {
      steps.add(Step.to("reference " + made(reference), reference.value(), unit));
      double against = measure.byRatio() ? Math.exp(effect.value()) : effect.value();
      Unit againstUnit = measure.byRatio() ? Unit.NUMBER : unit;
      steps.add(
          Step.of(
                  (measure.byRatio() ? "ratio of " : "difference of ")
                      + measure.kind().words()
                      + " to the reference",
                  set.mean(),
                  unit,
                  against,
                  againstUnit)
              .labelled(error(effect, measure.byRatio() ? against : 1, againstUnit)));
      figure = Correction.at(level, effect.value(), measure);
      steps.add(
          Step.of(
              String.format(
                  Locale.ROOT,
                  measure.byRatio() ? "times %.6g, %s" : "plus %.6g, %s",
                  level,
                  levelWords),
              against,
              againstUnit,
              figure,
              unit));
    }
    resultUnit.add(figure, steps);
    return steps;
  }

  /** The step from the sets of a candidate to their mean; none where one set is all. */
  static List<Step> joined(ReducedResult result) {
    List<Step> steps = new ArrayList<>();
    for (SetResult set : result.used()) {
      steps.addAll(set.steps());
    }
    if (result.used().size() > 1) {
      steps.add(
          Step.to(
              "mean of "
                  + result.used().size()
                  + " sets"
                  + (result.measure().byRatio() ? " (of the logarithms)" : ""),
              result.corrected(),
              result.unit()));
    }
    if (result.correctedError() != null) {
      int last = steps.size() - 1;
      steps.set(
          last,
          steps
              .get(last)
              .labelled(
                  error(result.correctedError(), result.unit())
                      + ": the scatter of its own runs and of the reference's"));
    }
    return steps;
  }

  private String mean(SetStatistics set) {
    String scatter =
        set.deviation() == null
            ? ""
            : measure.byRatio()
                ? String.format(Locale.ROOT, ", CV %.2f %%", 100 * set.variation())
                : String.format(Locale.ROOT, ", standard deviation %.2g", set.deviation());
    int left = set.runs().size() - set.count();
    return "mean of "
        + set.count()
        + (set.count() == 1 ? " run (" : " runs (")
        + measure.kind().words()
        + ")"
        + scatter
        + (left == 0 ? "" : "; " + left + " left out");
  }

  private static String made(LocalReference reference) {
    return reference.shares().size() > 3
        ? reference.words()
        : reference.words()
            + reference.shares().stream()
                .map(share -> String.format(Locale.ROOT, "%.6g", share.set().mean()))
                .collect(Collectors.joining(" and ", " (", ")"));
  }

  private static String error(Effect effect, double scale, Unit unit) {
    Double error = effect.standardError();
    return error == null ? null : error(scale * error, unit);
  }

  private static String error(double error, Unit unit) {
    return String.format(Locale.ROOT, "standard error %.2g %s", error, unit.symbol()).strip();
  }
}
