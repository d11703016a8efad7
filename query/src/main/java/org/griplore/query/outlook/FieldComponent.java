package org.griplore.query.outlook;

import java.util.List;
import org.griplore.query.statistics.DisjointSets;

/** Whether chains of tests connect a field; a model stands for its nearest tested relative. */
final class FieldComponent {
  private FieldComponent() {}

  static boolean connected(
      List<TestBlock> blocks, DisciplineOutlook outlook, DescentForest descent) {
    boolean[] tested = new boolean[descent.parent().length];
    DisjointSets chains = new DisjointSets(tested.length);
    for (TestBlock block : blocks) {
      for (int model : block.models()) {
        tested[model] = true;
        chains.join(block.models()[0], model);
      }
    }
    int part = -1;
    for (int model : outlook.field()) {
      int from = tested[model] ? model : descent.ancestor(model, tested);
      if (from >= 0) {
        if (part >= 0 && chains.of(from) != part) {
          return false;
        }
        part = chains.of(from);
      }
    }
    return true;
  }
}
