package org.griplore.query.network;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.griplore.query.bench.GeneratedNetwork;
import org.griplore.query.bench.GeneratedNetwork.Time;
import org.griplore.query.statistics.JointErrors;
import org.griplore.query.statistics.RankIntervals;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RankIntervalTest {
  private static final double LEVEL = 0.95;

  /**
   * Simultaneous: in at least 95 of 100 archives every true rank lies in its interval; 300
   * archives, so two standard errors below is 92.5.
   */
  @Tag("simulation")
  @ParameterizedTest(name = "{0} models, {1} tests")
  @CsvSource({"12,25", "6,3", "20,12"})
  void allTrueRanksLieInTheirIntervals(int models, int tests) {
    int all = 0;
    int held = 0;
    double sure = 0;
    int first = 0;
    for (long seed = 1; seed <= 300; seed++) {
      GeneratedNetwork network = GeneratedNetwork.of(models, tests, 5, Time.NONE, 500 + seed);
      NetworkFit fit = NetworkFitter.fit(network.arms(), FitOptions.of(VarianceMethod.REML));
      int[] of = IntStream.range(0, models).filter(m -> fit.component(m).orElse(-1) == 0).toArray();
      RankIntervals ranks = fit.ranks(of, LEVEL, new SplittableRandom(seed)).orElseThrow();
      boolean every = true;
      int best = 0;
      for (int i = 0; i < of.length; i++) {
        int rank = 1;
        for (int other : of) {
          rank += network.truth()[other] > network.truth()[of[i]] ? 1 : 0;
        }
        every &= ranks.low(i) <= rank && rank <= ranks.high(i);
        best =
            fit.effect(of[i]).orElseThrow().value() > fit.effect(of[best]).orElseThrow().value()
                ? i
                : best;
      }
      boolean truly = true;
      for (int other : of) {
        truly &= network.truth()[other] <= network.truth()[of[best]];
      }
      sure += ranks.firstIsFirst();
      first += truly ? 1 : 0;
      held += every ? 1 : 0;
      all++;
    }
    assertThat((double) held / all).as("%d of %d", held, all).isGreaterThanOrEqualTo(0.925);
    // said on average no more often than true: errors are drawn around estimates, flat priors
    assertThat(sure / all).isBetween((double) first / all - 0.15, (double) first / all + 0.15);
  }

  /** Far apart: each has one rank. All alike: each has all. */
  @Test
  void ranksAreAsSureAsTheDifferences() {
    double[] apart = {0, 10, 20, 30};
    RankIntervals sure = of(apart, 1);
    for (int i = 0; i < 4; i++) {
      assertThat(sure.low(i)).isEqualTo(4 - i);
      assertThat(sure.high(i)).isEqualTo(4 - i);
    }
    assertThat(sure.firstIsFirst()).isGreaterThan(0.999);
    RankIntervals open = of(new double[] {0, 0.1, 0.2, 0.3}, 1);
    for (int i = 0; i < 4; i++) {
      assertThat(open.low(i)).isEqualTo(1);
      assertThat(open.high(i)).isEqualTo(4);
    }
    assertThat(of(new double[] {3}, 1).high(0)).isEqualTo(1);
    assertThat(of(new double[] {1, 2}, 0).low(0)).isEqualTo(2);
  }

  private static RankIntervals of(double[] values, double sd) {
    RankIntervals.PairSpread spread = (i, j) -> i == j ? 0 : sd * Math.sqrt(2);
    return RankIntervals.of(
        values,
        spread,
        JointErrors.of(values.length, spread),
        Double.POSITIVE_INFINITY,
        LEVEL,
        new SplittableRandom(1));
  }

  /** Draws by the models' own covariance and by the whole fit's factor tell the same. */
  @Test
  void bothWaysOfDrawingAgree() {
    NetworkFit fit =
        NetworkFitter.fit(
            GeneratedNetwork.of(310, 600, 6, Time.NONE, 4).arms(),
            FitOptions.of(VarianceMethod.REML));
    int[] most = IntStream.range(0, 300).toArray();
    int[] all = IntStream.range(0, 310).toArray();
    RankIntervals some = fit.ranks(most, LEVEL, new SplittableRandom(1)).orElseThrow();
    RankIntervals every = fit.ranks(all, LEVEL, new SplittableRandom(1)).orElseThrow();
    double some1 = 0;
    double every1 = 0;
    for (int i = 0; i < 300; i++) {
      some1 += some.high(i) - some.low(i);
      every1 += every.high(i) - every.low(i);
    }
    assertThat(every1 / some1).isBetween(0.95, 1.12);
  }
}
