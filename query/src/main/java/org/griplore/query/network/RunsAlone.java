package org.griplore.query.network;

import java.util.Optional;
import java.util.OptionalDouble;

/** An estimate with the error that runs alone give it: heterogeneity is no part of it. */
final class RunsAlone {
  private RunsAlone() {}

  /** Variance {@code sum l^2 v} over arms, l what each adds to the estimate. */
  static Optional<Estimate> of(NetworkFit fit, RemovalTarget target) {
    if (fit.errors() == ErrorKnowledge.UNKNOWN) {
      return Optional.empty();
    }
    TestRows rows = fit.basis().rows();
    double[] variance = NetworkFitter.filled(rows, fit.options().typicalVariance());
    double sum = 0;
    double byDf = 0;
    for (int i = 0; i < variance.length; i++) {
      double part = target.pull()[i] * target.pull()[i] * variance[i];
      sum += part;
      byDf += part * part / rows.varianceDf[i];
    }
    IntervalScale scale =
        byDf > 0 ? IntervalScale.student(Math.max(1, sum * sum / byDf)) : IntervalScale.NORMAL;
    return Optional.of(new Estimate(target.value(), OptionalDouble.of(Math.sqrt(sum)), scale));
  }
}
