package org.griplore.query.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.griplore.query.bench.GeneratedNetwork;
import org.griplore.query.bench.GeneratedNetwork.Time;
import org.griplore.query.solver.EnvelopeCholesky;
import org.griplore.query.solver.SymmetricInverse;
import org.griplore.query.statistics.Tails;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What only large networks take: many blocks, a stochastic start, an inverse kept in part. */
class LargePathTest {

  /** A network whose order, envelope and blocks are all in play. */
  private record Setting(TestRows rows, Components components, Laplacian laplacian, int df) {
    static Setting of(Arms arms) {
      TestRows rows = new TestRows(arms);
      Components components = new Components(rows, arms.models());
      Laplacian laplacian = new Laplacian(rows, ModelOrder.of(rows, components, arms.models()));
      int df = rows.arms - rows.tests - laplacian.size() + components.count();
      return new Setting(rows, components, laplacian, df);
    }

    double[] weights() {
      return GlsPoint.weights(rows.variance, 1e-4);
    }
  }

  @ParameterizedTest
  @EnumSource(Time.class)
  void theInverseTimesTheMatrixIsTheIdentity(Time time) {
    Setting s = Setting.of(GeneratedNetwork.of(500, 600, 6, time, 3).arms());
    EnvelopeCholesky factor = s.laplacian.factor(s.weights());
    SymmetricInverse whole = factor.inverse(true);
    SymmetricInverse component = factor.inverse(false);
    int n = s.laplacian.size();
    double[] out = new double[n];
    double[] column = new double[n];
    double[] sums = s.laplacian.testWeights(s.weights());
    for (int k : new Random(5).ints(20, 0, n).toArray()) {
      if (s.laplacian.order.grounded[k]) {
        continue;
      }
      for (int i = 0; i < n; i++) {
        column[i] = s.laplacian.order.grounded[i] ? 0 : whole.get(i, k);
        if (component.holds(i, k)) {
          assertThat(component.get(i, k)).isCloseTo(whole.get(i, k), within(1e-12));
        }
      }
      s.laplacian.apply(s.weights(), sums, column, out);
      for (int i = 0; i < n; i++) {
        if (!s.laplacian.order.grounded[i]) {
          assertThat(out[i]).isCloseTo(i == k ? 1 : 0, within(1e-9));
        }
      }
    }
  }

  @Test
  void anInverseKeptInPartGivesTheSameVariances() {
    Setting s = Setting.of(GeneratedNetwork.of(500, 600, 6, Time.LOCAL, 3).arms());
    EnvelopeCholesky factor = s.laplacian.factor(s.weights());
    ModelOrder order = s.laplacian.order;
    EffectCovariance whole = new EffectCovariance(order, s.components, factor, null, 1);
    EffectCovariance component = new EffectCovariance(order, s.components, factor, null, 1, 0);
    Random random = new Random(9);
    int first = s.components.ofModel[order.modelAt[0]];
    for (int k = 0; k < 50; k++) {
      int p = random.nextInt(s.components.size[first]);
      int q = random.nextInt(s.components.size[first]);
      double wanted = whole.ofDifference(p, q);
      assertThat(component.ofDifference(p, q)).isCloseTo(wanted, within(1e-9 * wanted + 1e-15));
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void aStochasticStartEndsAtTheSameRoot(long seed) {
    Setting s = Setting.of(GeneratedNetwork.of(60, 80, 5, Time.NONE, seed).arms());
    double[] v = s.rows.variance;
    HeterogeneityEstimator.Estimate exact =
        new HeterogeneityEstimator(s.laplacian, s.components, v, s.df)
            .estimate(VarianceMethod.REML);
    HeterogeneityEstimator.Estimate stochastic =
        new HeterogeneityEstimator(s.laplacian, s.components, v, s.df, 0)
            .estimate(VarianceMethod.REML);
    assertThat(exact.tauSquared()).isPositive();
    assertThat(stochastic.tauSquared())
        .isCloseTo(exact.tauSquared(), within(1e-9 * exact.tauSquared()));
    assertThat(stochastic.q()).isCloseTo(exact.q(), within(1e-8 * exact.q()));
  }

  @Test
  void aStochasticStartFindsThatThereIsNoHeterogeneity() {
    GeneratedNetwork g = GeneratedNetwork.of(40, 60, 5, Time.NONE, 1);
    ArmList quiet = new ArmList();
    for (int i = 0; i < g.arms().size(); i++) {
      // errors stated ten times too large in variance leave nothing for a heterogeneity
      quiet.add(
          g.arms().test(i), g.arms().model(i), g.arms().y(i), 10 * g.arms().variance(i) + 0.01);
    }
    Setting s = Setting.of(quiet.build(60, 40));
    assertThat(
            new HeterogeneityEstimator(s.laplacian, s.components, s.rows.variance, s.df, 0)
                .estimate(VarianceMethod.REML)
                .tauSquared())
        .isZero();
  }

  /** A model that stands in every test must not widen the band of the others. */
  @Test
  void aReferenceSetInEveryTestKeepsTheBandNarrow() {
    GeneratedNetwork g = GeneratedNetwork.of(401, 500, 4, Time.LOCAL, 2);
    ArmList arms = new ArmList();
    for (int i = 0; i < g.arms().size(); i++) {
      arms.add(g.arms().test(i), g.arms().model(i), g.arms().y(i), g.arms().variance(i));
    }
    for (int t = 0; t < 500; t++) {
      arms.add(t, 401, 0.1 * t, 1e-4);
    }
    double without = Setting.of(g.arms()).laplacian.order.work;
    double with = Setting.of(arms.build(500, 402)).laplacian.order.work;
    assertThat(with).isLessThan(1.2 * without);
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2})
  void theTableOfTheNormalDistributionIsExactEnough(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < 20_000; i++) {
      double z = 12 * (random.nextDouble() - 0.5) * 2;
      assertThat(NormalTable.below(z)).isCloseTo(Tails.normalAbove(-z), within(1e-13));
    }
  }
}
