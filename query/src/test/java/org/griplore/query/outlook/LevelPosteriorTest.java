package org.griplore.query.outlook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class LevelPosteriorTest {
  private static TestBlock block(int[] models, double... y) {
    int k = models.length;
    double[] unknown = new double[k];
    Arrays.fill(unknown, Double.NaN);
    return new TestBlock(0, null, null, models, new int[k], y, new int[k], unknown);
  }

  private static DescentForest unrelated(int models) {
    int[] none = new int[models];
    Arrays.fill(none, -1);
    return new DescentForest(none, new int[models]);
  }

  /**
   * Robinson 1991 (Statistical Science 6:15), section 1: first lactation yields of daughters of
   * four sires in three herds, ratio of variances 10. Printed: 0.40, 0.52, 0.76, -1.67. A herd is a
   * test, a sire a model; the mean of the sires is not known here, so they are told less it.
   */
  @Test
  void thePublishedSiresAreShrunkAsPrinted() {
    LevelPosterior posterior =
        new LevelPosterior(unrelated(4), new VarianceComponents(1, 0.1, 0, 0, 0, 1));
    posterior.take(block(new int[] {0, 3}, 110, 100));
    posterior.take(block(new int[] {1, 3, 3}, 110, 100, 100));
    posterior.take(block(new int[] {2, 2, 3, 3}, 110, 110, 100, 100));
    double[] told = posterior.levels(new int[] {0, 1, 2, 3}).lessMean().mean();
    double[] printed = {0.40, 0.52, 0.76, -1.67};
    for (int sire = 0; sire < printed.length; sire++) {
      assertThat(told[sire]).isCloseTo(printed[sire], within(0.005));
    }
  }

  /** Twelve models in three lines, each the predecessor of the next. */
  private static final DescentForest LINES =
      new DescentForest(new int[] {-1, 0, 1, 2, -1, 4, 5, 6, -1, 8, 9, 10}, new int[12]);

  private static final VarianceComponents SPREADS =
      new VarianceComponents(0.3, 1, 0.4, 0.2, 0.5, 1);

  private static List<TestBlock> drawn(long seed) {
    Random random = new Random(seed);
    List<TestBlock> blocks = new ArrayList<>();
    for (int r = 0; r < 12; r++) {
      List<Integer> all = new ArrayList<>();
      for (int model = 0; model < 12; model++) {
        all.add(model);
      }
      Collections.shuffle(all, random);
      int[] models = all.subList(0, 2 + random.nextInt(4)).stream().mapToInt(m -> m).toArray();
      blocks.add(block(models, random.doubles(models.length, -2, 2).toArray()));
    }
    return blocks;
  }

  private static void same(Levels one, Levels other) {
    for (int i = 0; i < one.mean().length; i++) {
      assertThat(one.mean()[i]).isCloseTo(other.mean()[i], within(1e-9));
      for (int j = 0; j < one.mean().length; j++) {
        assertThat(one.covariance()[i][j]).isCloseTo(other.covariance()[i][j], within(1e-9));
      }
    }
  }

  @Test
  void theOrderOfTestsChangesNothing() {
    int[] field = {0, 3, 7, 8};
    List<TestBlock> blocks = drawn(1);
    LevelPosterior one = new LevelPosterior(LINES, SPREADS);
    double likelihood = blocks.stream().mapToDouble(one::take).sum();
    Collections.reverse(blocks);
    LevelPosterior other = new LevelPosterior(LINES, SPREADS);
    assertThat(blocks.stream().mapToDouble(other::take).sum()).isCloseTo(likelihood, within(1e-9));
    same(one.levels(field).lessMean(), other.levels(field).lessMean());
  }

  @Test
  void forgettingWhatNoLaterTestNeedsChangesNothing() {
    int[] field = {3, 7};
    List<TestBlock> blocks = drawn(2);
    LevelPosterior whole = new LevelPosterior(LINES, SPREADS);
    LevelPosterior lean = new LevelPosterior(LINES, SPREADS);
    Needed needed = new Needed(LINES, blocks, field);
    int forgotten = 0;
    for (int r = 0; r < blocks.size(); r++) {
      assertThat(lean.take(blocks.get(r))).isCloseTo(whole.take(blocks.get(r)), within(1e-9));
      for (int model : needed.endingAt(r)) {
        lean.forget(model);
        forgotten++;
      }
    }
    assertThat(forgotten).isEqualTo(10);
    assertThat(lean.size()).isEqualTo(DescentForest.GROUPS + 1 + 2);
    same(whole.levels(field).lessMean(), lean.levels(field).lessMean());
  }

  @Test
  void aModelNeverTestedIsExpectedAtItsPredecessorPlusTheUsualStepWithMoreDoubt() {
    LevelPosterior posterior = new LevelPosterior(LINES, SPREADS);
    // two lines step by +1; the third has only begun
    posterior.take(block(new int[] {0, 1, 4, 5, 8}, 0, 1, 0, 1, 0));
    posterior.take(block(new int[] {0, 1, 4, 5, 8}, 0, 1, 0, 1, 0));
    Levels levels = posterior.levels(new int[] {8, 9});
    double step = levels.mean()[1] - levels.mean()[0];
    assertThat(step).isCloseTo(posterior.usualStep(), within(1e-12)).isBetween(0.2, 0.9);
    Levels against = posterior.levels(new int[] {0, 8, 9}).lessMean();
    assertThat(against.sd(2)).isGreaterThan(against.sd(1));
  }

  @Test
  void aLineageInACircleIsCut() {
    DescentForest circle =
        DescentForest.of(
            List.of(model(1, "A", 3), model(2, "B", 1), model(3, "C", 2), model(4, "D", 4)));
    assertThat(Arrays.stream(circle.parent()).filter(p -> p < 0).count()).isEqualTo(2);
    assertThat(new LevelPosterior(circle, SPREADS).levels(new int[] {0, 1, 2, 3}).mean())
        .hasSize(4);
  }

  private static org.griplore.store.archive.ModelRecord model(int id, String name, int follows) {
    return new org.griplore.store.archive.ModelRecord(
        id, name, null, null, null, null, null, null, follows, List.of());
  }
}
