package org.griplore.ingest.reduce;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.griplore.store.vocabulary.Cell;
import org.griplore.store.vocabulary.Direction;
import org.griplore.store.vocabulary.Discipline;
import org.griplore.store.vocabulary.LoggedRun;
import org.griplore.store.vocabulary.LoggedRun.Role;
import org.griplore.store.vocabulary.Scale;
import org.griplore.store.vocabulary.Unit;

/** A log written set by set. The reference is the tyre {@code R}; every other is a candidate. */
final class LogSketch {
  static final Discipline WET = discipline("wet-braking", Unit.METRE, Direction.LOW, Scale.RATIO);
  static final Discipline SNOW = discipline("snow-braking", Unit.METRE, Direction.LOW, Scale.RATIO);
  static final Discipline LAP = discipline("wet-handling", Unit.SECOND, Direction.LOW, Scale.RATIO);
  static final Discipline NOISE =
      discipline("exterior-noise", Unit.DECIBEL_A, Direction.LOW, Scale.LEVEL);
  static final Discipline CIRCLE =
      discipline("wet-circle", Unit.METRE_PER_SECOND_SQUARED, Direction.HIGH, Scale.RATIO);

  private final List<LoggedRun> runs = new ArrayList<>();
  private int sequence;

  static Discipline discipline(String key, Unit unit, Direction better, Scale scale) {
    return new Discipline(
        key, key, unit.dimension(), unit, better, scale, List.of(), Map.of(), null, "for a test");
  }

  /** Stops of a set at the next place, all between the same speeds. */
  LogSketch stops(String tyre, double from, double to, double... distances) {
    sequence++;
    for (double distance : distances) {
      add(tyre, from, to, distance, null, null, null, null, null);
    }
    return this;
  }

  LogSketch laps(String tyre, double... seconds) {
    sequence++;
    for (double time : seconds) {
      add(tyre, null, null, null, time, null, null, null, null);
    }
    return this;
  }

  LogSketch levels(String tyre, double... levels) {
    sequence++;
    for (double level : levels) {
      add(tyre, null, null, null, null, level, null, null, null);
    }
    return this;
  }

  LogSketch values(String tyre, Unit unit, double... values) {
    sequence++;
    for (double value : values) {
      add(tyre, null, null, null, null, null, value, unit, null);
    }
    return this;
  }

  /** One more run at the place of the last. */
  LogSketch remarked(String tyre, double from, double to, double distance, String remark) {
    add(tyre, from, to, distance, null, null, null, null, remark);
    return this;
  }

  private void add(
      String tyre,
      Double from,
      Double to,
      Double distance,
      Double time,
      Double level,
      Double value,
      Unit unit,
      String remark) {
    int row = runs.size() + 2;
    runs.add(
        new LoggedRun(
            "for-a-test",
            sequence,
            tyre,
            tyre.equals("R") ? Role.REFERENCE : Role.CANDIDATE,
            row,
            from,
            to,
            distance,
            time,
            level,
            value,
            unit,
            null,
            null,
            remark,
            new Cell("", row, 4, tyre)));
  }

  List<LoggedRun> runs() {
    return List.copyOf(runs);
  }

  ReducedLog reduce(Discipline discipline, ReductionOptions options) {
    return RunReducer.reduce(runs(), discipline, options).orElseThrow();
  }

  ReducedLog reduce(Discipline discipline) {
    return reduce(discipline, ReductionOptions.ofDiscipline(discipline.key()));
  }
}
