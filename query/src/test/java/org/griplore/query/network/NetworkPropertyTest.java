package org.griplore.query.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.griplore.query.bench.GeneratedNetwork;
import org.griplore.query.bench.GeneratedNetwork.Time;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What must hold of any network, on seeded ones. */
class NetworkPropertyTest {

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void aConstantAddedToATestLeavesContrastsAlone(long seed) {
    Arms arms = GeneratedNetwork.of(15, 20, 4, Time.LOCAL, seed).arms();
    Random random = new Random(seed);
    double[] shift = random.doubles(20, -5, 5).toArray();
    assertSame(arms, mapped(arms, i -> arms.y(i) + shift[arms.test(i)], 1), 1, 1e-7);
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void theUnitScalesEffectsAndErrors(long seed) {
    Arms arms = GeneratedNetwork.of(15, 20, 4, Time.LOCAL, seed).arms();
    assertSame(arms, mapped(arms, i -> 100 * arms.y(i), 1e4), 100, 1e-7);
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void theOrderOfRowsChangesNothing(long seed) {
    Arms arms = GeneratedNetwork.of(15, 20, 4, Time.NONE, seed).arms();
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < arms.size(); i++) {
      order.add(i);
    }
    Collections.shuffle(order, new Random(seed));
    ArmList shuffled = new ArmList();
    order.forEach(i -> shuffled.add(arms.test(i), arms.model(i), arms.y(i), arms.variance(i)));
    NetworkFit one = NetworkFitter.fit(arms, FitOptions.of(VarianceMethod.REML));
    NetworkFit two = NetworkFitter.fit(shuffled.build(20, 15), FitOptions.of(VarianceMethod.REML));
    assertThat(two.tauSquared()).isEqualTo(one.tauSquared());
    assertThat(two.standings()).isEqualTo(one.standings());
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3})
  void scoresOfAPartAverageOneHalf(long seed) {
    Arms arms = GeneratedNetwork.of(30, 25, 4, Time.LOCAL, seed).arms();
    NetworkFit fit = NetworkFitter.fit(arms, FitOptions.of(VarianceMethod.DL));
    for (int component = 0; component < fit.components(); component++) {
      int wanted = component;
      assertThat(
              fit.standings().stream()
                  .filter(s -> s.component() == wanted)
                  .mapToDouble(s -> s.score().orElseThrow())
                  .average()
                  .orElseThrow())
          .isCloseTo(0.5, within(1e-12));
    }
  }

