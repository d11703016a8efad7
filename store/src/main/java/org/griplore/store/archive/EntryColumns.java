package org.griplore.store.archive;

import java.util.Arrays;
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
  /** Entries that are all new and of the plain version. */
  public EntryColumns(int[] test, int[] model, int[] report, String[] size) {
    this(test, model, report, size, new TyreState[test.length], new Variant[test.length]);
    Arrays.fill(state, TyreState.NEW);
    Arrays.fill(variant, Variant.STANDARD);
  }

  /** Number of entries. */
  public int count() {
    return test.length;
  }
}
