package org.griplore.query.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.griplore.query.statistics.Closeness.assertPrinted;
import static org.griplore.query.statistics.Closeness.assertRelative;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Hollander and Wolfe 1973, rounding first base: 22 runners, three ways. */
class RankConcordanceTest {
  private static final ReferenceCase ROUNDING = ReferenceCase.carried("hollander-wolfe-1973");

  private static double[][] times() {
    return ROUNDING.data().stream()
        .map(
            row ->
                new double[] {
                  Double.parseDouble(row.get("Round Out")),
                  Double.parseDouble(row.get("Narrow Angle")),
                  Double.parseDouble(row.get("Wide Angle"))
                })
        .toArray(double[][]::new);
  }

  @Test
  void agreementWithTies() {
    double[][] times = times();
    RankConcordance agreement = RankConcordance.of(times);
    int checked = 0;
    for (ReferenceCase.Expected e : ROUNDING.expected()) {
      double w = agreement.w();
      double actual =
          switch (e.quantity()) {
            case "n.items" -> agreement.models();
            case "m.raters" -> agreement.tests();
            case "rank.sum" -> agreement.rankSums()[Integer.parseInt(e.key1()) - 1];
            case "S" -> agreement.squares();
            case "tie.T" -> agreement.ties();
            case "W.tie.corrected" -> w;
            case "chi2", "friedman.chi2" -> agreement.friedman();
            case "chi2.p", "friedman.p" -> agreement.friedmanP();
            case "friedman.df" -> agreement.models() - 1;
            case "F.imandavenport" -> 21 * w / (1 - w);
            case "F.imandavenport.p" -> agreement.fisherP();
            case "mean.spearman" -> meanOverPairs(times, true);
            case "mean.kendall.tau.b" -> meanOverPairs(times, false);
            // Without the correction for ties, and Kendall's own degrees of freedom: not offered.
            case "W.uncorrected", "F.kendall", "F.kendall.df1", "F.kendall.df2", "F.kendall.p" ->
                Double.NaN;
            default -> throw new AssertionError(e.quantity());
          };
      if (!Double.isNaN(actual)) {
        assertRelative(e.quantity() + e.key1(), actual, e.value(), 1e-12);
        checked++;
      }
    }
    assertThat(checked).isEqualTo(17);
    for (ReferenceCase.Expected e : ROUNDING.published()) {
      assertPrinted(e.quantity(), agreement.friedman(), e.value(), e.decimals());
    }
  }

  /** Pairs of runners; both orders of three values, so neither is without spread. */
  private static double meanOverPairs(double[][] times, boolean spearman) {
    double sum = 0;
    int pairs = 0;
    for (int i = 0; i < times.length; i++) {
      for (int j = 0; j < i; j++) {
        var r =
            spearman
                ? RankCorrelation.spearman(times[i], times[j])
                : RankCorrelation.kendall(times[i], times[j]);
        sum += r.orElseThrow();
        pairs++;
      }
    }
    return sum / pairs;
  }

  @Test
  void perfectAndNoAgreement() {
    double[][] same = {{1, 2, 3, 4}, {10, 20, 30, 40}};
    assertThat(RankConcordance.of(same).w()).isEqualTo(1);
    assertThat(RankConcordance.of(same).fisherP()).isZero();
    double[][] opposite = {{1, 2, 3}, {3, 2, 1}};
    assertThat(RankConcordance.of(opposite).w()).isZero();
    assertThat(RankConcordance.of(opposite).friedmanP()).isEqualTo(1);
    assertThat(RankCorrelation.kendall(same[0], same[1])).hasValue(1.0);
    assertThat(RankCorrelation.spearman(opposite[0], opposite[1])).hasValue(-1.0);
    assertThat(RankCorrelation.midranks(new double[] {0.0, -0.0, 3, 1}))
        .containsExactly(1.5, 1.5, 4, 3);
  }

  /**
   * Exact distribution of S for three models, from counting all orders by hand: two tests agree in
   * full in 1 of 6, three tests in 1 of 36 (a worked count, no source). Chance of 9,999 shuffles
   * lies within four of its standard errors.
   */
  @Test
  void shufflesGiveTheExactChanceForFewTests() {
    assertChance(new double[][] {{1, 2, 3}, {1, 2, 3}}, 1 / 6.0);
    assertChance(new double[][] {{1, 2, 3}, {1, 2, 3}, {1, 2, 3}}, 1 / 36.0);
    // A tie for first in both: 3 orders of each, one in three puts the same model last.
    assertChance(new double[][] {{1, 1, 2}, {1, 1, 2}}, 1 / 3.0);
  }

  private static void assertChance(double[][] places, double exact) {
    double found = RankConcordance.of(places).shuffledP(new SplittableRandom(7));
    assertThat(found).isCloseTo(exact, within(4 * Math.sqrt(exact * (1 - exact) / 9_999)));
  }

  @Test
  void whatCannotBeRankedIsRefused() {
    double[] flat = {1, 1};
    assertThat(RankCorrelation.kendall(flat, new double[] {1, 2})).isEmpty();
    assertThat(RankCorrelation.spearman(flat, new double[] {1, 2})).isEmpty();
    assertThat(RankCorrelation.spearman(new double[0], new double[0])).isEmpty();
    assertThatIllegalArgumentException()
        .isThrownBy(() -> RankConcordance.of(new double[][] {{1, 1}, {2, 2}}));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> RankConcordance.of(new double[][] {{1, 2}}));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> RankConcordance.of(new double[][] {{1, 2}, {1, 2, 3}}));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> RankConcordance.of(new double[][] {{1, 2}, {1, Double.NaN}}));
  }
}