  /** Normal equations over tests and models at once, solved by pseudo-inverse. */
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4})
  void theEliminatedSystemIsTheWholeOne(long seed) {
    int models = 12;
    Arms arms = GeneratedNetwork.of(models, 14, 3, Time.LOCAL, seed).arms();
    NetworkFit fit = NetworkFitter.fit(arms, FitOptions.of(VarianceMethod.REML));
    double t = fit.tauSquared().orElseThrow();
    int columns = arms.tests() + models;
    DMatrixRMaj x = new DMatrixRMaj(arms.size(), columns);
    DMatrixRMaj wx = new DMatrixRMaj(arms.size(), columns);
    DMatrixRMaj wy = new DMatrixRMaj(arms.size(), 1);
    for (int i = 0; i < arms.size(); i++) {
      double w = 1 / (arms.variance(i) + t);
      for (int column : new int[] {arms.test(i), arms.tests() + arms.model(i)}) {
        x.set(i, column, 1);
        wx.set(i, column, w);
      }
      wy.set(i, 0, w * arms.y(i));
    }
    DMatrixRMaj information = new DMatrixRMaj(columns, columns);
    CommonOps_DDRM.multTransA(x, wx, information);
    DMatrixRMaj covariance = new DMatrixRMaj(columns, columns);
    CommonOps_DDRM.pinv(information, covariance);
    DMatrixRMaj right = new DMatrixRMaj(columns, 1);
    CommonOps_DDRM.multTransA(x, wy, right);
    DMatrixRMaj solution = new DMatrixRMaj(columns, 1);
    CommonOps_DDRM.mult(covariance, right, solution);
    double quadratic = 0;
    double trace = 0;
    DMatrixRMaj half = new DMatrixRMaj(arms.size(), columns);
    CommonOps_DDRM.mult(wx, covariance, half);
    for (int i = 0; i < arms.size(); i++) {
      double w = 1 / (arms.variance(i) + t);
      int a = arms.test(i);
      int b = arms.tests() + arms.model(i);
      double py = w * (arms.y(i) - solution.get(a) - solution.get(b));
      quadratic += py * py;
      trace += w - w * (half.get(i, a) + half.get(i, b));
    }
    if (t > 0) {
      assertThat(quadratic).isCloseTo(trace, within(1e-8 * trace));
    } else {
      assertThat(quadratic).isLessThanOrEqualTo(trace * (1 + 1e-9));
    }
    for (int a = 0; a < models; a++) {
      for (int b = 0; b < a; b++) {
        if (fit.compare(a, b) instanceof EstimatedComparison c) {
          int i = arms.tests() + a;
          int j = arms.tests() + b;
          double variance = covariance.get(i, i) + covariance.get(j, j) - 2 * covariance.get(i, j);
          assertThat(c.difference()).isCloseTo(solution.get(i) - solution.get(j), within(1e-9));
          assertThat(c.se().orElseThrow())
              .isCloseTo(Math.sqrt(variance), within(1e-8 * Math.sqrt(variance)));
        }
      }
    }
  }

  @ParameterizedTest
  @EnumSource(Time.class)
  void conjugateGradientsGiveTheSameEffects(Time time) {
    Arms arms = GeneratedNetwork.of(300, 400, 6, time, 5).arms();
    NetworkFit fit = NetworkFitter.fit(arms, FitOptions.of(VarianceMethod.NONE));
    NetworkEstimates estimates = NetworkEstimates.of(arms, OptionalDouble.empty());
    for (int m = 0; m < 300; m++) {
      assertThat(fit.effect(m).isPresent()).isEqualTo(estimates.effect(m).isPresent());
      if (fit.effect(m).isPresent()) {
        assertThat(estimates.effect(m).orElseThrow())
            .isCloseTo(fit.effect(m).orElseThrow().value(), within(1e-10));
      }
    }
  }

  @Test
  void aSingleCombinationIsTheComparison() {
    Arms arms = GeneratedNetwork.of(15, 20, 4, Time.LOCAL, 3).arms();
    NetworkFit fit = NetworkFitter.fit(arms, FitOptions.of(VarianceMethod.REML));
    Estimate e = fit.combination(new int[] {4, 7}, new double[] {1, -1}).orElseThrow();
    EstimatedComparison c = (EstimatedComparison) fit.compare(4, 7);
    assertThat(e.value()).isCloseTo(c.difference(), within(1e-14));
    assertThat(e.se().orElseThrow()).isCloseTo(c.se().orElseThrow(), within(1e-12));
  }

  /** Expected: the truth inside the 95 % interval in 92 to 98 of 100 contrasts. */
  @ParameterizedTest
  @EnumSource(
      value = VarianceMethod.class,
      names = {"REML", "DL"})
  void intervalsCoverTheTruth(VarianceMethod method) {
    int inside = 0;
    int all = 0;
    for (long seed = 1; seed <= 300; seed++) {
      GeneratedNetwork g = GeneratedNetwork.of(12, 25, 4, Time.NONE, 1_000 + seed);
      NetworkFit fit = NetworkFitter.fit(g.arms(), FitOptions.of(method));
      for (int m = 1; m < 12; m++) {
        EstimatedComparison c = (EstimatedComparison) fit.compare(m, m - 1);
        double truth = g.truth()[m] - g.truth()[m - 1];
        inside += c.interval(0.95).orElseThrow().contains(truth) ? 1 : 0;
        all++;
      }
    }
    assertThat((double) inside / all).as("%d of %d", inside, all).isBetween(0.92, 0.98);
  }

  private static Arms mapped(
      Arms arms, java.util.function.IntToDoubleFunction y, double varianceFactor) {
    ArmList out = new ArmList();
    for (int i = 0; i < arms.size(); i++) {
      out.add(arms.test(i), arms.model(i), y.applyAsDouble(i), varianceFactor * arms.variance(i));
    }
    return out.build(arms.tests(), arms.models());
  }

  private static void assertSame(Arms before, Arms after, double factor, double relative) {
    for (VarianceMethod method : VarianceMethod.values()) {
      NetworkFit one = NetworkFitter.fit(before, FitOptions.of(method));
      NetworkFit two = NetworkFitter.fit(after, FitOptions.of(method));
      for (int a = 0; a < before.models(); a++) {
        for (int b = 0; b < a; b++) {
          if (one.compare(a, b) instanceof EstimatedComparison c) {
            EstimatedComparison d = (EstimatedComparison) two.compare(a, b);
            double se = factor * c.se().orElseThrow();
            assertThat(d.difference()).isCloseTo(factor * c.difference(), within(relative * se));
            assertThat(d.se().orElseThrow()).isCloseTo(se, within(relative * se));
          }
        }
      }
    }
  }
}
