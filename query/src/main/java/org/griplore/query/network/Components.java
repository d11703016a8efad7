package org.griplore.query.network;

import org.griplore.query.statistics.DisjointSets;

/**
 * Connected components of the graph of models and tests. Components are numbered by their smallest
 * model; models of different components are never compared. A model that only stands alone in
 * tests, or in none, is in no component.
 */
final class Components {
  static final int NONE = -1;

  /** Part of each model, {@link #NONE} where it has none. */
  final int[] ofModel;

  /** Number of models of each component. */
  final int[] size;

  Components(TestRows rows, int models) {
    DisjointSets chains = new DisjointSets(models);
    boolean[] compared = new boolean[models];
    for (int t = 0; t < rows.tests; t++) {
      for (int i = rows.start[t]; i < rows.start[t + 1]; i++) {
        compared[rows.model[i]] = true;
        chains.join(rows.model[rows.start[t]], rows.model[i]);
      }
    }
    ofModel = new int[models];
    int[] number = new int[models];
    int[] count = new int[models];
    int components = 0;
    for (int m = 0; m < models; m++) {
      if (!compared[m]) {
        ofModel[m] = NONE;
        continue;
      }
      int r = chains.of(m);
      if (r == m) {
        number[m] = components++;
      }
      ofModel[m] = number[r];
      count[ofModel[m]]++;
    }
    size = java.util.Arrays.copyOf(count, components);
  }

  int count() {
    return size.length;
  }

  /** Number of models that are in some component. */
  int comparedModels() {
    int sum = 0;
    for (int s : size) {
      sum += s;
    }
    return sum;
  }
}
