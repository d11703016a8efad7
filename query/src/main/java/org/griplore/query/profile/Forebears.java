package org.griplore.query.profile;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.griplore.query.discipline.ModelStep;
import org.griplore.store.archive.ModelRecord;

/** Who follows whom, by positions in the evidence. */
final class Forebears {
  private final Map<Integer, Integer> older = new HashMap<>();
  private final Map<Integer, List<Integer>> newer = new HashMap<>();

  Forebears(List<ModelRecord> models) {
    for (ModelStep step : ModelStep.all(models)) {
      older.put(step.newer(), step.older());
      newer.computeIfAbsent(step.older(), model -> new ArrayList<>()).add(step.newer());
    }
  }

  /** The predecessor; null when none is known. */
  Integer before(int model) {
    return older.get(model);
  }

  /** The successors; a model can have several. */
  List<Integer> after(int model) {
    return newer.getOrDefault(model, List.of());
  }

  /**
   * A model's forebears, itself and all that came of it, the oldest first. A ring, which no lineage
   * should have, is walked once.
   */
  List<Integer> family(int model) {
    Set<Integer> back = new LinkedHashSet<>();
    Integer at = model;
    while (at != null && back.add(at)) {
      at = before(at);
    }
    List<Integer> family = new ArrayList<>(back);
    java.util.Collections.reverse(family);
    Set<Integer> seen = new LinkedHashSet<>(family);
    List<Integer> waiting = new ArrayList<>(after(model));
    while (!waiting.isEmpty()) {
      int next = waiting.remove(0);
      if (seen.add(next)) {
        waiting.addAll(after(next));
      }
    }
    return List.copyOf(seen);
  }

  /** Models in the order of their descent: a predecessor before its successors, else by launch. */
  List<Integer> inOrder(List<Integer> models, List<ModelRecord> records) {
    List<Integer> sorted = new ArrayList<>(models);
    sorted.sort(
        java.util.Comparator.comparingInt((Integer model) -> depth(model))
            .thenComparing(
                model ->
                    records.get(model).launched() == null
                        ? "9"
                        : records.get(model).launched().text())
            .thenComparing(model -> records.get(model).name()));
    return sorted;
  }

  private int depth(int model) {
    Set<Integer> seen = new LinkedHashSet<>();
    Integer at = before(model);
    while (at != null && seen.add(at)) {
      at = before(at);
    }
    return seen.size();
  }
}
