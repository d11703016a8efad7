package org.griplore.ingest.reduce;

import java.util.Objects;

/**
 * A part of a result's uncertainty. Results that share a source of uncertainty, such as a reference
 * measurement, covary by it.
 *
 * @param source what varies, unique in a log: {@code sequence 4} or {@code drift after sequence 9}
 * @param load how the effect answers to it: d effect / d source
 * @param variance variance of the source, relative where sets are compared by ratio; null when
 *     nothing tells it
 * @param freedom degrees of freedom of the variance; 0 when it is null
 */
public record UncertaintyPart(String source, double load, Double variance, int freedom) {
  /** Checks the parts. */
  public UncertaintyPart {
    Objects.requireNonNull(source);
  }

  /** Its part of the effect's variance; null when unknown. */
  public Double part() {
    return variance == null ? null : (Double) (load * load * variance);
  }
}
