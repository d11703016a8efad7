package org.griplore.query.outlook;

import java.util.Arrays;
import java.util.List;

/** Whether chains of tests connect a field; a model stands for its nearest tested relative. */
final class Parts {
  private Parts() {}

  static boolean connected(List<Round> rounds, DisciplineOutlook outlook, Descent descent) {
    int[] root = new int[descent.parent().length];
    boolean[] tested = new boolean[root.length];
    Arrays.setAll(root, i -> i);
    for (Round round : rounds) {
      for (int model : round.models()) {
        tested[model] = true;
        root[find(root, model)] = find(root, round.models()[0]);
      }
    }
    int part = -1;
    for (int model : outlook.field()) {
      int from = tested[model] ? model : descent.ancestor(model, tested);
      if (from >= 0) {
        if (part >= 0 && find(root, from) != part) {
          return false;
        }
        part = find(root, from);
      }
    }
    return true;
  }

  private static int find(int[] root, int model) {
    int at = model;
    while (root[at] != at) {
      root[at] = root[root[at]];
      at = root[at];
    }
    return at;
  }
}
