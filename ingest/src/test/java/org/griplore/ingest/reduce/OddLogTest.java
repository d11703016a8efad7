package org.griplore.ingest.reduce;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.griplore.ingest.reduce.limit.Remark;
import org.griplore.ingest.reduce.run.RunMeasure;
import org.griplore.ingest.reduce.run.Window;
import org.griplore.store.vocabulary.LoggedRun;
import org.griplore.store.vocabulary.Refusal;
import org.griplore.store.vocabulary.Scale;
import org.griplore.store.vocabulary.Unit;
import org.junit.jupiter.api.Test;

/** Logs as they come in: something is missing, wrong or odd in each. */
class OddLogTest {
  private static boolean has(ReducedLog log, Remark.Kind kind, String words) {
    return log.remarks().stream()
        .anyMatch(r -> r.kind() == kind && (r.found() + " " + r.meaning()).contains(words));
  }

  @Test
  void aNegativeDistanceIsRefusedWithItsPlace() {
    LogSketch log =
        new LogSketch()
            .stops("R", 80, 20, 30, 30)
            .stops("T", 80, 20, 29, -28)
            .stops("R", 80, 20, 30);
    assertThatThrownBy(() -> log.reduce(LogSketch.WET))
        .isInstanceOf(Refusal.class)
        .hasMessage(
            "sequence 2, T, run 5 (row 5, column 4): found distance -28.0, expected a distance above"
                + " 0");
  }

  @Test
  void aZeroReferenceIsRefused() {
    LogSketch log = new LogSketch().laps("R", 0).laps("T", 60).laps("R", 61);
    assertThatThrownBy(() -> log.reduce(LogSketch.LAP))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("sequence 1, R")
        .hasMessageContaining("time 0.0");
    LogSketch values =
        new LogSketch().values("R", Unit.METRE_PER_SECOND_SQUARED, 0).values("T", null, 5);
    assertThatThrownBy(() -> values.reduce(LogSketch.CIRCLE)).isInstanceOf(Refusal.class);
  }

  /** Levels and points may be 0: they are compared by difference. */
  @Test
  void aLevelOfZeroIsALevel() {
    ReducedLog log =
        new LogSketch().levels("R", 0).levels("T", -1.5).levels("R", 1).reduce(LogSketch.NOISE);
    ReducedResult t = log.of("T").orElseThrow();
    assertThat(t.effect().value()).isEqualTo(-2.0);
    assertThat(t.ratio()).isNull();
    assertThat(t.corrected()).isEqualTo(-1.5);
    assertThat(t.effectWords()).isEqualTo("difference of sound level");
  }

  @Test
  void aMissingClosingReferenceTakesTheNearestAndIsSaid() {
    LogSketch sketch =
        new LogSketch()
            .laps("R", 10.0, 10.2)
            .laps("T1", 10.0, 10.2)
            .laps("R", 10.3, 10.5)
            .laps("T2", 10.0, 10.2)
            .laps("T3", 10.0, 10.2);
    ReducedLog log = sketch.reduce(LogSketch.LAP);
    assertThat(has(log, Remark.Kind.REFERENCE_MISSING, "cycle 2 (R-T1-T2-?): no closing reference"))
        .isTrue();
    Effect t1 = log.of("T1").orElseThrow().effect();
    Effect t2 = log.of("T2").orElseThrow().effect();
    Effect t3 = log.of("T3").orElseThrow().effect();
    assertThat(t2.value()).isCloseTo(Math.log(10.1 / 10.4), within(1e-12));
    assertThat(t2.value()).isEqualTo(t3.value());
    // drift of 0.3 / 10.1 over two places; T2 is one place from the reference, T3 two
    double perPlace = 0.3 / 10.1 / 2;
    double runs = 0.1 * 0.1 / (10.1 * 10.1) + 0.1 * 0.1 / (10.4 * 10.4);
    assertThat(t2.standardError()).isCloseTo(Math.sqrt(runs + perPlace * perPlace), within(1e-12));
    assertThat(t3.standardError())
        .isCloseTo(Math.sqrt(runs + 4 * perPlace * perPlace), within(1e-12));
    assertThat(t1.standardError()).isLessThan(t2.standardError());
    assertThat(t2.covariance(t3)).isGreaterThan(2 * perPlace * perPlace);
  }

  @Test
  void aMissingReferenceIsRefusedWhereThatIsAskedFor() {
    ReductionOptions strict =
        ReductionOptions.ofDiscipline("wet-handling").atOpenEnds(ReductionOptions.OpenEnd.REFUSE);
    LogSketch open = new LogSketch().laps("T1", 10.0).laps("R", 10.3);
    assertThatThrownBy(() -> open.reduce(LogSketch.LAP, strict))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("sequence 1, T1")
        .hasMessageContaining("no opening reference");
    LogSketch none = new LogSketch().laps("T1", 10.0);
    assertThatThrownBy(() -> none.reduce(LogSketch.LAP, strict))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("no reference in the log");
  }

