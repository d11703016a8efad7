package org.griplore.query.network;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The order in which models are eliminated. An archive is local in time, so that models ordered by
 * the tests they stood in give a narrow band; a model that stands in very many tests (a reference
 * set) goes to the end, where it widens no row. Of the candidate orders (first test, middle of its
 * tests, reverse Cuthill-McKee; each with and without the wide models put last) the one with the
 * least work for the factor is taken.
 */
final class ModelOrder {
  /** A model in this many times as many tests as the median model is a wide one. */
  private static final int WIDE = 8;

  /**
   * Models from first to last eliminated; component by component, the grounded model of a component
   * last.
   */
  final int[] modelAt;

  /** Position of each model, -1 for a model in no component. */
  final int[] position;

  /** For each position, the smallest position that shares a test with it; grounded: itself. */
  final int[] first;

  /** True where the position belongs to a grounded model, whose effect is held at zero. */
  final boolean[] grounded;

  /** Sum of squared row widths: the work of the factor, in multiplications. */
  final double work;

  private ModelOrder(int[] modelAt, int[] position, int[] first, boolean[] grounded, double work) {
    this.modelAt = modelAt;
    this.position = position;
    this.first = first;
    this.grounded = grounded;
    this.work = work;
  }

  static ModelOrder of(TestRows rows, Components components, int models) {
    int[] tests = new int[models];
    double[] firstTest = new double[models];
    double[] middle = new double[models];
    java.util.Arrays.fill(firstTest, Double.MAX_VALUE);
    for (int t = 0; t < rows.tests; t++) {
      for (int i = rows.start[t]; i < rows.start[t + 1]; i++) {
        int m = rows.model[i];
        tests[m]++;
        firstTest[m] = Math.min(firstTest[m], t);
        middle[m] += t;
      }
    }
    int[] ground = new int[components.count()];
    java.util.Arrays.fill(ground, -1);
    for (int m = 0; m < models; m++) {
      int p = components.ofModel[m];
      if (p != Components.NONE) {
        middle[m] /= tests[m];
        if (ground[p] < 0 || tests[m] > tests[ground[p]]) {
          ground[p] = m;
        }
      }
    }
    int[] members = IntStream.range(0, models).filter(m -> components.ofModel[m] >= 0).toArray();
    List<double[]> keys = new ArrayList<>();
    keys.add(firstTest);
    if (members.length > 64) {
      keys.add(middle);
      keys.add(new CuthillMcKee(rows, models, tests).key(members));
    }
    int[] counts = IntStream.of(members).map(m -> tests[m]).sorted().toArray();
    int wide = counts.length == 0 ? 0 : WIDE * counts[counts.length / 2];
    boolean anyWide = counts.length > 64 && counts[counts.length - 1] > wide;
    ModelOrder best = null;
    for (double[] key : keys) {
      for (int limit : anyWide ? new int[] {Integer.MAX_VALUE, wide} : new int[] {wide + 1}) {
        ModelOrder next = by(rows, components, members, ground, key, tests, limit);
        if (best == null || next.work < best.work) {
          best = next;
        }
      }
    }
    return best;
  }

  /** Models as they are numbered, with nothing grounded: enough where no matrix is formed. */
  static ModelOrder unordered(Components components) {
    int models = components.ofModel.length;
    int[] modelAt = IntStream.range(0, models).filter(m -> components.ofModel[m] >= 0).toArray();
    int[] position = new int[models];
    java.util.Arrays.fill(position, -1);
    int[] first = new int[modelAt.length];
    for (int i = 0; i < modelAt.length; i++) {
      position[modelAt[i]] = i;
      first[i] = i;
    }
    return new ModelOrder(modelAt, position, first, new boolean[modelAt.length], 0);
  }

  private static ModelOrder by(
      TestRows rows,
      Components components,
      int[] members,
      int[] ground,
      double[] key,
      int[] tests,
      int wide) {
    int n = members.length;
    Integer[] order = new Integer[n];
    for (int i = 0; i < n; i++) {
      order[i] = members[i];
    }
    java.util.Arrays.sort(
        order,
        java.util.Comparator.<Integer>comparingInt(m -> components.ofModel[m])
            .thenComparingInt(m -> ground[components.ofModel[m]] == m ? 2 : tests[m] > wide ? 1 : 0)
            .thenComparingDouble(m -> key[m])
            .thenComparingInt(m -> m));
    int[] modelAt = new int[n];
    int[] position = new int[components.ofModel.length];
    java.util.Arrays.fill(position, -1);
    boolean[] grounded = new boolean[n];
    int[] first = new int[n];
    for (int i = 0; i < n; i++) {
      modelAt[i] = order[i];
      position[modelAt[i]] = i;
      grounded[i] = ground[components.ofModel[modelAt[i]]] == modelAt[i];
      first[i] = i;
    }
    for (int t = 0; t < rows.tests; t++) {
      int low = Integer.MAX_VALUE;
      for (int i = rows.start[t]; i < rows.start[t + 1]; i++) {
        low = Math.min(low, position[rows.model[i]]);
      }
      for (int i = rows.start[t]; i < rows.start[t + 1]; i++) {
        int p = position[rows.model[i]];
        if (!grounded[p]) {
          first[p] = Math.min(first[p], low);
        }
      }
    }
    double work = 0;
    for (int i = 0; i < n; i++) {
      double width = i - first[i] + 1.0;
      work += width * width;
    }
    return new ModelOrder(modelAt, position, first, grounded, work);
  }

  int size() {
    return modelAt.length;
  }
}
