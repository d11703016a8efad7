package org.griplore.ingest.reduce;

import java.util.Objects;
import org.griplore.store.vocabulary.Unit;

/**
 * One step from the runs to the result, so that a page can show it and go back.
 *
 * @param rule what was done, in words
 * @param before the figure before; null where many figures went in
 * @param unitBefore its unit; null likewise
 * @param after the figure after
 * @param unitAfter its unit
 */
public record Step(String rule, Double before, Unit unitBefore, double after, Unit unitAfter) {
  /** Checks the parts that must be there. */
  public Step {
    Objects.requireNonNull(rule);
    Objects.requireNonNull(unitAfter);
  }
}
