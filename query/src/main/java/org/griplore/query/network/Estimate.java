package org.griplore.query.network;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.griplore.query.statistics.Interval;
import org.griplore.query.statistics.Tails;

/**
 * An estimate with its standard error.
 *
 * @param value the estimate, plus is better
 * @param se its standard error; empty when no variance could be estimated
 * @param df degrees of freedom of a t interval where the variance is estimated from residuals;
 *     empty for a normal interval
 */
public record Estimate(double value, OptionalDouble se, OptionalInt df) {

  static Estimate normal(double value, double se) {
    return new Estimate(value, OptionalDouble.of(se), OptionalInt.empty());
  }

  /**
   * Confidence interval, normal or, with degrees of freedom, by t.
   *
   * @param level between 0 and 1, such as 0.95
   */
  public Optional<Interval> interval(double level) {
    if (se.isEmpty()) {
      return Optional.empty();
    }
    double factor = df.isPresent() ? Tails.student(level, df.getAsInt()) : Tails.normal(level);
    return Optional.of(Interval.around(value, factor * se.getAsDouble()));
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
    double z = value / se.getAsDouble();
    return OptionalDouble.of(
        df.isPresent() ? Tails.studentTwoSided(z, df.getAsInt()) : Tails.normalTwoSided(z));
  }
}