  @Test
  void withoutAnyReferenceResultsStayAsMeasured() {
    ReducedLog log =
        new LogSketch().laps("A", 10.0, 10.2).laps("B", 9.9, 9.7).reduce(LogSketch.LAP);
    assertThat(has(log, Remark.Kind.REFERENCE_MISSING, "no reference in the log")).isTrue();
    ReducedResult a = log.of("A").orElseThrow();
    assertThat(a.isCorrected()).isFalse();
    assertThat(a.ratio()).isNull();
    assertThat(a.corrected()).isCloseTo(10.1, within(1e-12));
    assertThat(a.correctedError()).isNull();
    assertThat(log.level()).isNull();
    assertThat(log.levelWords()).startsWith("as measured");
    assertThat(log.covariances()[0][1]).isNull();
  }

  @Test
  void aSetOfOneRunHasNoSpreadOfItsOwn() {
    ReducedLog log =
        new LogSketch()
            .laps("R", 10.0, 10.2)
            .laps("T", 9.9)
            .laps("R", 10.1, 10.3)
            .reduce(LogSketch.LAP);
    ReducedResult t = log.of("T").orElseThrow();
    assertThat(t.sets().get(0).set().variation()).isNull();
    assertThat(t.spread()).isNull();
    assertThat(t.effect().standardError()).isPositive();
    assertThat(has(log, Remark.Kind.UNCERTAINTY, "a set of one run (sequence 2)")).isTrue();
  }

  @Test
  void onlyTheLogItselfCallsARunInvalid() {
    LogSketch sketch =
        new LogSketch()
            .stops("R", 80, 20, 30, 30.1)
            .stops("T", 80, 20, 29, 29.1)
            .remarked("T", 80, 20, 12, "Lauf ung\u00fcltig, Ventil")
            .remarked("T", 80, 20, 29.2, "gust of wind")
            .stops("R", 80, 20, 30, 30.1);
    ReducedLog log = sketch.reduce(LogSketch.WET);
    ReducedResult t = log.of("T").orElseThrow();
    assertThat(t.runs()).isEqualTo(3);
    assertThat(t.sets().get(0).set().runs()).hasSize(4);
    assertThat(has(log, Remark.Kind.LEFT_OUT, "Lauf ung\u00fcltig, Ventil")).isTrue();
  }

  @Test
  void aVoidReferenceKeepsItsPlaceAndIsNoReference() {
    LogSketch sketch = new LogSketch().stops("R", 80, 20, 30, 30).stops("T1", 80, 20, 30, 30);
    sketch.stops("R", 80, 20).remarked("R", 80, 20, 90, "void: sprinkler off");
    sketch.stops("T2", 80, 20, 30, 30).stops("R", 80, 20, 24, 24);
    ReducedLog log = sketch.reduce(LogSketch.WET);
    assertThat(log.cycles()).hasSize(1);
    assertThat(log.cycles().get(0).order()).isEqualTo("R-T1-T2-R");
    // places 1 and 5 around T1 at 2 and T2 at 4
    LocalReference t2 = log.of("T2").orElseThrow().used().get(0).reference();
    assertThat(t2.shares().get(1).weight()).isEqualTo(0.75);
    assertThat(has(log, Remark.Kind.LEFT_OUT, "it is no reference")).isTrue();
  }

  @Test
  void twoTyresAtOnePlaceAndTwoReferenceTyresAreRefused() {
    LogSketch mixed = new LogSketch().laps("R", 10).laps("A", 10);
    mixed.remarked("B", 80, 20, 30, null);
    assertThatThrownBy(() -> mixed.reduce(LogSketch.LAP))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("found candidate B, expected candidate A");

    List<LoggedRun> runs =
        List.of(reference(1, "Old control", 10.0), reference(2, "New control", 10.1));
    assertThatThrownBy(
            () ->
                RunReducer.reduce(
                    runs, LogSketch.LAP, ReductionOptions.ofDiscipline("wet-handling")))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("found reference New control")
        .hasMessageContaining("another reference tyre begins another log");
  }

  private static LoggedRun reference(int sequence, String model, double time) {
    return new LoggedRun(
        "wet-handling",
        sequence,
        model,
        LoggedRun.Role.REFERENCE,
        1,
        null,
        null,
        null,
        time,
        null,
        null,
        null,
        null,
        null,
        null,
        null);
  }

