package org.griplore.ingest.reduce;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.griplore.ingest.reduce.run.RunMeasure;
import org.griplore.store.tyre.TyreClass;
import org.griplore.store.vocabulary.Authority;
import org.griplore.store.vocabulary.LoggedRun;
import org.griplore.store.vocabulary.Step;
import org.griplore.store.vocabulary.Unit;

/** The steps from each counted run to the figure it goes into the mean with, with its cell. */
final class RunSteps {
  private final RunMeasure measure;
  private final Unit figureUnit;
  private final TyreClass coastBy;

  /**
   * @param figureUnit the unit that runs are averaged in
   * @param coastBy the class whose pass-by correction was applied; null when none was
   */
  RunSteps(RunMeasure measure, Unit figureUnit, TyreClass coastBy) {
    this.measure = measure;
    this.figureUnit = figureUnit;
    this.coastBy = coastBy;
  }

  List<Step> of(SetStatistics set) {
    List<Step> steps = new ArrayList<>();
    for (SetStatistics.SetRun counted : set.runs()) {
      if (counted.leftOut() == null) {
        steps.add(step(counted.run(), counted.figure()).at(counted.run().cell()));
      }
    }
    return steps;
  }

  private Step step(LoggedRun run, double figure) {
    String name = run.run() == null ? "a run" : "run " + run.run();
    return switch (measure.kind()) {
      case DECELERATION ->
          Step.of(
                  name + speeds(run) + ": mean deceleration, |v1\u00b2 - v2\u00b2| / (2 d)",
                  run.distanceM(),
                  Unit.METRE,
                  figure,
                  figureUnit)
              .labelled("formula " + Authority.MEMORY.words());
      case INVERSE_DISTANCE ->
          Step.of(name + ": 1 / distance", run.distanceM(), Unit.METRE, figure, figureUnit);
      case TIME -> Step.of(name, run.timeS(), Unit.SECOND, figure, figureUnit);
      case LEVEL -> level(name, run, figure);
      case VALUE ->
          Step.of(
              name,
              run.value(),
              run.unit() == null ? measure.unit() : run.unit(),
              figure,
              figureUnit);
    };
  }

  private Step level(String name, LoggedRun run, double figure) {
    if (coastBy == null) {
      return Step.of(name, run.levelDb(), Unit.DECIBEL_A, figure, figureUnit);
    }
    String rule =
        String.format(
            Locale.ROOT,
            "%s at %s km/h: to %.0f km/h by the set's slope on lg(v)%s",
            name,
            plain(run.fromKmh()),
            CoastByNoise.referenceSpeed(coastBy),
            run.surfaceC() == null ? "" : ", and to 20 \u00b0C of the road");
    return Step.of(rule, run.levelDb(), Unit.DECIBEL_A, figure, figureUnit)
        .labelled(Authority.MEMORY.words());
  }

  private static String speeds(LoggedRun run) {
    return " from " + plain(run.fromKmh()) + " to " + plain(run.toKmh()) + " km/h";
  }

  /** A number without a needless point. */
  static String plain(double number) {
    return number == Math.rint(number) ? String.valueOf((long) number) : String.valueOf(number);
  }
}
