package org.griplore.ingest.reduce;

import java.util.ArrayList;
import java.util.List;
import org.griplore.ingest.reduce.run.RunMeasure;

/**
 * Candidates between two measurements of the reference set: R-T1-R, R-T1-T2-R, R-T1-T2-T3-R; the
 * closing measurement of one cycle may be the opening one of the next (UN Regulation No. 117 annex
 * 5, 4.2.7.2).
 *
 * @param number its number in the day, from 1
 * @param opening reference before; null when it is missing
 * @param candidates in the order of the day, at least one; sets without a usable run keep their
 *     place
 * @param closing reference after; null when it is missing
 */
public record ReferenceCycle(
    int number, SetStatistics opening, List<SetStatistics> candidates, SetStatistics closing) {
  private static final int CANONICAL = 3;

  /** Keeps the list from changing. */
  public ReferenceCycle {
    candidates = List.copyOf(candidates);
  }

  /**
   * The cycles of a day. A reference set without a usable run is no reference: its place in the
   * order still counts. References that follow each other directly make no cycle.
   *
   * @param sets in the order of the day
   */
  public static List<ReferenceCycle> of(List<SetStatistics> sets) {
    List<ReferenceCycle> cycles = new ArrayList<>();
    List<SetStatistics> between = new ArrayList<>();
    SetStatistics opening = null;
    for (SetStatistics set : sets) {
      if (!set.isReference()) {
        between.add(set);
      } else if (set.isUsable()) {
        if (!between.isEmpty()) {
          cycles.add(new ReferenceCycle(cycles.size() + 1, opening, between, set));
          between.clear();
        }
        opening = set;
      }
    }
    if (!between.isEmpty()) {
      cycles.add(new ReferenceCycle(cycles.size() + 1, opening, between, null));
    }
    return cycles;
  }

  /** Whether both references are there. */
  public boolean isClosed() {
    return opening != null && closing != null;
  }

  /** Whether it is one of the three orders of the regulation. */
  public boolean isCanonical() {
    return isClosed() && candidates.size() <= CANONICAL;
  }

  /** The order as {@code R-T1-T2-R}; a missing reference is a question mark. */
  public String order() {
    StringBuilder order = new StringBuilder(opening == null ? "?" : "R");
    for (int k = 1; k <= candidates.size(); k++) {
      order.append("-T").append(k);
    }
    return order.append(closing == null ? "-?" : "-R").toString();
  }

  /**
   * |R2 - R1| / R1, relative to the opening reference (for levels and points |R2 - R1| in their
   * unit); null in an open cycle.
   */
  public Double drift(RunMeasure measure) {
    if (!isClosed()) {
      return null;
    }
    double change = Math.abs(closing.mean() - opening.mean());
    return measure.byRatio() ? change / opening.mean() : change;
  }
}
