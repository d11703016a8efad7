package org.griplore.store.archive;

import java.time.Instant;
import org.griplore.store.vocabulary.DraftTable;

/**
 * A draft with what became of it.
 *
 * @param id its number
 * @param revision the revision it stands in
 * @param file the file's name
 * @param table where it stands, and the readings proposed
 * @param state what became of it
 * @param chosen which reading was taken, from 1; null when none was
 * @param decidedAt when that was decided; null while it is open
 */
public record DraftRecord(
    int id,
    int revision,
    String file,
    DraftTable table,
    State state,
    Integer chosen,
    Instant decidedAt) {
  /** What became of a draft. */
  public enum State {
    OPEN,
    TAKEN,
    DISMISSED
  }
}
