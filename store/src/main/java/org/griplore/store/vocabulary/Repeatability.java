package org.griplore.store.vocabulary;

import java.util.Objects;

/**
 * How far repeated runs of a discipline scatter, and on what ground that is said.
 *
 * @param kind whether the value is a coefficient of variation or a standard deviation
 * @param value a fraction of the mean (0.01 is 1 %), or a standard deviation in the discipline's
 *     unit; above 0
 * @param basis the ground it stands on
 * @param source the source in words
 */
public record Repeatability(Kind kind, double value, Basis basis, String source) {
  /** What the value is. */
  public enum Kind {
    /** Sample standard deviation over the mean, as a fraction. */
    CV,
    /** Sample standard deviation in the discipline's unit. */
    SD
  }

  /** The ground a figure stands on. */
  public enum Basis {
    /** Measured in a published study. */
    MEASURED,
    /** The most that a regulation or standard allows; typical scatter is smaller. */
    LIMIT,
    /** Common practice of test houses. */
    PRACTICE,
    /** From memory: check the official text. */
    MEMORY
  }

  /** Checks the parts. */
  public Repeatability {
    Objects.requireNonNull(kind);
    Objects.requireNonNull(basis);
    Objects.requireNonNull(source);
    if (!(value > 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException("a repeatability is above 0: " + value);
    }
  }
}
