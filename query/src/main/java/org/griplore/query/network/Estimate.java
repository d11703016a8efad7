package org.griplore.query.network;

import java.util.Optional;
import java.util.OptionalDouble;
import org.griplore.query.statistics.Interval;

/**
 * An estimate with its standard error.
 *
 * @param value the estimate, plus is better
 * @param se its standard error by generalised least squares; empty when no variance could be
 *     estimated
 * @param scale from the standard error to intervals and chances
 */
public record Estimate(double value, OptionalDouble se, IntervalScale scale) {

  static Estimate normal(double value, double se) {
    return new Estimate(value, OptionalDouble.of(se), IntervalScale.NORMAL);
  }

  /** An estimate of which nothing more is known. */
  public static Estimate alone(double value) {
    return new Estimate(value, OptionalDouble.empty(), IntervalScale.NORMAL);
  }

  /**
   * Confidence interval by the estimate's scale.
   *
   * @param level between 0 and 1, such as 0.95
   */
  public Optional<Interval> interval(double level) {
    return se.isEmpty()
        ? Optional.empty()
        : Optional.of(Interval.around(value, scale.reach(level) * se.getAsDouble()));
  }

  /** The estimate over its standard error; empty when that is missing or zero. */
  public OptionalDouble z() {
    return se.isPresent() && se.getAsDouble() > 0
        ? OptionalDouble.of(value / se.getAsDouble())
        : OptionalDouble.empty();
  }

  /**
   * Two-sided probability of so large an estimate when the truth is zero. With a standard error of
   * zero it is 1 for an estimate of zero and 0 for any other.
   */
  public OptionalDouble p() {
    if (se.isEmpty()) {
      return OptionalDouble.empty();
    }
    if (se.getAsDouble() == 0) {
      return OptionalDouble.of(value == 0 ? 1 : 0);
    }
    return OptionalDouble.of(scale.twoSided(value / se.getAsDouble()));
  }
}
