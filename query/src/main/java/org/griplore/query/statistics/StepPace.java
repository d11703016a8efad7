package org.griplore.query.statistics;

import java.util.Optional;

/**
 * The usual gain a year: a line through the origin, step = pace x years, by weighted least squares
 * with the weights 1 / (se^2 + spread^2), so that steps known well count for more and none counts
 * for all (Aitken 1935, Proc Royal Society of Edinburgh 55:42).
 *
 * @param pace gain a year, plus is better, on the scale of the steps
 * @param se its standard error, the spread of true steps taken as known
 * @param steps steps it rests on
 */
public record StepPace(double pace, double se, int steps) {
  /**
   * Fits the pace.
   *
   * @param stepsTaken estimates of the steps
   * @param ses their standard errors, above 0
   * @param years years that each took, above 0
   * @param spread standard deviation of true steps about the line, 0 or more
   * @return empty for fewer than {@link StepDistribution#FEWEST} steps
   * @throws IllegalArgumentException when lengths differ or a value is not as said
   */
  public static Optional<StepPace> of(
      double[] stepsTaken, double[] ses, double[] years, double spread) {
    Checks.sameLength("steps and standard errors", stepsTaken.length, ses.length);
    Checks.sameLength("steps and years", stepsTaken.length, years.length);
    Checks.finite("step", stepsTaken);
    Checks.positive("standard error", ses);
    Checks.positive("years", years);
    if (stepsTaken.length < StepDistribution.FEWEST) {
      return Optional.empty();
    }
    double information = 0;
    double sum = 0;
    for (int i = 0; i < stepsTaken.length; i++) {
      double weight = years[i] / (ses[i] * ses[i] + spread * spread);
      information += weight * years[i];
      sum += weight * stepsTaken[i];
    }
    return Optional.of(
        new StepPace(sum / information, 1 / Math.sqrt(information), stepsTaken.length));
  }

  /** The normal interval of the pace. */
  public Interval interval(double level) {
    return Interval.around(pace, Tails.normal(level) * se);
  }
}
