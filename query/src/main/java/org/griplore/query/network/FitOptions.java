package org.griplore.query.network;

import java.util.Objects;
import java.util.OptionalDouble;

/**
 * Choices of a fit.
 *
 * @param method how the heterogeneity variance is found
 * @param typicalVariance variance given to arms whose own is unknown; empty: the median of the
 *     known ones, or, where none is known, error and heterogeneity are estimated as one lump
 * @param predictionRule degrees of freedom of prediction intervals
 */
public record FitOptions(
    VarianceMethod method, OptionalDouble typicalVariance, PredictionRule predictionRule) {

  /**
   * @throws IllegalArgumentException when the typical variance is not a positive number
   */
  public FitOptions {
    Objects.requireNonNull(method, "method");
    Objects.requireNonNull(predictionRule, "predictionRule");
    if (typicalVariance.isPresent()) {
      double v = typicalVariance.getAsDouble();
      if (!(v > 0) || Double.isInfinite(v)) {
        throw new IllegalArgumentException(
            "The typical variance is " + v + ", expected a positive number.");
      }
    }
  }

  /** The usual choices with this method: no typical variance, one degree of freedom less. */
  public static FitOptions of(VarianceMethod method) {
    return new FitOptions(method, OptionalDouble.empty(), PredictionRule.Q_DF_LESS_ONE);
  }

  /** The same choices with a typical variance for arms of unknown variance. */
  public FitOptions withTypicalVariance(double variance) {
    return new FitOptions(method, OptionalDouble.of(variance), predictionRule);
  }

  /** The same choices with another rule for prediction intervals. */
  public FitOptions withPredictionRule(PredictionRule rule) {
    return new FitOptions(method, typicalVariance, rule);
  }
}
