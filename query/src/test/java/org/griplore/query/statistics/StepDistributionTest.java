package org.griplore.query.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.griplore.query.statistics.Closeness.assertRelative;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StepDistributionTest {
  /** Thirteen log risk ratios (Colditz et al. 1994), shrunk by a general meta-analysis package. */
  @Test
  void shrunkEstimatesAgree() {
    ReferenceCase trials = ReferenceCase.carried("colditz-1994-shrinkage");
    double[] tpos = trials.column("tpos");
    double[] tneg = trials.column("tneg");
    double[] cpos = trials.column("cpos");
    double[] cneg = trials.column("cneg");
    double[] log = new double[13];
    double[] se = new double[13];
    for (int i = 0; i < 13; i++) {
      double treated = tpos[i] + tneg[i];
      double control = cpos[i] + cneg[i];
      log[i] = Math.log(tpos[i] / treated / (cpos[i] / control));
      se[i] = Math.sqrt(1 / tpos[i] - 1 / treated + 1 / cpos[i] - 1 / control);
    }
    StepDistribution reml = StepDistribution.of(log, se).orElseThrow();
    StepDistribution moments = StepDistribution.of(log, se, false).orElseThrow();
    for (ReferenceCase.Expected e : trials.expected()) {
      StepDistribution of = e.key1().equals("REML") ? reml : moments;
      int trial = e.key2().isEmpty() ? 0 : Integer.parseInt(e.key2()) - 1;
      double actual =
          switch (e.quantity()) {
            case "mu" -> of.mean();
            case "se" -> of.meanSe();
            case "tau2" -> of.spread() * of.spread();
            case "blup" -> of.shrunk(trial);
            case "blup.se" -> of.shrunkSe(trial);
            default -> throw new AssertionError(e.quantity());
          };
      // The package's REML stops at 1e-6 of the variance.
      assertRelative(e.toString(), actual, e.value(), e.key1().equals("REML") ? 2e-6 : 1e-10);
    }
  }

  /** Equal errors: REML is the sample variance less the error variance. */
  @Test
  void equalErrorsHaveAClosedForm() {
    double[] steps = {1, 2, 4, 7, 11};
    double[] se = {0.5, 0.5, 0.5, 0.5, 0.5};
    StepDistribution distribution = StepDistribution.of(steps, se).orElseThrow();
    double variance = Summary.of(steps).variance();
    assertRelative("tau2", Math.pow(distribution.spread(), 2), variance - 0.25, 1e-10);
    assertRelative("mean", distribution.mean(), 5, 1e-14);
    assertRelative("trust", distribution.trust(0), (variance - 0.25) / variance, 1e-10);
    assertThat(distribution.rawPercentile(4)).isEqualTo(1);
    assertThat(distribution.rawPercentile(2)).isEqualTo(0.5);
    assertThat(distribution.percentile(4)).isBetween(0.9, 0.99);
    assertThat(distribution.fewSteps()).isTrue();
    assertThat(distribution.next(0.95).contains(5)).isTrue();
  }

  @Test
  void stepsThatCannotBeToldApart() {
    double[] steps = {0.12, 0.08, 0.15, 0.1};
    double[] se = {0.2, 0.3, 0.25, 0.17};
    StepDistribution distribution = StepDistribution.of(steps, se).orElseThrow();
    assertThat(distribution.spread()).isZero();
    assertThat(distribution.percentile(2)).isEqualTo(0.5);
    assertThat(distribution.shrunk(2)).isEqualTo(distribution.mean());
    double[] same = {1, 1, 1};
    double[] tiny = {1e-9, 1e-9, 1e-9};
    assertThat(StepDistribution.of(same, tiny).orElseThrow().spread()).isZero();
    assertThat(StepDistribution.of(same, tiny).orElseThrow().rawPercentile(0)).isEqualTo(0.5);
  }

  @Test
  void tooFewStepsSayNothing() {
    double[] two = {1, 2};
    assertThat(StepDistribution.of(two, two)).isEmpty();
    assertThat(StepDistribution.of(new double[0], new double[0])).isEmpty();
    double[] three = {1, 2, 3};
    assertThatIllegalArgumentException()
        .isThrownBy(() -> StepDistribution.of(three, new double[] {1, 0, 1}));
    assertThatIllegalArgumentException().isThrownBy(() -> StepDistribution.of(three, two));
  }

  /**
   * Percentiles of true steps are uniform: their mean is a half and thin evidence is not extreme.
   */
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {51, 52})
  void percentilesFollowTheTruth(long seed) {
    Random random = new Random(seed);
    int n = 400;
    double[] truth = new double[n];
    double[] steps = new double[n];
    double[] se = new double[n];
    for (int i = 0; i < n; i++) {
      truth[i] = 2 + 1.5 * random.nextGaussian();
      se[i] = i % 2 == 0 ? 0.3 : 3;
      steps[i] = truth[i] + se[i] * random.nextGaussian();
    }
    StepDistribution distribution = StepDistribution.of(steps, se).orElseThrow();
    assertThat(distribution.mean()).isCloseTo(2, within(0.35));
    assertThat(distribution.spread()).isCloseTo(1.5, within(0.25));
    double rawError = 0;
    double shrunkError = 0;
    for (int i = 0; i < n; i++) {
      rawError += Math.pow(steps[i] - truth[i], 2);
      shrunkError += Math.pow(distribution.shrunk(i) - truth[i], 2);
      if (i % 2 == 1) {
        assertThat(distribution.percentile(i)).isBetween(0.02, 0.98);
      }
    }
    assertThat(shrunkError).isLessThan(0.4 * rawError);
  }
}
