package org.griplore.ingest.reduce;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.griplore.ingest.reduce.sample.GrubbsRule;
import org.griplore.ingest.reduce.sample.StudentTail;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GrubbsRuleTest {
  /** Two-sided points of Student's t as every table has them (5 % and 1 %). */
  @ParameterizedTest
  @CsvSource({
    "12.706, 1, 0.05", "4.303, 2, 0.05", "3.182, 3, 0.05", "2.776, 4, 0.05", "2.571, 5, 0.05",
    "2.228, 10, 0.05", "2.131, 15, 0.05", "2.042, 30, 0.05", "63.657, 1, 0.01", "9.925, 2, 0.01",
    "5.841, 3, 0.01", "3.169, 10, 0.01", "2.750, 30, 0.01"
  })
  void tailsOfStudentsT(double t, int freedom, double p) {
    assertThat(StudentTail.twoSided(t, freedom)).isCloseTo(p, within(p * 2e-3));
    assertThat(StudentTail.twoSided(-t, freedom)).isEqualTo(StudentTail.twoSided(t, freedom));
    assertThat(StudentTail.twoSided(0, freedom)).isCloseTo(1, within(1e-15));
    assertThat(StudentTail.twoSided(Double.POSITIVE_INFINITY, freedom)).isCloseTo(0, within(1e-15));
  }

  /**
   * Critical values of Grubbs' two-sided test, as in the tables of Grubbs and Beck 1972,
   * Technometrics 14:847, and of ISO 5725-2 (from memory, check the official text).
   */
  @ParameterizedTest
  @CsvSource({
    "4, 1.481, 0.05",
    "5, 1.715, 0.05",
    "6, 1.887, 0.05",
    "8, 2.126, 0.05",
    "10, 2.290, 0.05",
    "5, 1.764, 0.01",
    "6, 1.973, 0.01",
    "8, 2.274, 0.01",
    "10, 2.482, 0.01"
  })
  void criticalValues(int n, double g, double p) {
    // some tables cut the third decimal instead of rounding it
    double half = 0.0011;
    assertThat(GrubbsRule.probability(g - half, n)).isGreaterThan(p);
    assertThat(GrubbsRule.probability(g + half, n)).isLessThan(p);
  }

  @Test
  void aFarRunIsFlaggedAndStaysIn() {
    LogSketch log =
        WetGripCycleTest.cycle().stops("T4", 80, 20, 30.10, 30.42, 30.25, 30.05, 33.33, 30.20);
    SetStatistics set = log.reduce(LogSketch.WET).sets().get(5);
    assertThat(set.outliers()).hasSize(1);
    GrubbsRule.Flag flag = set.outliers().get(0);
    assertThat(flag.index()).isEqualTo(4);
    assertThat(flag.n()).isEqualTo(6);
    assertThat(flag.degree()).isEqualTo(GrubbsRule.Degree.OUTLIER);
    assertThat(set.count()).isEqualTo(6);
    assertThat(set.mean())
        .isCloseTo(
            set.counted().stream().mapToDouble(d -> d).average().orElseThrow(), within(1e-12));
  }

  @Test
  void equalFiguresAndSmallSetsHaveNoOutlier() {
    assertThat(GrubbsRule.flags(List.of(2.0, 2.0, 2.0, 2.0, 2.0))).isEmpty();
    assertThat(GrubbsRule.flags(List.of(2.0, 2.1, 99.0))).isEmpty();
    assertThat(GrubbsRule.flags(List.of())).isEmpty();
  }

  /** Of regular sets one in twenty is flagged, as the level of the test says. */
  @Test
  void fewRegularSetsAreFlagged() {
    long seed = 20240611;
    Random random = new Random(seed);
    int flagged = 0;
    for (int i = 0; i < 4000; i++) {
      List<Double> set = Stream.generate(random::nextGaussian).limit(6).toList();
      flagged += GrubbsRule.flags(set).isEmpty() ? 0 : 1;
    }
    assertThat(flagged / 4000.0).as("seed %d", seed).isCloseTo(0.05, within(0.012));
  }
}
