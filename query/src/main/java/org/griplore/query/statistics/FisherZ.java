package org.griplore.query.statistics;

import java.util.Optional;

/** The interval of a correlation on Fisher's scale, z = atanh r. */
final class FisherZ {
  private FisherZ() {}

  /** Empty when the standard error is not finite; r of plus or minus one stays there. */
  static Optional<Interval> interval(double r, double se, double level) {
    if (!Double.isFinite(se)) {
      return Optional.empty();
    }
    if (Math.abs(r) >= 1) {
      return Optional.of(new Interval(r, r));
    }
    double z = 0.5 * (Math.log1p(r) - Math.log1p(-r));
    double half = Tails.normal(level) * se;
    return Optional.of(new Interval(Math.tanh(z - half), Math.tanh(z + half)));
  }
}
