package org.griplore.ingest.reduce;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.griplore.ingest.reduce.run.SpeedCorrection;
import org.griplore.ingest.reduce.run.Window;
import org.griplore.store.vocabulary.LoggedRun;
import org.griplore.store.vocabulary.Unit;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What must not change a result, on random logs; the seed is in the test's name. */
class ReductionPropertiesTest {
  private static final ReductionOptions OPTIONS = ReductionOptions.ofDiscipline("wet-braking");

  /** Cycles of one to five candidates on a drifting track, stops from about 80 to about 20. */
  private static LogSketch log(Random random) {
    LogSketch log = new LogSketch();
    int cycles = 1 + random.nextInt(3);
    double drift = 0.01 * random.nextGaussian();
    int place = 0;
    int tyre = 0;
    for (int c = 0; c <= cycles; c++) {
      set(log, "R", 6.7 + place++ * drift, random);
      int candidates = c == cycles ? 0 : 1 + random.nextInt(5);
      for (int k = 0; k < candidates; k++) {
        double grip = 6.7 * (1 + 0.08 * random.nextGaussian());
        set(log, "T" + ++tyre, grip + place++ * drift, random);
      }
    }
    return log;
  }

  private static void set(LogSketch log, String tyre, double grip, Random random) {
    log.stops(tyre, 80, 20);
    int runs = 2 + random.nextInt(6);
    for (int i = 0; i < runs; i++) {
      double from = 80 + random.nextGaussian();
      double to = 20 + 0.3 * random.nextGaussian();
      double ad = grip * (1 + 0.006 * random.nextGaussian());
      log.remarked(tyre, from, to, SpeedCorrection.distance(new Window(from, to), ad), null);
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void theOrderOfTheRowsChangesNothing(long seed) {
    List<LoggedRun> runs = log(new Random(seed)).runs();
    List<LoggedRun> shuffled = new ArrayList<>(runs);
    Collections.shuffle(shuffled, new Random(seed + 1000));
    ReducedLog inOrder = RunReducer.reduce(runs, LogSketch.WET, OPTIONS).orElseThrow();
    ReducedLog mixed = RunReducer.reduce(shuffled, LogSketch.WET, OPTIONS).orElseThrow();
    assertThat(mixed).isEqualTo(inOrder);
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {11, 12, 13, 14, 15, 16, 17, 18})
  void bothAnchorsGiveEqualRatiosAndTheLevelOnly(long seed) {
    LogSketch log = log(new Random(seed));
    ReducedLog first = log.reduce(LogSketch.WET, OPTIONS.on(Anchor.FIRST_REFERENCE));
    ReducedLog mean = log.reduce(LogSketch.WET, OPTIONS.on(Anchor.GRAND_MEAN));
    double shift = mean.level() / first.level();
    for (int i = 0; i < first.results().size(); i++) {
      ReducedResult a = first.results().get(i);
      ReducedResult b = mean.results().get(i);
      assertThat(b.ratio()).isEqualTo(a.ratio());
      assertThat(b.ratioError()).isEqualTo(a.ratioError());
      // metres: a higher level of grip is a shorter distance
      assertThat(b.corrected()).isCloseTo(a.corrected() / shift, within(1e-10));
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {21, 22, 23, 24})
  void unitsChangeNoRatio(long seed) {
    List<LoggedRun> runs = log(new Random(seed)).runs();
    List<LoggedRun> feet = runs.stream().map(r -> distanceAsValue(r, Unit.FOOT)).toList();
    List<LoggedRun> metres = runs.stream().map(r -> distanceAsValue(r, Unit.METRE)).toList();
    ReducedLog inFeet = RunReducer.reduce(feet, LogSketch.WET, OPTIONS).orElseThrow();
    ReducedLog inMetres = RunReducer.reduce(metres, LogSketch.WET, OPTIONS).orElseThrow();
    for (int i = 0; i < inFeet.results().size(); i++) {
      ReducedResult a = inFeet.results().get(i);
      ReducedResult b = inMetres.results().get(i);
      assertThat(a.unit()).isEqualTo(Unit.METRE);
      assertThat(a.ratio()).isCloseTo(b.ratio(), within(1e-13));
      assertThat(a.ratioError()).isCloseTo(b.ratioError(), within(1e-12));
      assertThat(a.corrected()).isCloseTo(b.corrected(), within(1e-11));
      assertThat(a.spread()).isCloseTo(b.spread(), within(1e-11));
    }
  }

  private static LoggedRun distanceAsValue(LoggedRun r, Unit unit) {
    double value = Unit.METRE.convert(r.distanceM(), unit);
    return new LoggedRun(
        r.discipline(),
        r.sequence(),
        r.model(),
        r.role(),
        r.run(),
        null,
        null,
        null,
        null,
        null,
        value,
        unit,
        null,
        null,
        null,
        r.cell());
  }

  /** A constant factor on a whole test leaves every ratio and error alone. */
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {31, 32, 33, 34})
  void aFactorOnTheWholeTestChangesNoRatio(long seed) {
    List<LoggedRun> runs = log(new Random(seed)).runs();
    List<LoggedRun> longer =
        runs.stream()
            .map(
                r ->
                    new LoggedRun(
                        r.discipline(),
                        r.sequence(),
                        r.model(),
                        r.role(),
                        r.run(),
                        r.fromKmh(),
                        r.toKmh(),
                        1.37 * r.distanceM(),
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        r.cell()))
            .toList();
    ReducedLog plain = RunReducer.reduce(runs, LogSketch.WET, OPTIONS).orElseThrow();
    ReducedLog scaled = RunReducer.reduce(longer, LogSketch.WET, OPTIONS).orElseThrow();
    for (int i = 0; i < plain.results().size(); i++) {
      ReducedResult a = plain.results().get(i);
      ReducedResult b = scaled.results().get(i);
      assertThat(b.ratio()).isCloseTo(a.ratio(), within(1e-13));
      assertThat(b.ratioError()).isCloseTo(a.ratioError(), within(1e-13));
      assertThat(b.corrected()).isCloseTo(1.37 * a.corrected(), within(1e-10));
    }
  }

  /**
   * A level that drifts by a straight line is taken out exactly, however many candidates there are.
   */
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {41, 42, 43, 44, 45, 46})
  void aLinearDriftIsTakenOutExactly(long seed) {
    Random random = new Random(seed);
    double rate = 0.2 * random.nextGaussian();
    LogSketch log = new LogSketch();
    List<Double> truth = new ArrayList<>();
    int place = 0;
    for (int c = 0; c < 4; c++) {
      log.levels("R", 70 + rate * place++);
      for (int k = 0; c < 3 && k <= random.nextInt(5); k++) {
        double better = random.nextGaussian();
        truth.add(better);
        log.levels("T" + truth.size(), 70 + better + rate * place++);
      }
    }
    ReducedLog reduced = log.reduce(LogSketch.NOISE);
    for (int i = 0; i < truth.size(); i++) {
      assertThat(reduced.results().get(i).effect().value()).isCloseTo(truth.get(i), within(1e-11));
    }
  }

  /** Speeds off the nominal ones change no deceleration: they only lengthen the way. */
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {51, 52, 53})
  void speedsAreTakenOut(long seed) {
    Random random = new Random(seed);
    LogSketch off = new LogSketch();
    LogSketch nominal = new LogSketch();
    for (String tyre : List.of("R", "T1", "T2", "R")) {
      double ad = 6 + random.nextDouble();
      double from = 80 + random.nextGaussian();
      off.stops(tyre, from, 20, SpeedCorrection.distance(new Window(from, 20), ad));
      nominal.stops(tyre, 80, 20, SpeedCorrection.distance(new Window(80, 20), ad));
    }
    ReducedLog a = off.reduce(LogSketch.WET);
    ReducedLog b = nominal.reduce(LogSketch.WET);
    for (int i = 0; i < 2; i++) {
      assertThat(a.results().get(i).ratio()).isCloseTo(b.results().get(i).ratio(), within(1e-13));
      assertThat(a.results().get(i).corrected())
          .isCloseTo(b.results().get(i).corrected(), within(1e-11));
    }
  }

