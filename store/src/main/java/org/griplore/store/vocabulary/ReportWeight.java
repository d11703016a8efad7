package org.griplore.store.vocabulary;

import java.util.Objects;

/**
 * The weight that a report gives a discipline in its total.
 *
 * @param discipline catalogue key
 * @param weight 0 or more, in the report's own measure: only ratios to its other weights mean
 *     something
 * @param cell where it stands; null when it was entered by hand
 */
public record ReportWeight(String discipline, double weight, Cell cell) {
  /** Checks the weight. */
  public ReportWeight {
    Objects.requireNonNull(discipline);
    if (!(weight >= 0) || Double.isInfinite(weight)) {
      throw new IllegalArgumentException("a weight is 0 or more: " + weight);
    }
  }
}
