package org.griplore.query.network;

import java.util.Objects;
import java.util.OptionalDouble;

/**
 * Choices of a fit.
 *
 * @param method how the heterogeneity variance is found
 * @param typicalVariance variance given to arms whose own is unknown; empty: the median of the
 *     known ones, or, where none is known, error and heterogeneity are estimated as one lump
 * @param predictionRule degrees of freedom of conventional prediction intervals
 * @param intervalRule how intervals are made where run-level variances are known
 */
public record FitOptions(
    VarianceMethod method,
    OptionalDouble typicalVariance,
    PredictionRule predictionRule,
    IntervalRule intervalRule) {

  /**
   * @throws IllegalArgumentException when the typical variance is not a positive number
   */
  public FitOptions {
    Objects.requireNonNull(method, "method");
    Objects.requireNonNull(predictionRule, "predictionRule");
    Objects.requireNonNull(intervalRule, "intervalRule");
    if (typicalVariance.isPresent()) {
      double v = typicalVariance.getAsDouble();
      if (!(v > 0) || Double.isInfinite(v)) {
        throw new IllegalArgumentException(
            "The typical variance is " + v + ", expected a positive number.");
      }
    }
  }

  /** The usual choices with this method: no typical variance, intervals by the tests' scatter. */
  public static FitOptions of(VarianceMethod method) {
    return new FitOptions(
        method, OptionalDouble.empty(), PredictionRule.Q_DF_LESS_ONE, IntervalRule.BY_SCATTER);
  }

  /** The same choices with intervals as meta-analysis programs usually give them. */
  public FitOptions conventional() {
    return new FitOptions(method, typicalVariance, predictionRule, IntervalRule.CONVENTIONAL);
  }

  /** The same choices with a typical variance for arms of unknown variance. */
  public FitOptions withTypicalVariance(double variance) {
    return new FitOptions(method, OptionalDouble.of(variance), predictionRule, intervalRule);
  }

  /** The same choices with another rule for prediction intervals. */
  public FitOptions withPredictionRule(PredictionRule rule) {
    return new FitOptions(method, typicalVariance, rule, intervalRule);
  }
}
