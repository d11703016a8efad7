package org.griplore.ingest.reduce;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import java.util.stream.Collectors;
import org.griplore.ingest.reduce.limit.Limit;
import org.griplore.ingest.reduce.limit.Limit.What;
import org.griplore.ingest.reduce.limit.Limits;
import org.griplore.ingest.reduce.limit.Remark;
import org.griplore.ingest.reduce.limit.Standing.State;
import org.griplore.store.vocabulary.Authority;
import org.junit.jupiter.api.Test;

/**
 * Validity limits and their consequence: a failed reference voids its cycle, a failed candidate
 * only itself (form of Regulation (EC) 1222/2009 annex V appendix A, "validation of results").
 */
class LimitsTest {
  private static final double[] GOOD = {30.0, 30.1, 30.2, 30.0, 30.1, 30.2};
  private static final double[] WIDE = {28.0, 32.0, 29.0, 31.0, 28.5, 31.5};

  private static LogSketch set(LogSketch log, String tyre, double... distances) {
    return log.stops(tyre, 80, 20, distances);
  }

  private static State state(ReducedLog log, String model) {
    return log.of(model).orElseThrow().sets().get(0).standing().state();
  }

  @Test
  void aWideCandidateVoidsItselfOnly() {
    LogSketch log = set(new LogSketch(), "R", GOOD);
    set(log, "T1", WIDE);
    set(log, "T2", GOOD);
    ReducedLog reduced = set(log, "R", GOOD).reduce(LogSketch.WET);
    assertThat(state(reduced, "T1")).isEqualTo(State.VOID_BY_ITSELF);
    assertThat(state(reduced, "T2")).isEqualTo(State.VALID);
    assertThat(reduced.of("T1").orElseThrow().sets().get(0).standing().reasons().get(0))
        .contains("CV 5.")
        .contains("CV within a set below 3 % (Regulation (EC) 1222/2009 annex V appendix A")
        .contains("read in source");
    assertThat(reduced.of("T1").orElseThrow().corrected()).isPositive();
  }

  @Test
  void aWideReferenceVoidsEachCycleThatSharesIt() {
    LogSketch log = set(new LogSketch(), "R", GOOD);
    set(log, "T1", GOOD);
    set(log, "R", WIDE);
    set(log, "T2", GOOD);
    set(log, "R", GOOD);
    set(log, "T3", GOOD);
    ReducedLog reduced = set(log, "R", GOOD).reduce(LogSketch.WET);
    assertThat(reduced.cycles()).extracting(ReferenceCycle::order).containsOnly("R-T1-R");
    assertThat(state(reduced, "T1")).isEqualTo(State.VOID_BY_REFERENCE);
    assertThat(state(reduced, "T2")).isEqualTo(State.VOID_BY_REFERENCE);
    assertThat(state(reduced, "T3")).isEqualTo(State.VALID);
  }

  /** Snow: 5 % of drift voids the cycle. Wet: no published limit, so only the user's voids. */
  @Test
  void driftVoidsWhereALimitIsPublishedOrSet() {
    double[] better = {28.0, 28.1, 28.2, 28.0, 28.1, 28.2};
    LogSketch log = set(new LogSketch(), "R", GOOD);
    set(log, "T1", GOOD);
    set(log, "R", better);
    ReducedLog snow = log.reduce(LogSketch.SNOW);
    assertThat(state(snow, "T1")).isEqualTo(State.VOID_BY_REFERENCE);
    assertThat(state(log.reduce(LogSketch.WET), "T1")).isEqualTo(State.VALID);
    ReductionOptions own =
        ReductionOptions.ofDiscipline("wet-braking").within(Limits.WET_CAR.withDriftAtMost(0.05));
    ReducedLog wet = log.reduce(LogSketch.WET, own);
    assertThat(state(wet, "T1")).isEqualTo(State.VOID_BY_REFERENCE);
    assertThat(wet.of("T1").orElseThrow().sets().get(0).standing().reasons().get(0))
        .contains("reference drift of 7.1")
        .contains("set by the user; user setting");
  }

  @Test
  void aRepeatedSetStandsForTheVoidOne() {
    LogSketch log = set(new LogSketch(), "R", GOOD);
    set(log, "T1", WIDE);
    set(log, "R", GOOD);
    set(log, "T1", GOOD);
    ReducedLog reduced = set(log, "R", GOOD).reduce(LogSketch.WET);
    ReducedResult t1 = reduced.of("T1").orElseThrow();
    assertThat(t1.sets()).hasSize(2);
    assertThat(t1.used()).hasSize(1);
    assertThat(t1.used().get(0).set().sequence()).isEqualTo(4);
    assertThat(t1.isValid()).isTrue();
    assertThat(t1.ratio()).isEqualTo(1.0);
  }

  @Test
  void longCyclesAndShortSetsAreRemarkedOn() {
    LogSketch log = set(new LogSketch(), "R", GOOD);
    for (int i = 1; i <= 4; i++) {
      set(log, "T" + i, GOOD);
    }
    set(log, "R", 30.0, 30.1, 30.2);
    ReducedLog reduced = log.reduce(LogSketch.WET);
    assertThat(reduced.results()).allMatch(ReducedResult::isValid);
    assertThat(reduced.cycles().get(0).isCanonical()).isFalse();
    Set<String> found =
        reduced.remarks().stream()
            .filter(remark -> remark.kind() == Remark.Kind.LIMIT)
            .map(Remark::found)
            .collect(Collectors.toSet());
    assertThat(found)
        .containsExactlyInAnyOrder("cycle 1 is R-T1-T2-T3-T4-R", "R, sequence 6: 3 runs count");
  }

  /** What was only half remembered is no default. */
  @Test
  void everyDefaultLimitWasReadInItsSource() {
    for (Limits limits :
        new Limits[] {
          Limits.WET_CAR, Limits.WET_TRAILER, Limits.SNOW_BRAKING, Limits.SNOW_ACCELERATION
        }) {
      assertThat(limits.all()).allMatch(limit -> limit.authority() == Authority.READ);
    }
    assertThat(Limits.WET_CAR.of(What.REFERENCE_DRIFT)).isEmpty();
    assertThat(Limits.ofDiscipline("wet-handling")).isEqualTo(Limits.NONE);
    Limit strict = Limits.WET_CAR.of(What.VARIATION_WITHIN_SET).orElseThrow();
    assertThat(strict.holds(0.03)).isFalse();
    assertThat(strict.holds(0.0299)).isTrue();
    Limit snow = Limits.SNOW_BRAKING.of(What.VARIATION_WITHIN_SET).orElseThrow();
    assertThat(snow.holds(0.06)).isTrue();
    assertThat(snow.holds(0.0601)).isFalse();
  }
}
