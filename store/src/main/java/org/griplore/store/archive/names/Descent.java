package org.griplore.store.archive.names;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.griplore.store.archive.ModelRecord;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;

/** Who follows whom: never in a circle. */
public final class Descent {
  private Descent() {}

  /**
   * Checks all chains of predecessors.
   *
   * @throws Refusal with the chain when a model would follow itself
   */
  public static void refuseCircle(List<ModelRecord> models) {
    Map<Integer, ModelRecord> byId = new HashMap<>();
    models.forEach(model -> byId.put(model.id(), model));
    Set<Integer> good = new LinkedHashSet<>();
    for (ModelRecord start : models) {
      Set<Integer> chain = new LinkedHashSet<>();
      ModelRecord model = start;
      while (model != null && !good.contains(model.id())) {
        if (!chain.add(model.id())) {
          throw refusal(model, byId);
        }
        model = model.follows() == null ? null : byId.get(model.follows());
      }
      good.addAll(chain);
    }
  }

  private static Refusal refusal(ModelRecord inCircle, Map<Integer, ModelRecord> byId) {
    StringBuilder chain = new StringBuilder(inCircle.name());
    ModelRecord model = inCircle;
    do {
      model = byId.get(model.follows());
      chain.append(" follows ").append(model.name());
    } while (model != inCircle);
    return new Refusal(
        inCircle.name() + " would follow itself (" + chain + "); nothing was changed.",
        new Problem(
            "follows", inCircle.name(), "a predecessor that does not lead back to the model"));
  }
}
