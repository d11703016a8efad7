package org.griplore.ingest.reduce;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.griplore.ingest.reduce.limit.Remark;
import org.griplore.ingest.reduce.sample.StraightLine;
import org.griplore.store.vocabulary.LoggedRun;
import org.griplore.store.vocabulary.Unit;
import org.junit.jupiter.api.Test;

/** Thirteen places with a drifting control tyre; expected figures by R 4.2.2 (constructed data). */
class ControlDriftTest {
  private static final ReferenceCase CASE = new ReferenceCase("constructed-control-drift");
  private static final double EXACT = 1e-12;

  private static LogSketch log(boolean levels) {
    LogSketch log = new LogSketch();
    for (String[] row : CASE.data()) {
      String tyre = row[1].equals("CTRL") ? "R" : row[1];
      double y = Double.parseDouble(row[2]);
      if (levels) {
        log.levels(tyre, y);
      } else {
        log.values(tyre, Unit.METRE_PER_SECOND_SQUARED, y);
      }
    }
    return log;
  }

  private static List<SetResult> sets(ReducedLog log) {
    return log.results().stream().flatMap(result -> result.sets().stream()).toList();
  }

  @Test
  void theControlIsInterpolatedByPosition() {
    List<SetResult> sets = sets(log(false).reduce(LogSketch.CIRCLE));
    assertThat(sets).hasSize(9);
    for (SetResult set : sets) {
      String place = String.valueOf(set.set().sequence());
      assertThat(set.reference().value())
          .isCloseTo(CASE.expected("control.interpolated", place), within(EXACT));
      assertThat(Math.exp(set.effect().value()))
          .isCloseTo(CASE.expected("ratio.to.interpolated.control", place), within(EXACT));
    }
  }

  @Test
  void figuresAreCorrectedToTheFirstControlByRatio() {
    ReductionOptions first = ReductionOptions.ofDiscipline("wet-circle").on(Anchor.FIRST_REFERENCE);
    for (SetResult set : sets(log(false).reduce(LogSketch.CIRCLE, first))) {
      String place = String.valueOf(set.set().sequence());
      assertThat(set.corrected())
          .isCloseTo(
              CASE.expected("corrected.to.first.control(multiplicative)", place), within(1e-11));
    }
  }

  @Test
  void levelsAreCorrectedToTheMeanControlByDifference() {
    for (SetResult set : sets(log(true).reduce(LogSketch.NOISE))) {
      String place = String.valueOf(set.set().sequence());
      assertThat(set.corrected())
          .isCloseTo(CASE.expected("corrected.to.mean.control(additive)", place), within(1e-11));
    }
  }

  @Test
  void theControlLineIsTheLeastSquaresLine() {
    ControlTrace trace = log(false).reduce(LogSketch.CIRCLE).trace();
    StraightLine line = trace.line();
    assertThat(line.intercept())
        .isCloseTo(CASE.expected("control.line.coef", "(Intercept)"), within(1e-11));
    assertThat(line.slope()).isCloseTo(CASE.expected("control.line.coef", "order"), within(1e-11));
    assertThat(line.errorAt(0))
        .isCloseTo(CASE.expected("control.line.se", "(Intercept)"), within(1e-11));
    assertThat(line.slopeError())
        .isCloseTo(CASE.expected("control.line.se", "order"), within(1e-11));
    for (int place = 1; place <= 13; place++) {
      String key = String.valueOf(place);
      assertThat(line.at(place)).isCloseTo(CASE.expected("control.line.fit", key), within(1e-11));
      assertThat(line.errorAt(place))
          .isCloseTo(CASE.expected("control.line.fit.se", key), within(1e-11));
    }
    assertThat(trace.verdict()).isEqualTo(ControlTrace.Verdict.TREND);
  }

  @Test
  void aTyreAtTwoPlacesHasTheMeanOfItsRatios() {
    ReducedLog log = log(false).reduce(LogSketch.CIRCLE);
    double first = CASE.expected("ratio.to.interpolated.control", "2");
    double second = CASE.expected("ratio.to.interpolated.control", "8");
    ReducedResult a = log.of("A").orElseThrow();
    assertThat(a.sets()).hasSize(2);
    assertThat(a.ratio()).isCloseTo(Math.sqrt(first * second), within(EXACT));
    assertThat(a.runs()).isEqualTo(2);
    assertThat(a.spread()).isNull();
    assertThat(a.correctedError()).isNull();
    assertThat(log.remarks())
        .anySatisfy(
            remark -> {
              assertThat(remark.kind()).isEqualTo(Remark.Kind.UNCERTAINTY);
              assertThat(remark.found()).startsWith("A: no set of two runs");
            });
    LoggedRun run = a.sets().get(1).set().first();
    assertThat(run.sequence()).isEqualTo(8);
  }
}
