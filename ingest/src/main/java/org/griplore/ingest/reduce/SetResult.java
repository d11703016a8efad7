package org.griplore.ingest.reduce;

import java.util.List;
import java.util.Objects;
import org.griplore.ingest.reduce.limit.Standing;
import org.griplore.store.vocabulary.Step;
import org.griplore.store.vocabulary.Unit;

/**
 * One set of a candidate against the reference at its place.
 *
 * @param set its runs
 * @param cycle the cycle it was driven in
 * @param reference the reference it is compared with
 * @param effect against that reference; null when there is none
 * @param corrected the figure at the anchor's level, or as measured without a reference, in {@code
 *     unit}
 * @param spread standard deviation of its runs, in {@code unit}; null for a single run
 * @param unit the discipline's unit where the figure can be told in it
 * @param steps from the runs to {@code corrected}, in order
 * @param standing whether it stands under the limits
 */
public record SetResult(
    SetStatistics set,
    ReferenceCycle cycle,
    LocalReference reference,
    Effect effect,
    double corrected,
    Double spread,
    Unit unit,
    List<Step> steps,
    Standing standing) {
  /** Keeps the steps from changing. */
  public SetResult {
    Objects.requireNonNull(reference);
    steps = List.copyOf(steps);
  }
}
