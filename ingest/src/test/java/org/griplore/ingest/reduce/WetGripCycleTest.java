package org.griplore.ingest.reduce;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.griplore.ingest.reduce.run.SpeedCorrection;
import org.griplore.ingest.reduce.run.Window;
import org.griplore.store.tyre.LabelEra;
import org.griplore.store.tyre.TyreClass;
import org.griplore.store.tyre.WetGripClass;
import org.griplore.store.tyre.WetGripIndex;
import org.griplore.store.vocabulary.Refusal;
import org.griplore.store.vocabulary.Step;
import org.griplore.store.vocabulary.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A constructed cycle R1-T1-T2-T3-R2 of stops from 80 to 20 km/h, reckoned by hand from the
 * formulas of UN Regulation No. 117 annex 5 (weights as read in Regulation No. 109 annex 10 table
 * 1) and of the 2011 text of Regulation (EC) 1222/2009 annex V (coefficients from memory, check the
 * official text). Nothing published stands behind the figures.
 */
class WetGripCycleTest {
  private static final ReductionOptions OPTIONS =
      ReductionOptions.ofDiscipline("wet-braking")
          .between(new Window(80, 20))
          .on(Anchor.FIRST_REFERENCE);

  static LogSketch cycle() {
    return new LogSketch()
        .stops("R", 80, 20, 34.60, 34.95, 34.72, 34.40, 34.88, 34.65)
        .stops("T1", 80, 20, 30.10, 30.42, 30.25, 30.05, 30.33, 30.20)
        .stops("T2", 80, 20, 32.90, 33.20, 33.05, 32.80, 33.10, 33.00)
        .stops("T3", 80, 20, 36.40, 36.10, 36.60, 36.30, 36.50, 36.20)
        .stops("R", 80, 20, 33.90, 34.10, 33.75, 34.00, 33.85, 34.05);
  }

  @ParameterizedTest
  @CsvSource({
    "1, 6.6711, 0.574, 0.6800",
    "2, 7.6587, 0.460, 0.7807",
    "3, 7.0129, 0.433, 0.7149",
    "4, 6.3683, 0.515, 0.6492",
    "5, 6.8201, 0.389, 0.6952"
  })
  void setsAverageDecelerations(int place, double mean, double cvPercent, double coefficient) {
    SetStatistics set = cycle().reduce(LogSketch.WET, OPTIONS).sets().get(place - 1);
    assertThat(set.mean()).isCloseTo(mean, within(5e-5));
    assertThat(100 * set.variation()).isCloseTo(cvPercent, within(5e-4));
    assertThat(WetGripIndex.coefficient(set.mean())).isCloseTo(coefficient, within(5e-5));
    assertThat(set.count()).isEqualTo(6);
    assertThat(set.outliers()).isEmpty();
  }

  /** Trap: the mean of the distances gives 6.6709, not 6.6711. */
  @Test
  void distancesAreNotAveraged() {
    double mean = cycle().reduce(LogSketch.WET, OPTIONS).sets().get(0).mean();
    assertThat(SpeedCorrection.deceleration(80, 20, 34.70)).isCloseTo(6.6709, within(5e-5));
    assertThat(mean - SpeedCorrection.deceleration(80, 20, 34.70)).isGreaterThan(1.5e-4);
  }

