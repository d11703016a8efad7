package org.griplore.query.outlook;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.griplore.query.evidence.Exclusions;
import org.griplore.query.statistics.Tails;

/**
 * Predicts every test of a discipline from what was known before it, and compares. Known before is
 * a test whose latest day lies before the earliest day of the one predicted. The components are
 * sought anew whenever the evidence has grown by a third, from that evidence alone.
 *
 * <p>Beside each prediction stands the naive one, "same as last time": the model's difference from
 * the mean of its last test; for a model without a test, that of its nearest tested predecessor.
 */
final class PastPredictions {
  static final int FEWEST_TESTS = 3;
  static final int FEWEST_CONTRASTS = 15;
  private static final double GROWTH = 4.0 / 3;

  private static final double PLACE_LEVEL = 0.8;
  private static final int PLACE_DRAWS = 400;

  /** Work of taking tests in, models squared times results: about a second on one core. */
  private static final double WORK = 5e8;

  /** The same for one look at a set of components; some hundred are taken. */
  private static final double SEARCH_WORK = 5e6;

  private final DescentForest descent;
  private final List<TestBlock> blocks;
  private final Needed needed;
  private final double[] last;
  private final boolean[] tested;
  private final IntervalTally tally = new IntervalTally();
  private int contrasts;
  private int soughtAt;
  private VarianceComponents components;
  private LevelPosterior posterior;

  private PastPredictions(DescentForest descent, List<TestBlock> blocks) {
    this.descent = descent;
    this.blocks = blocks;
    this.needed = new Needed(descent, blocks, new int[0]);
    this.last = new double[descent.parent().length];
    this.tested = new boolean[last.length];
  }

  /**
   * Predicts them all.
   *
   * @param all in the order of {@link TestBlocks}
   */
  static IntervalTally of(DescentForest descent, List<TestBlock> all, Exclusions excluded) {
    List<TestBlock> dated = all.stream().filter(block -> block.first() != null).toList();
    excluded.add("tests without a date", all.size() - dated.size());
    List<TestBlock> newest = Affordable.newest(descent, dated, WORK);
    excluded.add("oldest tests of a large archive", dated.size() - newest.size());
    PastPredictions past = new PastPredictions(descent, newest);
    past.run(excluded);
    return past.tally;
  }

  private void run(Exclusions excluded) {
    List<TestBlock> byFirstDay = new ArrayList<>(blocks);
    byFirstDay.sort(Comparator.comparing(TestBlock::first).thenComparing(TestBlock::test));
    int taken = 0;
    for (TestBlock block : byFirstDay) {
      while (taken < blocks.size() && blocks.get(taken).last().isBefore(block.first())) {
        take(taken++);
      }
      if (taken < FEWEST_TESTS || contrasts < FEWEST_CONTRASTS || !seek(taken)) {
        excluded.add("tests before which too little was known");
      } else {
        predict(block, excluded);
      }
    }
  }

  private void take(int number) {
    TestBlock block = blocks.get(number);
    contrasts += block.contrasts();
    double mean = block.mean();
    for (int i = 0; i < block.y().length; i++) {
      last[block.models()[i]] = block.y()[i] - mean;
      tested[block.models()[i]] = true;
    }
    if (posterior != null) {
      takeIn(number);
    }
  }

  private void takeIn(int number) {
    posterior.take(blocks.get(number));
    for (int model : needed.endingAt(number)) {
      posterior.forget(model);
    }
  }

  /** Has components ready for what is known; false when nothing known differs. */
  private boolean seek(int taken) {
    if (posterior != null && contrasts < GROWTH * soughtAt) {
      return true;
    }
    soughtAt = contrasts;
    VarianceComponents found =
        VarianceComponentsFit.of(
            descent, Affordable.newest(descent, blocks.subList(0, taken), SEARCH_WORK), components);
    if (found == null) {
      return false;
    }
    components = found;
    posterior = new LevelPosterior(descent, components);
    for (int number = 0; number < taken; number++) {
      takeIn(number);
    }
    return true;
  }

  private void predict(TestBlock block, Exclusions excluded) {
    int[] of = new int[block.models().length];
    double[] naive = new double[of.length];
    int size = 0;
    for (int i = 0; i < of.length; i++) {
      int model = block.models()[i];
      int from = tested[model] ? model : descent.ancestor(model, tested);
      if (from < 0) {
        excluded.add("results of models without a test of their own or a predecessor's before");
      } else {
        naive[size] = last[from];
        of[size++] = i;
      }
    }
    if (size < 2) {
      excluded.add("tests with fewer than two such models");
      return;
    }
    compare(block, Arrays.copyOf(of, size), Arrays.copyOf(naive, size));
  }

  private void compare(TestBlock block, int[] of, double[] last) {
    int[] models = Arrays.stream(of).map(i -> block.models()[i]).toArray();
    double[] variance =
        Arrays.stream(of).mapToDouble(i -> components.result(block.runs()[i])).toArray();
    double[] found = lessMean(Arrays.stream(of).mapToDouble(i -> block.y()[i]).toArray());
    double[] naive = lessMean(last);
    Levels predicted = posterior.levels(models).results(variance).lessMean();
    double[] factors =
        Arrays.stream(IntervalTally.LEVELS)
            .map(level -> Tails.student(level, degrees(contrasts)))
            .toArray();
    tally.addTest();
    for (int i = 0; i < of.length; i++) {
      tally.add(
          block.entries()[of[i]],
          found[i],
          predicted.mean()[i],
          predicted.sd(i),
          factors,
          naive[i],
          tested[models[i]]);
      for (int j = 0; j < i; j++) {
        tally.addPair(
            predicted.mean()[i] - predicted.mean()[j], naive[i] - naive[j], found[i] - found[j]);
      }
    }
    steps(models, predicted, factors, found, naive);
    places(block, predicted, found);
  }

  private void steps(
      int[] models, Levels predicted, double[] factors, double[] found, double[] naive) {
    double[][] c = predicted.covariance();
    for (int i = 0; i < models.length; i++) {
      for (int j = 0; j < models.length; j++) {
        if (descent.parent()[models[i]] == models[j]) {
          double variance = Math.max(0, c[i][i] + c[j][j] - 2 * c[i][j]);
          tally.addStep(
              found[i] - found[j],
              predicted.mean()[i] - predicted.mean()[j],
              Math.sqrt(variance),
              factors,
              naive[i] - naive[j]);
        }
      }
    }
  }

  private void places(TestBlock block, Levels predicted, double[] found) {
    int[] places = new int[found.length];
    Arrays.fill(places, 1);
    for (int i = 0; i < found.length; i++) {
      for (double other : found) {
        places[i] += other > found[i] ? 1 : 0;
      }
    }
    for (double middle : FieldPlaces.middles(predicted, places, block.test(), PLACE_DRAWS)) {
      tally.addPlace(Math.abs(middle - 0.5) <= PLACE_LEVEL / 2);
    }
  }

  /** Degrees of freedom of an interval: differences known, less what the components take. */
  static int degrees(int contrasts) {
    return Math.max(1, contrasts - 3);
  }

  private static double[] lessMean(double[] values) {
    double mean = Arrays.stream(values).average().orElseThrow();
    return Arrays.stream(values).map(value -> value - mean).toArray();
  }
}
