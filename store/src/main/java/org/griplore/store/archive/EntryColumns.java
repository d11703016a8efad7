package org.griplore.store.archive;

import org.griplore.store.vocabulary.TyreState;
import org.griplore.store.vocabulary.Variant;

/**
 * Entries as columns of equal length. The arrays are the snapshot's own: read, never write.
 *
 * @param test position in {@link Snapshot#tests}
 * @param model position in {@link Snapshot#models}
 * @param report position in {@link Snapshot#reports}
 * @param size the entry's own size where it differs from the test's, else null
 * @param state new or worn
 * @param variant what sets the tyre apart from the plain version of its model
 */
public record EntryColumns(
    int[] test, int[] model, int[] report, String[] size, TyreState[] state, Variant[] variant) {
  /** Number of entries. */
  public int count() {
    return test.length;
  }
}