  @ParameterizedTest
  @CsvSource({
    "T1, 18, 6.7084, 1.1417, 1.4271, 0.0085, -0.0005, 1.4351, 1.4051, B, 1.4351",
    "T2, 19, 6.7456, 1.0396, 1.2995, 0.0042, -0.0009, 1.3028, 1.2728, C, 1.3140",
    "T3, 21, 6.7828, 0.9389, 1.1736, -0.0042, -0.0014, 1.1680, 1.1380, D, 1.1933"
  })
  void theIndexOf2011(
      String tyre,
      double surfaceC,
      double reference,
      double ratio,
      double ratioTerm,
      double temperature,
      double surface,
      double index,
      double label,
      String letter,
      double withFirstReferenceOnly) {
    ReducedLog log = cycle().reduce(LogSketch.WET, OPTIONS);
    ReducedResult result = log.of(tyre).orElseThrow();
    SetResult set = result.used().get(0);
    assertThat(set.reference().value()).isCloseTo(reference, within(5e-5));
    assertThat(result.ratio()).isCloseTo(ratio, within(5e-5));
    WetGripIndex grip =
        WetGripIndex.of2011(
            WetGripIndex.coefficient(set.set().mean()),
            WetGripIndex.coefficient(set.reference().value()),
            surfaceC,
            WetGripIndex.Use.NORMAL,
            WetGripIndex.Method.CAR);
    assertThat(grip.terms().get(0).value()).isCloseTo(ratioTerm, within(5e-5));
    assertThat(grip.terms().get(1).value()).isCloseTo(temperature, within(5.1e-5));
    assertThat(grip.terms().get(2).value()).isCloseTo(surface, within(5e-5));
    assertThat(grip.testIndex()).isCloseTo(index, within(5.1e-5));
    assertThat(grip.labelIndex()).isCloseTo(label, within(5.1e-5));
    assertThat(WetGripClass.ofMeasured(grip.testIndex(), TyreClass.C1, LabelEra.ERA_2021).letter())
        .isEqualTo(letter);
    assertThat(1.25 * set.set().mean() / log.references().get(0).mean())
        .isCloseTo(withFirstReferenceOnly, within(5e-5));
    assertThat(grip.edition())
        .isEqualTo(
            "Regulation (EC) 1222/2009 annex V, 2011 text; coefficients from memory, check the"
                + " official text");
    assertThat(grip.steps().get(grip.steps().size() - 1).after()).isEqualTo(grip.labelIndex());
  }

  @Test
  void theTrackGotGrippierWithinReason() {
    ReducedLog log = cycle().reduce(LogSketch.WET, OPTIONS);
    ReferenceCycle cycle = log.cycles().get(0);
    assertThat(100 * cycle.drift(log.measure())).isCloseTo(2.23, within(0.005));
    assertThat(cycle.order()).isEqualTo("R-T1-T2-T3-R");
    assertThat(cycle.isCanonical()).isTrue();
    assertThat(log.trace().verdict()).isEqualTo(ControlTrace.Verdict.CHANGE);
    assertThat(log.results()).allMatch(ReducedResult::isValid);
    assertThat(log.remarks()).isEmpty();
  }

  @Test
  void stepsLeadFromTheMeanToTheDistanceAndBack() {
    ReducedResult t1 = cycle().reduce(LogSketch.WET, OPTIONS).of("T1").orElseThrow();
    SetResult set = t1.used().get(0);
    assertThat(set.steps()).hasSize(6 + 5);
    Step run = set.steps().get(0);
    assertThat(run.rule()).startsWith("run 8 from 80 to 20 km/h");
    assertThat(run.before()).isEqualTo(30.10);
    assertThat(run.after()).isCloseTo(231.4815 / 30.10, within(1e-5));
    assertThat(run.label()).isEqualTo("formula from memory, check the official text");
    Step mean = set.steps().get(6);
    Step reference = set.steps().get(7);
    Step ratio = set.steps().get(8);
    Step level = set.steps().get(9);
    Step distance = set.steps().get(10);
    assertThat(mean.before()).isNull();
    assertThat(mean.after()).isCloseTo(7.6587, within(5e-5));
    assertThat(mean.rule()).contains("CV 0.46 %");
    assertThat(reference.after()).isCloseTo(6.7084, within(5e-5));
    assertThat(reference.rule()).contains("0.750 of sequence 1 + 0.250 of sequence 5");
    assertThat(ratio.before()).isEqualTo(mean.after());
    assertThat(ratio.after()).isCloseTo(1.1417, within(5e-5));
    assertThat(level.rule()).contains("as on the first reference measurement");
    assertThat(level.before()).isEqualTo(ratio.after());
    // 7.6587 x 6.6711 / 6.7084
    assertThat(level.after()).isCloseTo(7.6161, within(2e-4));
    assertThat(distance.before()).isEqualTo(level.after());
    assertThat(distance.after()).isCloseTo(231.4815 / level.after(), within(1e-5));
    assertThat(distance.afterUnit()).isEqualTo(Unit.METRE);
    assertThat(distance.after()).isEqualTo(t1.corrected());
    assertThat(t1.spread() / t1.corrected()).isCloseTo(0.00460, within(5e-6));
  }

