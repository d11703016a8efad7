package org.griplore.store.archive;

import java.util.Arrays;

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
 * @param circumstance position in {@link Snapshot#circumstances}
 * @param repeat tells results of one entry, discipline and circumstance apart, from 1
 */
public record ResultColumns(
    long[] id,
    int[] entry,
    short[] discipline,
    short[] unit,
    double[] value,
    double[] spread,
    int[] runs,
    int[] place,
    int[] circumstance,
    short[] repeat) {
  /** Results of the first circumstance that are no repeats. */
  public ResultColumns(
      long[] id,
      int[] entry,
      short[] discipline,
      short[] unit,
      double[] value,
      double[] spread,
      int[] runs,
      int[] place) {
    this(
        id,
        entry,
        discipline,
        unit,
        value,
        spread,
        runs,
        place,
        new int[id.length],
        new short[id.length]);
    Arrays.fill(repeat, (short) 1);
  }

  /** Number of results. */
  public int count() {
    return id.length;
  }
}
