package org.griplore.query.network;

/**
 * Two models that no chain of tests connects.
 *
 * @param model the model that is missing, or the first of the two when both stand in components
 * @param reason why there is no comparison
 */
public record NotCompared(int model, Reason reason) implements ModelComparison {

  /** Why two models cannot be compared. */
  public enum Reason {
    /** The model has no result in this discipline. */
    NOT_TESTED,
    /** The model has results, but each in a test without any other model. */
    ONLY_ALONE,
    /** Both models were tested against others, in components of the archive that never meet. */
    SEPARATE_PARTS
  }
}