  @Test
  void unitsThatContradictEachOtherAreRefused() {
    LogSketch log =
        new LogSketch()
            .values("R", Unit.METRE_PER_SECOND_SQUARED, 3)
            .values("T", Unit.KILOMETRE_PER_HOUR, 80);
    assertThatThrownBy(() -> log.reduce(LogSketch.CIRCLE))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("sequence 2, T")
        .hasMessageContaining("found a value in km/h, expected the log's unit m/s2");
    LogSketch foreign = new LogSketch().values("R", Unit.KILOMETRE_PER_HOUR, 80);
    assertThatThrownBy(() -> foreign.reduce(LogSketch.CIRCLE))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("sequence 1, R")
        .hasMessageContaining("a value in km/h, expected a unit of wet-circle such as m/s2");
  }

  @Test
  void aValueWithoutAUnitIsTakenInTheDisciplinesAndSaid() {
    ReducedLog log =
        new LogSketch()
            .values("R", null, 5)
            .values("T", null, 6)
            .values("R", null, 5)
            .reduce(LogSketch.CIRCLE);
    assertThat(log.of("T").orElseThrow().unit()).isEqualTo(Unit.METRE_PER_SECOND_SQUARED);
    assertThat(has(log, Remark.Kind.TAKEN_AS, "3 values without a unit")).isTrue();
    assertThat(log.measure().scale()).isEqualTo(Scale.RATIO);
  }

  @Test
  void distancesWithoutSpeedsAreAveragedAsDecelerations() {
    List<LoggedRun> runs =
        new LogSketch()
            .stops("R", 80, 20, 30, 32).stops("T", 80, 20, 28).runs().stream()
                .map(
                    r ->
                        new LoggedRun(
                            r.discipline(),
                            r.sequence(),
                            r.model(),
                            r.role(),
                            r.run(),
                            null,
                            null,
                            r.distanceM(),
                            null,
                            null,
                            null,
                            null,
                            null,
                            null,
                            null,
                            r.cell()))
                .toList();
    ReducedLog log =
        RunReducer.reduce(runs, LogSketch.WET, ReductionOptions.ofDiscipline("wet-braking"))
            .orElseThrow();
    double harmonic = 2 / (1 / 30.0 + 1 / 32.0);
    assertThat(log.of("T").orElseThrow().ratio()).isCloseTo(harmonic / 28, within(1e-12));
    assertThat(log.of("T").orElseThrow().corrected()).isCloseTo(28, within(1e-12));
    assertThat(log.measure().kind()).isEqualTo(RunMeasure.Kind.INVERSE_DISTANCE);
  }

  @Test
  void speedsFarFromTheNominalOnesAreRemarkedOn() {
    ReducedLog log =
        new LogSketch()
            .stops("R", 80, 20, 30)
            .stops("T", 84, 20, 32)
            .stops("R", 81, 20, 30)
            .reduce(LogSketch.WET);
    assertThat(log.window()).isEqualTo(new Window(80, 20));
    assertThat(has(log, Remark.Kind.TAKEN_AS, "taken as 80 to 20 km/h")).isTrue();
    List<Remark> far =
        log.remarks().stream().filter(r -> r.kind() == Remark.Kind.SPEED_DEVIATION).toList();
    assertThat(far).hasSize(1);
    assertThat(far.get(0).found()).contains("sequence 2, T").contains("10.9 % off 80 to 20 km/h");
  }

  @Test
  void aLogThatMeasuredNothingHasNoResult() {
    assertThat(
            RunReducer.reduce(
                List.of(), LogSketch.WET, ReductionOptions.ofDiscipline("wet-braking")))
        .isEmpty();
  }

  /** SG1 x SG2 over two vehicles; variances add, though both logs have a sequence 1. */
  @Test
  void twoVehiclesAreJoinedByAControlTyre() {
    Effect control =
        new LogSketch()
            .laps("R", 10.0, 10.2)
            .laps("C", 9.8, 9.9)
            .laps("R", 10.0, 10.2)
            .reduce(LogSketch.LAP)
            .of("C")
            .orElseThrow()
            .effect();
    Effect candidate =
        new LogSketch()
            .laps("R", 11.0, 11.1)
            .laps("T", 10.8, 10.7)
            .laps("R", 11.0, 11.1)
            .reduce(LogSketch.LAP)
            .of("T")
            .orElseThrow()
            .effect();
    Effect joined = ControlChain.join(control, candidate);
    assertThat(Math.exp(joined.value())).isCloseTo(9.85 / 10.1 * (10.75 / 11.05), within(1e-12));
    assertThat(joined.standardError())
        .isCloseTo(Math.hypot(control.standardError(), candidate.standardError()), within(1e-15));
  }
}
