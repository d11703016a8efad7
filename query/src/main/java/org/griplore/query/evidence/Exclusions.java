package org.griplore.query.evidence;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.griplore.query.answer.Exclusion;

/** Counts what an answer leaves out, by reason, in the order the reasons first came up. */
public final class Exclusions {
  private final Map<String, Integer> counts = new LinkedHashMap<>();

  /** Counts one more. */
  public void add(String reason) {
    counts.merge(reason, 1, Integer::sum);
  }

  /** Counts several more; nothing for none. */
  public void add(String reason, int count) {
    if (count > 0) {
      counts.merge(reason, count, Integer::sum);
    }
  }

  /** The reasons with their counts. */
  public List<Exclusion> list() {
    return counts.entrySet().stream()
        .map(reason -> new Exclusion(reason.getKey(), reason.getValue()))
        .toList();
  }
}
