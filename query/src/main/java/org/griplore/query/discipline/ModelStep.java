package org.griplore.query.discipline;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.griplore.store.archive.ModelRecord;

/**
 * A step from a model to its successor, by positions in the evidence.
 *
 * @param older the predecessor
 * @param newer the successor
 */
public record ModelStep(int older, int newer) {
  /** Every step that the lineage names, by the names of the successors. */
  public static List<ModelStep> all(List<ModelRecord> models) {
    Map<Integer, Integer> positions = new HashMap<>();
    for (int i = 0; i < models.size(); i++) {
      positions.put(models.get(i).id(), i);
    }
    List<ModelStep> steps = new ArrayList<>();
    for (int newer = 0; newer < models.size(); newer++) {
      Integer older = positions.get(models.get(newer).follows());
      if (older != null) {
        steps.add(new ModelStep(older, newer));
      }
    }
    return steps;
  }

  /** Years between the launches; null when one is not known. */
  public Integer years(List<ModelRecord> models) {
    var before = models.get(older).launched();
    var after = models.get(newer).launched();
    return before == null || after == null ? null : (Integer) (after.year() - before.year());
  }
}
