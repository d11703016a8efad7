package org.griplore.query.outlook;

import java.util.Arrays;
import java.util.List;
import org.griplore.query.discipline.ModelStep;
import org.griplore.store.archive.ModelRecord;
import org.griplore.store.vocabulary.SeasonClass;

/**
 * Who follows whom. A lineage that runs in a circle is cut where the circle was found.
 *
 * @param parent position of each model's predecessor; -1 when there is none
 * @param group season class of each model by number; the last for those that state none
 */
record DescentForest(int[] parent, int[] group) {
  /** Number of season classes, the unstated one included. */
  static final int GROUPS = SeasonClass.values().length + 1;

  static DescentForest of(List<ModelRecord> models) {
    int[] parent = new int[models.size()];
    Arrays.fill(parent, -1);
    for (ModelStep step : ModelStep.all(models)) {
      if (!descendsFrom(step.older(), step.newer(), parent)) {
        parent[step.newer()] = step.older();
      }
    }
    int[] group =
        models.stream()
            .mapToInt(model -> model.season() == null ? GROUPS - 1 : model.season().ordinal())
            .toArray();
    return new DescentForest(parent, group);
  }

  private static boolean descendsFrom(int model, int ancestor, int[] parent) {
    for (int at = model; at >= 0; at = parent[at]) {
      if (at == ancestor) {
        return true;
      }
    }
    return false;
  }

  /** The nearest ancestor with a mark; -1 when none has. */
  int ancestor(int model, boolean[] marked) {
    for (int at = parent[model]; at >= 0; at = parent[at]) {
      if (marked[at]) {
        return at;
      }
    }
    return -1;
  }
}
