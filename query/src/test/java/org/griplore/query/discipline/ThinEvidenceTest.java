package org.griplore.query.discipline;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.griplore.query.discipline.ThinArchive.Spreads;
import org.griplore.query.discipline.ThinCoverage.Rule;
import org.griplore.query.network.EstimatedComparison;
import org.griplore.query.network.ModelStanding;
import org.griplore.query.network.NetworkFit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Intervals of few tests, against the stated truth of simulated archives (seeds in {@link
 * ThinCoverage}).
 */
class ThinEvidenceTest {
  private static final double[] TAUS = {0, 1, 5};

  /** One cell over all heterogeneities: 1,200 archives of two tyres, 300 of six. */
  private static ThinCoverage cell(Rule rule, int tests, int tyres, Spreads spreads) {
    List<ThinCoverage> cells = new ArrayList<>();
    for (double tau : TAUS) {
      cells.add(ThinCoverage.of(rule, tests, tyres, spreads, tau, 8, tyres == 2 ? 400 : 100));
    }
    return ThinCoverage.together(cells);
  }

  @Tag("simulation")
  @ParameterizedTest(name = "{0} tests of {1} tyres, spreads {2}")
  @CsvSource({
    "2,2,NONE", "3,2,NONE", "4,2,NONE", "6,2,NONE", "10,2,NONE",
    "2,6,NONE", "3,6,NONE", "4,6,NONE", "6,6,NONE", "10,6,NONE",
    "2,2,EXACT", "3,2,EXACT", "4,2,EXACT", "6,2,EXACT", "10,2,EXACT",
    "2,6,EXACT", "3,6,EXACT", "4,6,EXACT", "6,6,EXACT", "10,6,EXACT",
    "2,2,FOUR_RUNS", "3,2,FOUR_RUNS", "4,2,FOUR_RUNS", "6,2,FOUR_RUNS", "10,2,FOUR_RUNS",
    "2,6,FOUR_RUNS", "3,6,FOUR_RUNS", "4,6,FOUR_RUNS", "6,6,FOUR_RUNS", "10,6,FOUR_RUNS",
  })
  void intervalsOfFewTestsHoldWhatTheySay(int tests, int tyres, Spreads spreads) {
    ThinCoverage cell = cell(Rule.SHARED, tests, tyres, spreads);
    assertThat(cell.given()).isEqualTo(cell.asked());
    assertThat(cell.share()).as("%s", cell).isBetween(0.93, 0.97);
  }

  @Tag("simulation")
  @Test
  void theyHoldItWhereHeterogeneityWasEstimatedAsZero() {
    List<ThinCoverage> cells = new ArrayList<>();
    for (int tyres : new int[] {2, 6}) {
      for (int tests : new int[] {2, 3, 4, 6}) {
        cells.add(cell(Rule.SHARED, tests, tyres, Spreads.EXACT));
      }
    }
    ThinCoverage all = ThinCoverage.together(cells);
    assertThat(all.zeroGiven()).isGreaterThan(2000);
    assertThat(all.shareAtZero()).as("%s", all).isBetween(0.925, 0.97);
  }

  /** What the rule is for: the usual convention fails this badly in the same archives. */
  @Tag("simulation")
  @Test
  void theUsualConventionIsTooShort() {
    assertThat(cell(Rule.NORMAL, 2, 2, Spreads.EXACT).share()).isLessThan(0.9);
    assertThat(cell(Rule.NORMAL, 1, 2, Spreads.EXACT).share()).isLessThan(0.7);
  }

  @ParameterizedTest
  @EnumSource(Spreads.class)
  void oneTestGivesNoInterval(Spreads spreads) {
    NetworkFit fit = ThinArchive.of(1, 6, spreads, 1, 8, 1).fit();
    EstimatedComparison compared = (EstimatedComparison) fit.compare(1, 0);
    assertThat(compared.interval(0.95)).isEmpty();
    assertThat(compared.prediction(0.95)).isEmpty();
    assertThat(fit.standings()).allMatch(s -> s.score().isEmpty());
  }

  /** Two tyres: the P-score is the chance that goes with the interval. */
  @ParameterizedTest
  @EnumSource(Spreads.class)
  void aScoreNeverContradictsItsInterval(Spreads spreads) {
    for (long seed = 1; seed <= 40; seed++) {
      NetworkFit fit = ThinArchive.of(3, 2, spreads, 1, 8, seed).fit();
      EstimatedComparison compared = (EstimatedComparison) fit.compare(1, 0);
      boolean holdsZero = compared.interval(0.95).orElseThrow().contains(0);
      for (ModelStanding standing : fit.standings()) {
        double score = standing.score().orElseThrow();
        assertThat(Math.max(score, 1 - score) < 0.975).isEqualTo(holdsZero);
      }
    }
  }
}
