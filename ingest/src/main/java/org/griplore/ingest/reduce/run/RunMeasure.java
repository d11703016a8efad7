package org.griplore.ingest.reduce.run;

import java.util.List;
import java.util.Optional;
import org.griplore.store.vocabulary.Direction;
import org.griplore.store.vocabulary.Discipline;
import org.griplore.store.vocabulary.LoggedRun;
import org.griplore.store.vocabulary.Scale;
import org.griplore.store.vocabulary.Unit;

/**
 * What the runs of a log measured, and how two sets are compared in it.
 *
 * @param kind which of the log's figures is used
 * @param unit unit of the figure that is averaged; for {@link Kind#INVERSE_DISTANCE} the unit of
 *     the distance
 * @param scale RATIO: by ratio; LEVEL and POINTS: by difference
 */
public record RunMeasure(Kind kind, Unit unit, Scale scale) {
  /** The figure of a run that runs are averaged in. */
  public enum Kind {
    /** Mean deceleration from distance and speeds; distances are never averaged. */
    DECELERATION("mean deceleration"),
    /** 1 / distance, which is proportional to the deceleration; no speeds were logged. */
    INVERSE_DISTANCE("inverse distance (as deceleration, speeds not logged)"),
    TIME("time"),
    LEVEL("sound level"),
    VALUE("value");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    /** For sentences. */
    public String words() {
      return words;
    }
  }

  /**
   * What the first run that measured anything measured; empty when none did. Distance with both
   * speeds goes before level, level before time, time before value, and a distance without speeds
   * comes last.
   *
   * @param discipline gives the unit of values that name none
   * @throws org.griplore.store.vocabulary.Refusal when that run's value is in a unit that is none
   *     of the discipline's
   */
  public static Optional<RunMeasure> of(List<LoggedRun> runs, Discipline discipline) {
    return runs.stream().map(run -> of(run, discipline)).flatMap(Optional::stream).findFirst();
  }

  private static Optional<RunMeasure> of(LoggedRun run, Discipline discipline) {
    if (run.distanceM() != null && run.fromKmh() != null && run.toKmh() != null) {
      return ratio(Kind.DECELERATION, Unit.METRE_PER_SECOND_SQUARED);
    }
    if (run.levelDb() != null) {
      return Optional.of(new RunMeasure(Kind.LEVEL, Unit.DECIBEL_A, Scale.LEVEL));
    }
    if (run.timeS() != null) {
      return ratio(Kind.TIME, Unit.SECOND);
    }
    if (run.value() != null) {
      Unit unit = run.unit() == null ? discipline.unit() : run.unit();
      if (!discipline.accepts(unit)) {
        throw RunPosition.refusal(
            RunPosition.of(run),
            "a value in " + named(unit),
            "a unit of " + discipline.key() + " such as " + discipline.unit().symbol());
      }
      return Optional.of(new RunMeasure(Kind.VALUE, unit, discipline.scaleOf(unit)));
    }
    return run.distanceM() == null ? Optional.empty() : ratio(Kind.INVERSE_DISTANCE, Unit.METRE);
  }

  private static Optional<RunMeasure> ratio(Kind kind, Unit unit) {
    return Optional.of(new RunMeasure(kind, unit, Scale.RATIO));
  }

  /** Unit of the averaged figure; inverse distances have none of the vocabulary's. */
  public Unit figureUnit() {
    return kind == Kind.INVERSE_DISTANCE ? Unit.NUMBER : unit;
  }

  /** Which way is better in the averaged figure. */
  public Direction better(Discipline discipline) {
    return switch (kind) {
      case DECELERATION, INVERSE_DISTANCE -> Direction.HIGH;
      case TIME, LEVEL, VALUE -> discipline.directionOf(unit);
    };
  }

  /** Whether sets are compared by ratio, else by difference. */
  public boolean byRatio() {
    return scale == Scale.RATIO;
  }

  /**
   * The run's figure, or null when it did not measure this. A value without a unit is taken to be
   * in the measure's.
   *
   * @throws org.griplore.store.vocabulary.Refusal naming the run, for a figure that cannot be: not
   *     positive where ratios are formed, or in a unit that does not convert
   */
  public Double figure(LoggedRun run) {
    String where = RunPosition.of(run);
    return switch (kind) {
      case DECELERATION ->
          run.distanceM() == null || run.fromKmh() == null || run.toKmh() == null
              ? null
              : (Double)
                  SpeedCorrection.deceleration(run.fromKmh(), run.toKmh(), run.distanceM(), where);
      case INVERSE_DISTANCE ->
          run.distanceM() == null
              ? null
              : (Double) (1 / RunPosition.positive(run.distanceM(), "distance", where));
      case TIME ->
          run.timeS() == null ? null : (Double) RunPosition.positive(run.timeS(), "time", where);
      case LEVEL ->
          run.levelDb() == null ? null : (Double) RunPosition.finite(run.levelDb(), "level", where);
      case VALUE -> value(run, where);
    };
  }

  private Double value(LoggedRun run, String where) {
    if (run.value() == null) {
      return null;
    }
    Unit given = run.unit() == null ? unit : run.unit();
    if (!given.convertsTo(unit)) {
      throw RunPosition.refusal(
          where, "a value in " + named(given), "the log's unit " + named(unit));
    }
    double value = given.convert(run.value(), unit);
    return byRatio()
        ? RunPosition.positive(value, "value", where)
        : RunPosition.finite(value, "value", where);
  }

  private static String named(Unit unit) {
    return unit == Unit.NUMBER ? "no unit" : unit.symbol();
  }
}
