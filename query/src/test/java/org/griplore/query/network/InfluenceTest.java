package org.griplore.query.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.griplore.query.bench.GeneratedNetwork;
import org.griplore.query.bench.GeneratedNetwork.Time;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What an estimate hangs on, against fits of the rest with the same variances. */
class InfluenceTest {

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4})
  void aTestsRemovalIsTheRefitWithoutIt(long seed) {
    Arms arms = GeneratedNetwork.of(14, 16, 3, Time.LOCAL, seed).arms();
    NetworkFit fit = NetworkFitter.fit(arms, FitOptions.of(VarianceMethod.REML));
    Influence influence = fit.influence();
    int apart = 0;
    for (int test = 0; test < 16; test++) {
      int its = test;
      NetworkFit rest = fit.within((t, model) -> t != its);
      for (int a = 0; a < 14; a++) {
        for (int b = 0; b < a; b++) {
          if (fit.compare(a, b) instanceof EstimatedComparison) {
            apart += same(influence.withoutTest(a, b, test), rest.compare(a, b));
          }
        }
      }
    }
    assertThat(apart).as("removals that leave nothing").isGreaterThan(0);
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4})
  void aModelsRemovalIsTheRefitWithoutIt(long seed) {
    Arms arms = GeneratedNetwork.of(10, 16, 3, Time.NONE, seed).arms();
    NetworkFit fit = NetworkFitter.fit(arms, FitOptions.of(VarianceMethod.REML));
    Influence influence = fit.influence();
    for (int model = 2; model < 10; model++) {
      int its = model;
      NetworkFit rest = fit.within((t, m) -> m != its);
      if (fit.compare(0, 1) instanceof EstimatedComparison) {
        same(influence.withoutModel(0, 1, model), rest.compare(0, 1));
      }
    }
  }

  /** 1 when both say that nothing is left. */
  private static int same(Removal removal, ModelComparison refit) {
    if (removal.after().isEmpty()) {
      assertThat(refit).isInstanceOf(NotCompared.class);
      return 1;
    }
    EstimatedComparison compared = (EstimatedComparison) refit;
    Estimate after = removal.after().get();
    assertThat(after.value()).isCloseTo(compared.difference(), within(1e-9));
    assertThat(after.se().orElseThrow()).isCloseTo(compared.se().orElseThrow(), within(1e-9));
    assertThat(after.interval(0.95)).isPresent();
    return 0;
  }

  @ParameterizedTest
  @EnumSource(Time.class)
  void theStrongestTestMovesMost(Time time) {
    Arms arms = GeneratedNetwork.of(12, 25, 4, time, 3).arms();
    NetworkFit fit = NetworkFitter.fit(arms, FitOptions.of(VarianceMethod.REML));
    Influence influence = fit.influence();
    for (int a = 1; a < 12; a++) {
      if (!(fit.compare(a, a - 1) instanceof EstimatedComparison)) {
        continue;
      }
      Influence.TestRemoval strongest = influence.strongestTest(a, a - 1).orElseThrow();
      double most = Math.abs(strongest.removal().change().orElse(1e9));
      for (int test = 0; test < 25; test++) {
        double change = influence.withoutTest(a, a - 1, test).change().orElse(1e9);
        assertThat(Math.abs(change)).isLessThanOrEqualTo(most + 1e-12);
      }
      double ofModel =
          Math.abs(influence.strongestModel(a, a - 1).orElseThrow().removal().change().orElse(1e9));
      for (int model = 0; model < 12; model++) {
        if (model != a && model != a - 1) {
          double change = influence.withoutModel(a, a - 1, model).change().orElse(1e9);
          assertThat(Math.abs(change)).isLessThanOrEqualTo(ofModel + 1e-12);
        }
      }
    }
  }

  /** Each effect less the mean, against the refit's. */
  @Test
  void anEffectsStrongestTestIsTheRefitWithoutIt() {
    Arms arms = GeneratedNetwork.of(8, 20, 4, Time.NONE, 9).arms();
    NetworkFit fit = NetworkFitter.fit(arms, FitOptions.of(VarianceMethod.REML));
    for (int m = 0; m < 8; m++) {
      Influence.TestRemoval strongest = fit.influence().strongestTest(m).orElseThrow();
      Estimate refit = fit.within((t, model) -> t != strongest.test()).effect(m).orElseThrow();
      Estimate after = strongest.removal().after().orElseThrow();
      assertThat(after.value()).isCloseTo(refit.value(), within(1e-9));
      assertThat(after.se().orElseThrow()).isCloseTo(refit.se().orElseThrow(), within(1e-9));
    }
  }

  @Test
  void aResultThatFitsNoOtherIsFound() {
    Arms plain = GeneratedNetwork.of(8, 20, 4, Time.NONE, 9).arms();
    NetworkFit fit = NetworkFitter.fit(plain, FitOptions.of(VarianceMethod.REML));
    assertThat(fit.influence().misfits(0.05)).isEmpty();
    ArmList list = new ArmList();
    for (int i = 0; i < plain.size(); i++) {
      double slip = plain.test(i) == 7 && plain.model(i) == plain.model(7 * 4) ? 0.3 : 0;
      list.add(plain.test(i), plain.model(i), plain.y(i) + slip, plain.variance(i));
    }
    NetworkFit slipped = NetworkFitter.fit(list.build(20, 8), FitOptions.of(VarianceMethod.REML));
    Influence.Misfit worst = slipped.influence().misfits(0.05).get(0);
    assertThat(worst.test()).isEqualTo(7);
    assertThat(worst.model()).isEqualTo(plain.model(7 * 4));
    assertThat(worst.studentised()).isPositive();
  }
}
