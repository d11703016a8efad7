package org.griplore.query.network;

import java.util.Arrays;

/** Kept arms of each model, ascending, and the kept test of each arm. */
final class ArmsOfModel {
  private final int[] start;
  private final int[] arm;
  private final int[] test;

  ArmsOfModel(TestRows rows, int models) {
    start = new int[models + 1];
    arm = new int[rows.arms];
    test = new int[rows.arms];
    for (int m : rows.model) {
      start[m + 1]++;
    }
    for (int m = 0; m < models; m++) {
      start[m + 1] += start[m];
    }
    int[] next = Arrays.copyOf(start, models);
    for (int t = 0; t < rows.tests; t++) {
      for (int i = rows.start[t]; i < rows.start[t + 1]; i++) {
        arm[next[rows.model[i]]++] = i;
        test[i] = t;
      }
    }
  }

  int[] of(int model) {
    return Arrays.copyOfRange(arm, start[model], start[model + 1]);
  }

  int count(int model) {
    return start[model + 1] - start[model];
  }

  int testOfArm(int arm) {
    return test[arm];
  }
}
