package org.griplore.query.retold;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.griplore.store.vocabulary.Direction;

/**
 * Two tests' figures in one discipline, for the models that both have: which are alike, and how
 * little chance would make so many.
 *
 * <p>The chance that two independent figures of standard deviation s are alike is the width of what
 * counts as alike times the density of their difference at zero, 1/(2s√π); it is doubled, as the
 * same model stands near itself in another test. Figures as coarse as s are no sign of anything.
 *
 * @param models models of the cells that are alike
 * @param differing pairs of results that are not
 * @param chance chance that one cell is alike in two independent tests
 * @param free cells that fit whatever they are, as they set the level
 */
record FigureMatch(List<Integer> models, List<CellPair> differing, double chance, int free) {
  /** Above this chance a cell that is alike says little. */
  static final double COARSE = 0.25;

  private static final double NEAR_ITSELF = 2;

  /** Positions of one model's figures in the two tests. */
  record CellPair(int one, int other) {}

  /** In one unit: equal to the coarser rounding. Places count where neither has values. */
  static FigureMatch equal(TestFigures one, TestFigures other, List<CellPair> pairs) {
    double step = 0;
    boolean[] alike = new boolean[pairs.size()];
    for (int i = 0; i < alike.length; i++) {
      CellPair pair = pairs.get(i);
      alike[i] = one.isEqual(pair.one, other, pair.other);
      step = Math.max(step, Math.max(one.step()[pair.one], other.step()[pair.other]));
    }
    double spread =
        spread(
            values(one, pairs.stream().mapToInt(CellPair::one).toArray()),
            values(other, pairs.stream().mapToInt(CellPair::other).toArray()));
    // half a step either way
    return of(one, pairs, alike, step, spread, 0);
  }

  /**
   * Ratios of the figures are the same for all, to their roundings, and so are the ranks; nothing
   * is alike where ranks differ.
   *
   * @param first which way the first test's unit is better
   * @param second which way the second's is
   */
  static FigureMatch proportional(
      TestFigures one, TestFigures other, List<CellPair> pairs, Direction first, Direction second) {
    int n = pairs.size();
    double[] x = new double[n];
    double[] y = new double[n];
    double[] apart = new double[n];
    double[] reach = new double[n];
    double width = 0;
    for (int i = 0; i < n; i++) {
      int a = pairs.get(i).one;
      int b = pairs.get(i).other;
      x[i] = first.sign() * one.log()[a];
      y[i] = second.sign() * other.log()[b];
      apart[i] = y[i] - x[i];
      reach[i] =
          (one.step()[a] / one.value()[a] + other.step()[b] / other.value()[b]) / 2 * (1 + 1e-6);
      width += 2 * reach[i] / n;
    }
    double[] sorted = apart.clone();
    Arrays.sort(sorted);
    double level = (sorted[n / 2] + sorted[(n - 1) / 2]) / 2;
    boolean ordered = sameOrder(x, y, reach);
    boolean[] alike = new boolean[n];
    for (int i = 0; i < n; i++) {
      alike[i] = ordered && Math.abs(apart[i] - level) <= reach[i];
    }
    return of(one, pairs, alike, width, spread(x, y), 1);
  }

  /** Whether no two models change order by more than rounding. */
  private static boolean sameOrder(double[] x, double[] y, double[] reach) {
    for (int i = 0; i < x.length; i++) {
      for (int j = 0; j < i; j++) {
        double dx = x[i] - x[j];
        double dy = y[i] - y[j];
        if (dx * dy < 0 && Math.min(Math.abs(dx), Math.abs(dy)) > reach[i] + reach[j]) {
          return false;
        }
      }
    }
    return true;
  }

  private static FigureMatch of(
      TestFigures one,
      List<CellPair> pairs,
      boolean[] alike,
      double width,
      double spread,
      int free) {
    List<Integer> models = new ArrayList<>();
    List<CellPair> differing = new ArrayList<>();
    for (int i = 0; i < alike.length; i++) {
      if (alike[i]) {
        models.add(one.model(pairs.get(i).one));
      } else {
        differing.add(pairs.get(i));
      }
    }
    double chance =
        spread > 0 ? Math.min(1, NEAR_ITSELF * width / (2 * spread * Math.sqrt(Math.PI))) : 1;
    return new FigureMatch(models, differing, chance, models.isEmpty() ? 0 : free);
  }

  /** How many cells were compared. */
  int cells() {
    return models.size() + differing.size();
  }

  boolean isCoarse() {
    return chance > COARSE;
  }

  /** How much the cells that are alike say, in bits; nothing where chance makes them alike. */
  double bits() {
    return Math.max(0, models.size() - free) * -Math.log(chance) / Math.log(2);
  }

  private static double[] values(TestFigures of, int[] at) {
    return Arrays.stream(at)
        .mapToDouble(i -> of.unit()[i] < 0 ? of.place()[i] : of.value()[i])
        .toArray();
  }

  /** Root of the mean variance inside the two tests; 0 for a single model. */
  private static double spread(double[] first, double[] second) {
    return Math.sqrt((variance(first) + variance(second)) / 2);
  }

  private static double variance(double[] values) {
    if (values.length < 2) {
      return 0;
    }
    double mean = Arrays.stream(values).sum() / values.length;
    return Arrays.stream(values).map(v -> (v - mean) * (v - mean)).sum() / (values.length - 1);
  }
}
