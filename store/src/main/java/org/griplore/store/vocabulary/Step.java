package org.griplore.store.vocabulary;

import java.util.Objects;

/**
 * One step from what was found to the figure that is kept, so that an answer can show it and a
 * reader can go back.
 *
 * @param rule what was done, in words
 * @param before the figure before; null where a text or many figures went in
 * @param beforeUnit its unit; null likewise
 * @param after the figure after
 * @param afterUnit its unit
 * @param label how sure the rule is, or what else must be said with it; null when nothing must
 * @param cell where what went in stands; null when that is the step before, or the result's own
 *     cell
 */
public record Step(
    String rule,
    Double before,
    Unit beforeUnit,
    double after,
    Unit afterUnit,
    String label,
    Cell cell) {
  /** Checks the parts that must be there. */
  public Step {
    Objects.requireNonNull(rule);
    Objects.requireNonNull(afterUnit);
    if ((before == null) != (beforeUnit == null)) {
      throw new IllegalArgumentException("a figure and its unit come together");
    }
    if (!Double.isFinite(after) || before != null && !Double.isFinite(before)) {
      throw new IllegalArgumentException("a step's figures are finite");
    }
  }

  /** From figure to figure. */
  public static Step of(String rule, double before, Unit beforeUnit, double after, Unit afterUnit) {
    return new Step(rule, before, beforeUnit, after, afterUnit, null, null);
  }

  /** From a text or many figures to one figure. */
  public static Step to(String rule, double after, Unit afterUnit) {
    return new Step(rule, null, null, after, afterUnit, null, null);
  }

  /** The same step with what must be said with it. */
  public Step labelled(String said) {
    return new Step(rule, before, beforeUnit, after, afterUnit, said, cell);
  }

  /** The same step with where what went in stands. */
  public Step at(Cell place) {
    return new Step(rule, before, beforeUnit, after, afterUnit, label, place);
  }
}
