package org.griplore.query.network;

import java.util.Arrays;

/**
 * The reverse Cuthill-McKee order of models (Cuthill and McKee 1969; George and Liu 1981), found on
 * the graph of models and tests, where every test is opened once, so that the cost is the number of
 * arms and not the number of pairs.
 */
final class CuthillMcKee {
  private final TestRows rows;
  private final int[] degree;
  private final int[] start;
  private final int[] testOf;

  CuthillMcKee(TestRows rows, int models, int[] testsOfModel) {
    this.rows = rows;
    this.degree = testsOfModel;
    this.start = new int[models + 1];
    for (int m = 0; m < models; m++) {
      start[m + 1] = start[m] + testsOfModel[m];
    }
    int[] next = Arrays.copyOf(start, models);
    this.testOf = new int[rows.arms];
    for (int t = 0; t < rows.tests; t++) {
      for (int i = rows.start[t]; i < rows.start[t + 1]; i++) {
        testOf[next[rows.model[i]]++] = t;
      }
    }
  }

  /** A sort key for each model: minus its place in the breadth-first order of its component. */
  double[] key(int[] members) {
    int models = degree.length;
    double[] key = new double[models];
    boolean[] placed = new boolean[models];
    int[] queue = new int[members.length];
    double place = 0;
    for (int m : members) {
      if (placed[m]) {
        continue;
      }
      int from = m;
      // two sweeps: the last model reached lies near an end of the component
      for (int sweep = 0; sweep < 2; sweep++) {
        int reached = walk(from, queue, new boolean[models]);
        from = queue[reached - 1];
      }
      int reached = walk(from, queue, placed);
      for (int i = 0; i < reached; i++) {
        key[queue[i]] = -place++;
      }
    }
    return key;
  }

  private int walk(int from, int[] queue, boolean[] visited) {
    boolean[] opened = new boolean[rows.tests];
    int tail = 0;
    queue[tail++] = from;
    visited[from] = true;
    for (int head = 0; head < tail; head++) {
      int level = tail;
      for (int k = start[queue[head]]; k < start[queue[head] + 1]; k++) {
        int t = testOf[k];
        if (opened[t]) {
          continue;
        }
        opened[t] = true;
        for (int i = rows.start[t]; i < rows.start[t + 1]; i++) {
          int m = rows.model[i];
          if (!visited[m]) {
            visited[m] = true;
            queue[tail++] = m;
          }
        }
      }
      sortByDegree(queue, level, tail);
    }
    return tail;
  }

  private void sortByDegree(int[] queue, int from, int to) {
    for (int i = from + 1; i < to; i++) {
      int m = queue[i];
      int j = i - 1;
      while (j >= from && degree[queue[j]] > degree[m]) {
        queue[j + 1] = queue[j];
        j--;
      }
      queue[j + 1] = m;
    }
  }
}
