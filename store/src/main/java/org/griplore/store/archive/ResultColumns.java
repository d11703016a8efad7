package org.griplore.store.archive;

/**
 * Results as columns of equal length, those of one entry side by side. The arrays are the
 * snapshot's own: read, never write.
 *
 * @param id database number, for {@link Archive#originOf}
 * @param entry position in {@link Snapshot#entries}
 * @param discipline position in {@link Snapshot#disciplines}
 * @param unit position in {@link Snapshot#units}; -1 without a value
 * @param value NaN when there is a place only
 * @param spread standard deviation of the runs; NaN when not stated
 * @param runs 0 when not stated
 * @param place the published place; 0 when not published
 */
public record ResultColumns(
    long[] id,
    int[] entry,
    short[] discipline,
    short[] unit,
    double[] value,
    double[] spread,
    int[] runs,
    int[] place) {
  /** Number of results. */
  public int count() {
    return id.length;
  }
}
