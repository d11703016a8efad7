package org.griplore.query.network;

import java.util.Optional;
import java.util.OptionalDouble;
import org.griplore.query.statistics.SharedVariance;

/**
 * How a fit goes from standard errors to intervals. Where run-level variances are known the scatter
 * is {@code s2 = y'Py / df} at the estimated heterogeneity: near one where that is above zero,
 * below one where the tests agree better than their runs let expect.
 */
final class FitIntervals {
  /**
   * Tests may agree by luck, or because readings are coarse. A scatter that fewer than this share
   * of archives without any heterogeneity would show counts as large as if this share did.
   */
  private static final double LUCK_Z = -0.674_489_750_196_081_7;

  private final NetworkFit.Basis basis;

  /** Heterogeneity variance of the fit; zero where it is one lump with the error. */
  private final double tauSquared;

  /**
   * Harmonic mean of the run-level variances: what the weights stand around without heterogeneity.
   */
  private final double typical;

  private final double scatter;
  private final IntervalScale scale;
  private final double newTest;

  private FitIntervals(
      NetworkFit.Basis basis, double tauSquared, double scatter, IntervalScale scale, double lump) {
    this.basis = basis;
    this.tauSquared = tauSquared;
    this.scatter = scatter;
    this.typical = byScatter(basis) ? typicalVariance(basis) : Double.NaN;
    this.scale = scale;
    this.newTest =
        basis.errors() == ErrorKnowledge.UNKNOWN
            ? lump
            : byScatter(basis)
                ? Math.max(0, square(scale.widening()) * (typical + tauSquared) - typical)
                : tauSquared;
  }

  /**
   * @param quadratic weighted residual sum of squares at the fit's variances
   * @param lump error and heterogeneity together per arm, where no run-level variance is known
   */
  static FitIntervals of(NetworkFit.Basis basis, double tauSquared, double quadratic, double lump) {
    int df = basis.df();
    if (basis.errors() == ErrorKnowledge.UNKNOWN) {
      boolean told = df > 0 && lump > 0;
      return new FitIntervals(basis, 0, Double.NaN, told ? IntervalScale.student(df) : null, lump);
    }
    if (!byScatter(basis)) {
      boolean told =
          basis.options().intervalRule() == IntervalRule.CONVENTIONAL
              || basis.options().method() == VarianceMethod.NONE;
      return new FitIntervals(
          basis, tauSquared, Double.NaN, told ? IntervalScale.NORMAL : null, Double.NaN);
    }
    double scatter = Math.max(quadratic / df, luckyScatter(df));
    return new FitIntervals(
        basis, tauSquared, scatter, new IntervalScale(Math.sqrt(scatter), df), Double.NaN);
  }

  /**
   * The quantile of chi-squared over its degrees of freedom that a quarter lies below (Wilson and
   * Hilferty 1931, Proc Natl Acad Sci 17:684; within 5 % with one degree of freedom).
   */
  private static double luckyScatter(int df) {
    double root = 1 - 2 / (9.0 * df) + LUCK_Z * Math.sqrt(2 / (9.0 * df));
    return root * root * root;
  }

  /** Those of another fit, for equations over some of its arms. */
  FitIntervals in(NetworkFit.Basis some) {
    return new FitIntervals(some, tauSquared, scatter, scale, Double.NaN);
  }

  /**
   * With what other disciplines show of Q over its degrees of freedom. Their figure is in multiples
   * of the run-level variance v; in those of the fitted variance it is less by v / (v + t).
   */
  FitIntervals sharing(SharedVariance others) {
    if (!byScatter(basis)) {
      return this;
    }
    double share = typical / (typical + tauSquared);
    SharedVariance onScale = new SharedVariance(others.df(), others.variance() * share);
    double drawn = onScale.drawn(scatter, basis.df());
    return new FitIntervals(
        basis,
        tauSquared,
        scatter,
        new IntervalScale(Math.sqrt(drawn), basis.df() + others.df()),
        Double.NaN);
  }

  /** The scale, or null where no interval can be given. */
  IntervalScale scale() {
    return scale;
  }

  /** The difference with its prediction for a new test. */
  EstimatedComparison compared(Estimate estimate) {
    OptionalDouble df = predictionDf();
    if (df.isEmpty() || estimate.se().isEmpty()) {
      return new EstimatedComparison(estimate, OptionalDouble.empty(), OptionalDouble.empty());
    }
    double se = estimate.scale().widening() * estimate.se().getAsDouble();
    return new EstimatedComparison(
        estimate, OptionalDouble.of(Math.sqrt(se * se + 2 * newTest)), df);
  }

  private OptionalDouble predictionDf() {
    if (basis.errors() == ErrorKnowledge.UNKNOWN || byScatter(basis)) {
      return Optional.ofNullable(scale)
          .map(s -> OptionalDouble.of(s.df()))
          .orElse(OptionalDouble.empty());
    }
    int left = basis.options().predictionRule().degrees(basis.df());
    return basis.options().method() == VarianceMethod.NONE || left < 1
        ? OptionalDouble.empty()
        : OptionalDouble.of(left);
  }

  /** Whether intervals are by the scatter of tests around known run-level variances. */
  private static boolean byScatter(NetworkFit.Basis basis) {
    return basis.errors() != ErrorKnowledge.UNKNOWN
        && basis.options().intervalRule() == IntervalRule.BY_SCATTER
        && basis.options().method() != VarianceMethod.NONE
        && basis.df() > 0;
  }

  private static double typicalVariance(NetworkFit.Basis basis) {
    double sum = 0;
    double[] variances = NetworkFitter.filled(basis.rows(), basis.options().typicalVariance());
    for (double variance : variances) {
      sum += 1 / variance;
    }
    return variances.length / sum;
  }

  private static double square(double number) {
    return number * number;
  }
}
