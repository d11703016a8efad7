package org.griplore.query.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.griplore.query.network.NotCompared.Reason;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Networks at the edge of what can be said: no answer is ever NaN. */
class NetworkEdgesTest {
  private static final double NONE = Double.NaN;

  @ParameterizedTest
  @MethodSource("networks")
  void noAnswerIsNotANumber(String name, Arms arms, VarianceMethod method) {
    NetworkFit fit = NetworkFitter.fit(arms, FitOptions.of(method));
    NetworkEstimates estimates = NetworkEstimates.of(arms, OptionalDouble.empty());
    NumberCheck.heterogeneity(fit);
    for (int a = 0; a < arms.models(); a++) {
      fit.effect(a).ifPresent(NumberCheck::estimate);
      NumberCheck.number(estimates.effect(a));
      for (int b = 0; b < arms.models(); b++) {
        NumberCheck.evidence(fit.evidence(a, b));
        NumberCheck.comparison(fit.compare(a, b));
        NumberCheck.number(estimates.difference(a, b));
        assertThat(estimates.difference(a, b).isPresent())
            .isEqualTo(fit.compare(a, b) instanceof EstimatedComparison);
      }
    }
    for (int t = 0; t < arms.tests(); t++) {
      NumberCheck.number(fit.testEffect(t));
    }
    for (ModelStanding s : fit.standings()) {
      NumberCheck.estimate(s.effect());
      NumberCheck.number(s.score());
    }
  }

  static Stream<Arguments> networks() {
    return Stream.of(
            named("no arms", new ArmList().build(0, 0)),
            named("models without arms", new ArmList().build(3, 4)),
            named("one arm", list(4, 3, 0, 0, 1, 0.1)),
            named("one test, two models", list(1, 2, 0, 0, 1, 0.1, 0, 1, 2, 0.2)),
            named("one test, unknown variances", list(1, 2, 0, 0, 1, NONE, 0, 1, 2, NONE)),
            named("one test, zero variances", list(1, 2, 0, 0, 1, 0, 0, 1, 1, 0)),
            named("one variance known", list(1, 2, 0, 0, 1, 0.1, 0, 1, 2, NONE)),
            named(
                "results that agree exactly, unknown",
                list(2, 2, 0, 0, 1, NONE, 0, 1, 2, NONE, 1, 0, 5, NONE, 1, 1, 6, NONE)),
            named(
                "results that agree exactly, known",
                list(2, 2, 0, 0, 1, 0.1, 0, 1, 2, 0.1, 1, 0, 5, 0.1, 1, 1, 6, 0.1)),
            named("all results equal", list(2, 2, 0, 0, 1, 0, 0, 1, 1, 0, 1, 0, 1, 0, 1, 1, 1, 0)),
            named(
                "two tests that disagree",
                list(2, 2, 0, 0, 1, 0.1, 0, 1, 2, 0.1, 1, 0, 9, 0.1, 1, 1, 6, 0.1)),
            named(
                "two components and a lone model",
                list(
                    4, 6, 0, 0, 1, 0.1, 0, 1, 2, 0.1, 1, 2, 9, 0.1, 1, 3, 6, 0.1, 2, 2, 9, 0.1, 2,
                    3, 7, 0.1, 3, 4, 1, 0.1)),
            named(
                "variances nine orders apart",
                list(2, 3, 0, 0, 1, 1e-9, 0, 1, 2, 1, 1, 0, 5, 1, 1, 1, 6.5, 1e-9, 1, 2, 6, 1e-9)))
        .flatMap(
            a ->
                Stream.of(VarianceMethod.values())
                    .map(m -> Arguments.of(a.get()[0], a.get()[1], m)));
  }

  private static Arguments named(String name, Arms arms) {
    return Arguments.of(name, arms);
  }

  private static Arms list(int tests, int models, double... cells) {
    ArmList arms = new ArmList();
    for (int i = 0; i < cells.length; i += 4) {
      arms.add((int) cells[i], (int) cells[i + 1], cells[i + 2], cells[i + 3]);
    }
    return arms.build(tests, models);
  }

