package org.griplore.query.answer;

import java.util.OptionalDouble;

/** What is missing is null in the rows of an answer. */
public final class Missing {
  private Missing() {}

  /** The figure, or null. */
  public static Double orNull(OptionalDouble figure) {
    return figure.isPresent() ? (Double) figure.getAsDouble() : null;
  }
}
