package org.griplore.query.ranking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.griplore.store.vocabulary.Direction;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class CreditSumTest {
  @Test
  void creditsOfATestAreThoseOfItsTies() {
    int[] places = {1, 2, 3, 3, 5, 6};
    TestCredit whole = TestCredit.of(places, 6, 3, TopShare.WHOLE);
    assertThat(whole.expected()).isEqualTo(4.0 / 6);
    TestCredit shared = TestCredit.of(places, 6, 3, TopShare.SHARED);
    assertThat(shared.expected()).isEqualTo(0.5);
    assertThat(shared.whole()).isEqualTo(2);
    assertThat(shared.of(3, 3, TopShare.SHARED)).isEqualTo(0.5);
    assertThat(shared.of(2, 3, TopShare.SHARED)).isEqualTo(1);
    assertThat(shared.of(5, 3, TopShare.SHARED)).isZero();
    // a report that names three of nine: the third place is another's
    int[] named = {1, 2, 9};
    assertThat(TestCredit.of(named, 9, 3, TopShare.WHOLE).expected()).isEqualTo(3.0 / 9);
    assertThat(TestCredit.of(named, 9, 3, TopShare.SHARED).expected()).isEqualTo(3.0 / 9);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> TestCredit.of(places, 6, 3, TopShare.STRICT));
  }

  /** Eight tests in which all ten have the same rating say nothing of anybody. */
  @ParameterizedTest
  @EnumSource(names = {"WHOLE", "SHARED"})
  void testsInWhichAllTieSayNothing(TopShare ties) {
    TestCredit test = TestCredit.of(new int[] {1, 1, 1, 1, 1, 1, 1, 1, 1, 1}, 10, 3, ties);
    double credit = test.of(1, 3, ties);
    assertThat(credit).isEqualTo(ties == TopShare.WHOLE ? 1 : 0.3);
    List<TestCredit> tests = java.util.Collections.nCopies(8, test);
    double[] seen = new double[8];
    java.util.Arrays.fill(seen, credit);
    assertThat(CreditSum.atLeast(tests, seen)).isEqualTo(1);
    assertThat(8 * test.expected()).isCloseTo(8 * credit, within(1e-12));
  }

  /** Without ties it is the Poisson-binomial of k/n. */
  @Test
  void withoutTiesItIsPoissonBinomial() {
    List<TestCredit> tests = new ArrayList<>();
    int[] fields = {5, 8, 10, 12};
    for (int field : fields) {
      int[] places = new int[field];
      java.util.Arrays.setAll(places, i -> i + 1);
      tests.add(TestCredit.of(places, field, 3, TopShare.SHARED));
    }
    assertThat(CreditSum.atLeast(tests, new double[] {1, 1, 0, 1}))
        .isCloseTo(PoissonBinomial.ofFields(fields, 3).atLeast(3), within(1e-15));
  }

  /** Every way the entries of four small tests could have been drawn, counted one by one. */
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void itIsTheShareOfAllDraws(long seed) {
    Random random = new Random(seed);
    for (TopShare ties : List.of(TopShare.WHOLE, TopShare.SHARED)) {
      List<int[]> places = new ArrayList<>();
      List<TestCredit> tests = new ArrayList<>();
      for (int t = 0; t < 4; t++) {
        double[] ratings = random.ints(4 + random.nextInt(3), 0, 4).asDoubleStream().toArray();
        places.add(Places.of(ratings, Direction.HIGH));
        tests.add(TestCredit.of(places.get(t), ratings.length, 3, ties));
      }
      double[] seen = new double[4];
      for (int t = 0; t < 4; t++) {
        seen[t] = tests.get(t).of(places.get(t)[0], 3, ties);
      }
      double sum = java.util.Arrays.stream(seen).sum();
      assertThat(CreditSum.atLeast(tests, seen))
          .isCloseTo(share(places, sum, ties, 0, 0), within(1e-12));
    }
  }

  private static double share(
      List<int[]> places, double least, TopShare ties, int test, double sum) {
    if (test == places.size()) {
      return sum > least - 1e-9 ? 1 : 0;
    }
    int[] of = places.get(test);
    int[] sharers = Places.sharers(of);
    double share = 0;
    for (int i = 0; i < of.length; i++) {
      double credit = ties.of(of[i], sharers[i], 3);
      share += share(places, least, ties, test + 1, sum + credit) / of.length;
    }
    return share;
  }

  /**
   * Ratings that are noise, rounded to whole and to half points: of models in twelve tests of ten,
   * about one in twenty shows a probability below 0.05, not one in three.
   */
  @Tag("simulation")
  @ParameterizedTest(name = "ratings to {0} points, ties {1}")
  @CsvSource({"1, WHOLE", "1, SHARED", "0.5, WHOLE", "0.5, SHARED", "0.01, SHARED"})
  void noiseIsNoNews(double step, TopShare ties) {
    Random random = new Random(7);
    int models = 4000;
    int surprising = 0;
    int withoutTies = 0;
    for (int model = 0; model < models; model++) {
      List<TestCredit> tests = new ArrayList<>();
      double[] seen = new double[12];
      int[] fields = new int[12];
      int count = 0;
      for (int t = 0; t < 12; t++) {
        fields[t] = 7 + random.nextInt(6);
        double[] ratings = new double[fields[t]];
        java.util.Arrays.setAll(
            ratings, i -> Math.rint((7 + 0.8 * random.nextGaussian()) / step) * step);
        int[] places = Places.of(ratings, Direction.HIGH);
        tests.add(TestCredit.of(places, fields[t], 3, ties));
        seen[t] = tests.get(t).of(places[0], 3, ties);
        count += places[0] <= 3 ? 1 : 0;
      }
      surprising += CreditSum.atLeast(tests, seen) < 0.05 ? 1 : 0;
      withoutTies += PoissonBinomial.ofFields(fields, 3).atLeast(count) < 0.05 ? 1 : 0;
    }
    assertThat((double) surprising / models).isBetween(0.015, 0.06);
    if (step == 1) {
      assertThat((double) withoutTies / models).as("as if no test had ties").isGreaterThan(0.2);
    }
  }

  @Test
  void manyTestsWithTiesOfManySizesAreRoundedAndQuick() {
    Random random = new Random(3);
    List<TestCredit> tests = new ArrayList<>();
    double[] seen = new double[3000];
    double mean = 0;
    double sum = 0;
    for (int t = 0; t < seen.length; t++) {
      double[] ratings =
          random.doubles(12 + random.nextInt(20)).map(v -> Math.rint(4 * v)).toArray();
      int[] places = Places.of(ratings, Direction.HIGH);
      tests.add(TestCredit.of(places, ratings.length, 3, TopShare.SHARED));
      seen[t] = tests.get(t).of(places[0], 3, TopShare.SHARED);
      sum += seen[t];
      mean += tests.get(t).expected();
    }
    long start = System.nanoTime();
    double chance = CreditSum.atLeast(tests, seen);
    assertThat((System.nanoTime() - start) / 1e9).isLessThan(5);
    assertThat(chance).isBetween(sum > mean ? 0.0 : 0.45, sum > mean ? 0.55 : 1.0);
  }
}