  @Test
  void partsAreNeverCompared() {
    Arms arms = list(4, 6, 0, 0, 1, 0.1, 0, 2, 2, 0.1, 1, 1, 9, 0.1, 1, 3, 6, 0.1, 3, 4, 1, 0.1);
    NetworkFit fit = NetworkFitter.fit(arms, FitOptions.of(VarianceMethod.REML));
    assertThat(fit.components()).isEqualTo(2);
    assertThat(fit.component(0)).hasValue(0);
    assertThat(fit.component(1)).hasValue(1);
    assertThat(fit.component(4)).isEmpty();
    assertThat(fit.singleArmTests()).isEqualTo(1);
    assertThat(fit.compare(0, 1)).isEqualTo(new NotCompared(0, Reason.SEPARATE_PARTS));
    assertThat(fit.compare(0, 4)).isEqualTo(new NotCompared(4, Reason.ONLY_ALONE));
    assertThat(fit.compare(5, 0)).isEqualTo(new NotCompared(5, Reason.NOT_TESTED));
    assertThat(fit.combination(new int[] {0, 1}, new double[] {1, -1})).isEmpty();
    assertThat(fit.combination(new int[] {0, 2, 1, 3}, new double[] {1, -1, 1, -1})).isPresent();
  }

  @Test
  void withoutDegreesOfFreedomAnUnknownVarianceGivesNoStandardError() {
    NetworkFit fit =
        NetworkFitter.fit(
            list(1, 2, 0, 0, 1, NONE, 0, 1, 2, NONE), FitOptions.of(VarianceMethod.REML));
    EstimatedComparison compared = (EstimatedComparison) fit.compare(1, 0);
    assertThat(compared.difference()).isCloseTo(1, within(1e-15));
    assertThat(compared.se()).isEmpty();
    assertThat(compared.interval(0.95)).isEmpty();
    assertThat(fit.residualVariance()).isEmpty();
    assertThat(fit.tauSquared()).isEmpty();
    assertThat(fit.standings()).allSatisfy(s -> assertThat(s.score()).isEmpty());
  }

  @Test
  void anUnknownVarianceTakesTheTypicalOne() {
    Arms known = list(1, 2, 0, 0, 1, 0.1, 0, 1, 2, 0.3);
    Arms partly = list(1, 2, 0, 0, 1, 0.1, 0, 1, 2, NONE);
    NetworkFit whole = NetworkFitter.fit(known, FitOptions.of(VarianceMethod.NONE));
    NetworkFit filled =
        NetworkFitter.fit(partly, FitOptions.of(VarianceMethod.NONE).withTypicalVariance(0.3));
    assertThat(whole.errors()).isEqualTo(ErrorKnowledge.KNOWN);
    assertThat(filled.errors()).isEqualTo(ErrorKnowledge.MIXED);
    assertThat(filled.compare(0, 1)).isEqualTo(whole.compare(0, 1));
    assertThat(((EstimatedComparison) whole.compare(0, 1)).se().orElseThrow())
        .isCloseTo(Math.sqrt(0.4), within(1e-14));
  }

  @ParameterizedTest
  @EnumSource(PredictionRule.class)
  void predictionNeedsDegreesOfFreedom(PredictionRule rule) {
    // one degree of freedom: the second rule leaves none
    Arms arms = list(2, 2, 0, 0, 1, 0.1, 0, 1, 2, 0.1, 1, 0, 9, 0.1, 1, 1, 6, 0.1);
    NetworkFit fit =
        NetworkFitter.fit(
            arms, FitOptions.of(VarianceMethod.REML).conventional().withPredictionRule(rule));
    EstimatedComparison compared = (EstimatedComparison) fit.compare(0, 1);
    assertThat(compared.prediction(0.95).isPresent()).isEqualTo(rule == PredictionRule.Q_DF);
    assertThat(compared.interval(0.95)).isPresent();
  }

  @Test
  void aModelTwiceInATestIsRefused() {
    Arms arms = list(1, 2, 0, 0, 1, 0.1, 0, 1, 2, 0.1, 0, 1, 3, 0.1);
    assertThatThrownBy(() -> NetworkFitter.fit(arms, FitOptions.of(VarianceMethod.DL)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("Test 0 holds model 1 twice");
  }

  @Test
  void armsOutOfRangeAreRefused() {
    assertThatThrownBy(() -> list(1, 1, 0, 1, 1, 0.1)).hasMessageContaining("model 1");
    assertThatThrownBy(() -> list(1, 1, 1, 0, 1, 0.1)).hasMessageContaining("test 1");
    assertThatThrownBy(() -> list(1, 1, 0, 0, NONE, 0.1)).hasMessageContaining("result NaN");
    assertThatThrownBy(() -> list(1, 1, 0, 0, 1, -0.1)).hasMessageContaining("variance -0.1");
  }
}
