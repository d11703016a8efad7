package org.griplore.query.network;

import java.util.Optional;
import java.util.OptionalDouble;
import org.griplore.query.statistics.Interval;
import org.griplore.query.statistics.Tails;

/**
 * The difference of two models.
 *
 * @param estimate first model minus second, plus: the first is better
 * @param predictionSd standard deviation of the difference in a new test: that of the estimate and
 *     twice the per-arm heterogeneity variance together (where error and heterogeneity are one
 *     lump, twice the lump, that is, the measured difference); empty when neither was estimated
 * @param predictionDf degrees of freedom of its t interval; present with predictionSd
 */
public record EstimatedComparison(
    Estimate estimate, OptionalDouble predictionSd, OptionalDouble predictionDf)
    implements ModelComparison {

  /** First model minus second. */
  public double difference() {
    return estimate.value();
  }

  /** Standard error of the difference. */
  public OptionalDouble se() {
    return estimate.se();
  }

  /** Confidence interval of the difference. */
  public Optional<Interval> interval(double level) {
    return estimate.interval(level);
  }

  /**
   * Interval for the difference in a new test like those of the archive (Higgins, Thompson and
   * Spiegelhalter 2009).
   */
  public Optional<Interval> prediction(double level) {
    if (predictionSd.isEmpty() || predictionDf.isEmpty()) {
      return Optional.empty();
    }
    double factor = Tails.student(level, predictionDf.getAsDouble());
    return Optional.of(Interval.around(difference(), factor * predictionSd.getAsDouble()));
  }
}
