package org.griplore.query.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.hipparchus.special.Gamma;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SharedVarianceTest {
  @ParameterizedTest
  @ValueSource(doubles = {1e-4, 0.01, 0.3, 1, 4, 50})
  void theInverseOfTrigammaIsOne(double x) {
    assertThat(Gamma.trigamma(SharedVariance.trigammaInverse(x))).isCloseTo(x, within(1e-8 * x));
  }

  /** Against the distribution they are drawn from: inverse chi-squared around 2. */
  @ParameterizedTest
  @ValueSource(doubles = {4, 10, 30})
  void manyVariancesTellTheirDistribution(double df) {
    SplittableRandom random = new SplittableRandom(7);
    double[] variances = new double[4000];
    double[] dfs = new double[variances.length];
    Arrays.fill(dfs, 5);
    for (int i = 0; i < variances.length; i++) {
      double truth = 2 * df / chiSquared((int) df, random);
      variances[i] = truth * chiSquared(5, random) / 5;
    }
    SharedVariance shared = SharedVariance.of(variances, dfs).orElseThrow();
    assertThat(shared.df()).isCloseTo(df, within(0.2 * df));
    assertThat(shared.variance()).isCloseTo(2, within(0.1));
  }

  @Test
  void fewOrNoneShareNothing() {
    assertThat(SharedVariance.of(new double[] {1, 2}, new double[] {3, 3})).isEmpty();
    assertThat(SharedVariance.of(new double[] {1, 2, 0}, new double[] {3, 3, 3})).isEmpty();
  }

  /** Equal variances say no more than their own degrees of freedom together. */
  @Test
  void theyAreWorthNoMoreThanTheirSum() {
    SharedVariance shared =
        SharedVariance.of(new double[] {1, 1, 1}, new double[] {1, 1, 1}).orElseThrow();
    assertThat(shared.df()).isLessThanOrEqualTo(3);
    assertThat(shared.drawn(5, 2))
        .isCloseTo((shared.df() * shared.variance() + 10) / (shared.df() + 2), within(1e-12));
  }

  private static double chiSquared(int df, SplittableRandom random) {
    double sum = 0;
    for (int i = 0; i < df; i++) {
      double z = random.nextGaussian();
      sum += z * z;
    }
    return sum;
  }
}
