package org.griplore.ingest.reduce.limit;

import java.util.Objects;
import org.griplore.store.vocabulary.Cell;

/**
 * Something a reader of the result must know.
 *
 * @param kind what sort of remark it is
 * @param cell where in the log; null when it is about the whole log
 * @param found what was found, with its place in words
 * @param meaning what was done or what it means
 */
public record Remark(Kind kind, Cell cell, String found, String meaning) {
  /** The sorts of remarks. */
  public enum Kind {
    /** No reference, or one on one side only. */
    REFERENCE_MISSING,
    /** A window, unit or level that the log does not state. */
    TAKEN_AS,
    /** A speed far from the nominal one. */
    SPEED_DEVIATION,
    /** A run that does not count. */
    LEFT_OUT,
    /** A run far from the others of its set; it counts. */
    OUTLIER,
    /** A limit that was not kept to. */
    LIMIT,
    /** A standard error that lacks a part. */
    UNCERTAINTY,
    /** A step in the reference. */
    STEP
  }

  /** Checks that only the cell may be null. */
  public Remark {
    Objects.requireNonNull(kind);
    Objects.requireNonNull(found);
    Objects.requireNonNull(meaning);
  }
}
