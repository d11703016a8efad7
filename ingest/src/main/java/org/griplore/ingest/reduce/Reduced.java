package org.griplore.ingest.reduce;

/**
 * A candidate's result.
 *
 * @param set its runs
 * @param reference the reference's mean at the candidate's place; NaN without a reference
 * @param level the reference's mean over the whole log: the level that {@code corrected} is on
 * @param corrected the set's mean as on the average of the day
 */
public record Reduced(RunSet set, double reference, double level, double corrected) {
  /** Whether a reference was there to correct by. */
  public boolean isCorrected() {
    return !Double.isNaN(reference);
  }
}