  /**
   * Simulated days: the standard error of a candidate's log ratio is what the ratio scatters by,
   * and the covariance of two candidates of a cycle is theirs.
   */
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {61})
  void errorsAreWhatResultsScatterBy(long seed) {
    Random random = new Random(seed);
    int days = 1500;
    double sum = 0;
    double cross = 0;
    double told = 0;
    double toldCross = 0;
    for (int day = 0; day < days; day++) {
      LogSketch log = new LogSketch();
      for (String tyre : List.of("R", "T1", "T2", "R")) {
        double[] laps = new double[8];
        for (int i = 0; i < laps.length; i++) {
          laps[i] = 60 * (1 + 0.01 * random.nextGaussian());
        }
        log.laps(tyre, laps);
      }
      ReducedLog reduced = log.reduce(LogSketch.LAP);
      Effect t1 = reduced.results().get(0).effect();
      Effect t2 = reduced.results().get(1).effect();
      sum += t1.value() * t1.value();
      cross += t1.value() * t2.value();
      told += t1.covariance(t1);
      toldCross += t1.covariance(t2);
    }
    assertThat(told / days).as("seed %d", seed).isCloseTo(sum / days, within(0.12 * sum / days));
    assertThat(toldCross / days).isCloseTo(cross / days, within(0.2 * cross / days));
    // by hand: 1/8 of 1e-4 (1 + 5/9), and 1/8 of 1e-4 x 4/9
    assertThat(told / days).isCloseTo(1e-4 / 8 * (1 + 5 / 9.0), within(4e-7));
    assertThat(toldCross / days).isCloseTo(1e-4 / 8 * 4 / 9, within(2e-7));
  }
}
