package org.griplore.store.archive;

import java.util.List;

/**
 * What an addition did.
 *
 * @param status new, changed or unchanged
 * @param revision number of the revision now current
 * @param tests tests told of
 * @param entries entries added
 * @param results results added
 * @param notes notes added
 * @param lineage lineage rows added
 * @param findings findings made
 * @param changes what changed against the revision before, in sentences
 */
public record AdditionOutcome(
    Status status,
    int revision,
    long tests,
    long entries,
    long results,
    long notes,
    long lineage,
    long findings,
    List<String> changes) {
  /** How the source stood to the archive. */
  public enum Status {
    /** Never read before. */
    NEW,
    /** Read before with another content. */
    REVISED,
    /** The same content is there already. */
    UNCHANGED
  }

  /** The outcome when a content is in the archive already. */
  public static AdditionOutcome unchanged(Revision current) {
    return new AdditionOutcome(Status.UNCHANGED, current.id(), 0, 0, 0, 0, 0, 0, List.of());
  }
}
