package org.griplore.ingest.reduce;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.griplore.ingest.reduce.ControlTrace.Verdict;
import org.griplore.ingest.reduce.ReductionOptions.Drift;
import org.griplore.ingest.reduce.limit.Remark;
import org.junit.jupiter.api.Test;

/** Constructed traces of the reference; the arithmetic is beside each. */
class ControlTraceTest {
  /** Reference and candidate by turns; each candidate's mean is 10 s. */
  private static LogSketch log(double... means) {
    LogSketch log = new LogSketch();
    for (int i = 0; i < means.length; i++) {
      log.laps("R", means[i] - 0.01, means[i] + 0.01);
      if (i < means.length - 1) {
        log.laps("T" + i, 9.99, 10.01);
      }
    }
    return log;
  }

  @Test
  void aTrend() {
    ReducedLog log = log(10.0, 10.11, 10.19, 10.31, 10.40, 10.49).reduce(LogSketch.LAP);
    assertThat(log.trace().verdict()).isEqualTo(Verdict.TREND);
    assertThat(log.trace().trendP()).isLessThan(0.001).isLessThan(log.trace().stepP());
  }

  @Test
  void aStepIsToldFromATrendAndRemarkedOn() {
    ReducedLog log = log(10.0, 10.01, 9.99, 10.50, 10.51, 10.49).reduce(LogSketch.LAP);
    ControlTrace trace = log.trace();
    assertThat(trace.verdict()).isEqualTo(Verdict.STEP);
    assertThat(trace.stepAfter()).isEqualTo(5);
    assertThat(trace.stepSize()).isCloseTo(0.5, within(1e-9));
    // residuals 0, 1, -1 hundredths on each side
    assertThat(trace.stepResidual()).isCloseTo(4e-4, within(1e-12));
    assertThat(trace.line().residual()).isGreaterThan(trace.stepResidual());
    assertThat(log.remarks()).anyMatch(remark -> remark.kind() == Remark.Kind.STEP);
  }

  @Test
  void noDrift() {
    ControlTrace trace = log(10.0, 10.02, 9.99, 10.01, 10.0).reduce(LogSketch.LAP).trace();
    assertThat(trace.verdict()).isEqualTo(Verdict.STEADY);
    ControlTrace constant = log(10.0, 10.0, 10.0, 10.0).reduce(LogSketch.LAP).trace();
    assertThat(constant.verdict()).isEqualTo(Verdict.STEADY);
  }

  @Test
  void twoMeasurementsAreTestedAgainstTheirRuns() {
    assertThat(log(10.0, 10.5).reduce(LogSketch.LAP).trace().verdict()).isEqualTo(Verdict.CHANGE);
    assertThat(log(10.0, 10.01).reduce(LogSketch.LAP).trace().verdict()).isEqualTo(Verdict.STEADY);
    LogSketch single = new LogSketch().laps("R", 10).laps("T", 9.8).laps("R", 10.5);
    assertThat(single.reduce(LogSketch.LAP).trace().verdict()).isEqualTo(Verdict.UNTESTED);
  }

  /** Method A: what does not drift significantly is left as measured. */
  @Test
  void methodALeavesASteadyReferenceAlone() {
    ReductionOptions a =
        ReductionOptions.ofDiscipline("wet-handling")
            .on(Anchor.FIRST_REFERENCE)
            .correcting(Drift.WHERE_SIGNIFICANT);
    ReducedLog steady = log(10.0, 10.02, 9.99, 10.01, 10.0).reduce(LogSketch.LAP, a);
    ReducedResult t1 = steady.of("T1").orElseThrow();
    assertThat(t1.corrected()).isCloseTo(10.0, within(1e-12));
    assertThat(t1.ratio()).isCloseTo(10.0 / 10.004, within(1e-12));
    assertThat(steady.levelWords()).contains("not significant");

    ReducedLog drifting = log(10.0, 10.1, 10.2, 10.3, 10.4).reduce(LogSketch.LAP, a);
    // between 10.1 and 10.2
    assertThat(drifting.of("T1").orElseThrow().corrected())
        .isCloseTo(10.0 * 10.0 / 10.15, within(1e-12));
  }
}
