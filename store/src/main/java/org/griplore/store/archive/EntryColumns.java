package org.griplore.store.archive;

/**
 * Entries as columns of equal length. The arrays are the snapshot's own: read, never write.
 *
 * @param test position in {@link Snapshot#tests}
 * @param model position in {@link Snapshot#models}
 * @param report position in {@link Snapshot#reports}
 * @param size the entry's own size where it differs from the test's, else null
 */
public record EntryColumns(int[] test, int[] model, int[] report, String[] size) {
  /** Number of entries. */
  public int count() {
    return test.length;
  }
}
