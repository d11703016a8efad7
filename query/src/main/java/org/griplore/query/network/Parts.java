package org.griplore.query.network;

/**
 * Connected parts of the graph of models and tests. Parts are numbered by their smallest model;
 * models of different parts are never compared. A model that only stands alone in tests, or in
 * none, is in no part.
 */
final class Parts {
  static final int NONE = -1;

  /** Part of each model, {@link #NONE} where it has none. */
  final int[] ofModel;

  /** Number of models of each part. */
  final int[] size;

  Parts(TestRows rows, int models) {
    int[] root = new int[models];
    boolean[] compared = new boolean[models];
    for (int m = 0; m < models; m++) {
      root[m] = m;
    }
    for (int t = 0; t < rows.tests; t++) {
      int first = find(root, rows.model[rows.start[t]]);
      for (int i = rows.start[t]; i < rows.start[t + 1]; i++) {
        compared[rows.model[i]] = true;
        int other = find(root, rows.model[i]);
        // the smaller number stays the root, so that parts are numbered without regard to row order
        if (other < first) {
          root[first] = other;
          first = other;
        } else {
          root[other] = first;
        }
      }
    }
    ofModel = new int[models];
    int[] number = new int[models];
    int[] count = new int[models];
    int parts = 0;
    for (int m = 0; m < models; m++) {
      if (!compared[m]) {
        ofModel[m] = NONE;
        continue;
      }
      int r = find(root, m);
      if (r == m) {
        number[m] = parts++;
      }
      ofModel[m] = number[r];
      count[ofModel[m]]++;
    }
    size = java.util.Arrays.copyOf(count, parts);
  }

  int count() {
    return size.length;
  }

  /** Number of models that are in some part. */
  int comparedModels() {
    int sum = 0;
    for (int s : size) {
      sum += s;
    }
    return sum;
  }

  private static int find(int[] root, int m) {
    int r = m;
    while (root[r] != r) {
      root[r] = root[root[r]];
      r = root[r];
    }
    return r;
  }
}
