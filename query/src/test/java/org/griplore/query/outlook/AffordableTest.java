package org.griplore.query.outlook;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.griplore.query.evidence.Exclusions;
import org.junit.jupiter.api.Test;

class AffordableTest {
  private static final int MODELS = 400;
  private static final DescentForest DESCENT = descent();
  private static final List<TestBlock> ROUNDS = blocks();

  /** Every second model follows the one forty before it. */
  private static DescentForest descent() {
    int[] parent = new int[MODELS];
    for (int m = 0; m < MODELS; m++) {
      parent[m] = m % 2 == 1 && m >= 40 ? m - 40 : -1;
    }
    return new DescentForest(parent, new int[MODELS]);
  }

  /** Fifteen hundred tests of eight, any model at any time but the last ten, which never come. */
  private static List<TestBlock> blocks() {
    Random random = new Random(5);
    double[] level = random.doubles(MODELS, -1, 1).toArray();
    double[] unknown = new double[8];
    Arrays.fill(unknown, Double.NaN);
    List<TestBlock> blocks = new ArrayList<>();
    for (int t = 0; t < 1500; t++) {
      int[] models = random.ints(0, MODELS - 10).distinct().limit(8).toArray();
      double[] y =
          Arrays.stream(models).mapToDouble(m -> level[m] + random.nextGaussian()).toArray();
      LocalDate day = LocalDate.of(2000, 1, 1).plusDays(t);
      blocks.add(new TestBlock(t, day, day, models, new int[8], y, new int[8], unknown));
    }
    return blocks;
  }

  private static double steps(List<TestBlock> blocks) {
    int[] held = new Needed(DESCENT, blocks, new int[0]).held();
    double sum = 0;
    for (int r = 0; r < held.length; r++) {
      sum += Math.pow(held[r] + DescentForest.GROUPS + 1, 2) * blocks.get(r).models().length;
    }
    return sum;
  }

  @Test
  void whatCanBePaidIsTakenWhole() {
    assertThat(Affordable.newest(DESCENT, ROUNDS, 1e12)).isEqualTo(ROUNDS);
    assertThat(Affordable.about(DESCENT, ROUNDS, new int[] {1, 2}, 1e12)).isEqualTo(ROUNDS);
  }

  @Test
  void aLargeArchiveGivesItsNewestTestsAndThoseOfTheField() {
    List<TestBlock> newest = Affordable.newest(DESCENT, ROUNDS, 1e8);
    assertThat(newest).hasSizeBetween(20, 500).endsWith(ROUNDS.get(ROUNDS.size() - 1));
    assertThat(steps(newest)).isLessThan(1.01e8);

    int[] field = {3, 117, MODELS - 1};
    List<TestBlock> about = Affordable.about(DESCENT, ROUNDS, field, 1e8);
    assertThat(about).isSortedAccordingTo((a, b) -> Integer.compare(a.test(), b.test()));
    assertThat(steps(about)).isLessThan(1.1e8);
    // the last never came: its predecessor stands for it
    for (int model : new int[] {3, 117, MODELS - 41}) {
      assertThat(about.stream().filter(r -> Arrays.stream(r.models()).anyMatch(m -> m == model)))
          .as("tests of %d", model)
          .hasSizeGreaterThan(8);
    }
  }

  @Test
  void whatIsLeftOutIsCounted() {
    Exclusions excluded = new Exclusions();
    IntervalTally tally = PastPredictions.of(DESCENT, ROUNDS, excluded);
    assertThat(excluded.list())
        .anyMatch(left -> left.reason().equals("oldest tests of a large archive"));
    assertThat((double) tally.covered(1) / tally.results()).isBetween(0.76, 0.84);
  }
}