  /** The error of T1: its own CV and the references' by their weights, over the root of six. */
  @Test
  void uncertaintyIsPropagatedAndShared() {
    ReducedLog log = cycle().reduce(LogSketch.WET, OPTIONS);
    double ra = 0.75 * 6.6711 + 0.25 * 6.8201;
    double first = 0.00574 * 0.75 * 6.6711 / ra;
    double last = 0.00389 * 0.25 * 6.8201 / ra;
    double expected = Math.sqrt((0.00460 * 0.00460 + first * first + last * last) / 6);
    Effect t1 = log.of("T1").orElseThrow().effect();
    assertThat(t1.standardError()).isCloseTo(expected, within(2e-6));

    Effect t3 = log.of("T3").orElseThrow().effect();
    double ra3 = 0.25 * 6.6711 + 0.75 * 6.8201;
    double shared =
        (first * 0.00574 * 0.25 * 6.6711 / ra3 + last * 0.00389 * 0.75 * 6.8201 / ra3) / 6;
    assertThat(t1.covariance(t3)).isCloseTo(shared, within(1e-8)).isPositive();
    assertThat(log.covariances()[0][2]).isEqualTo(t1.covariance(t3));
    assertThat(log.covariances()[2][0]).isEqualTo(t1.covariance(t3));

    Effect difference = t1.less(t3);
    double variance =
        Math.pow(t1.standardError(), 2) + Math.pow(t3.standardError(), 2) - 2 * shared;
    assertThat(difference.value()).isCloseTo(Math.log(1.1417 / 0.9389), within(1e-4));
    assertThat(difference.standardError()).isCloseTo(Math.sqrt(variance), within(2e-6));
  }

  /** The newer structure with made-up coefficients; arithmetic by hand. */
  @Test
  void theNewerStructureNeedsTheUsersCoefficients() {
    WetGripIndex.DifferenceCoefficients by =
        new WetGripIndex.DifferenceCoefficients(2, 0.5, 0.01, 0.001, 0.1, 0.7, 20, 0.8, "made up");
    WetGripIndex grip = WetGripIndex.ofDifference(0.8, 0.72, 18, 0.9, by);
    // 2 (0.8 - [0.5 x 0.02 - 0.01 x 2 + 0.001 x 4 + 0.1 x 0.1])
    assertThat(grip.testIndex()).isCloseTo(2 * (0.8 - (0.01 - 0.02 + 0.004 + 0.01)), within(1e-12));
    assertThat(grip.edition()).isEqualTo("made up; user setting");
    assertThatThrownBy(
            () -> new WetGripIndex.DifferenceCoefficients(2, 0, 0, 0, 0, 0.7, 20, 0.8, " "))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("no source");
  }

  /** A snow tyre is warmed to 10 degrees, with the other signs; arithmetic by hand. */
  @Test
  void aSnowTyreHasCoefficientsOfItsOwn() {
    WetGripIndex grip =
        WetGripIndex.of2011(0.7, 0.85, 8, WetGripIndex.Use.SNOW, WetGripIndex.Method.TRAILER);
    assertThat(grip.testIndex()).isCloseTo((125 * 0.7 / 0.85 + 0.7721 * -2) / 100, within(1e-12));
    assertThatThrownBy(
            () ->
                WetGripIndex.of2011(0.7, 0, 8, WetGripIndex.Use.SNOW, WetGripIndex.Method.TRAILER))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("reference coefficient 0.0");
  }
}
