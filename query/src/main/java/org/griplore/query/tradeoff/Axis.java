package org.griplore.query.tradeoff;

import java.util.Optional;
import org.griplore.query.discipline.Difference;
import org.griplore.query.discipline.Network;
import org.griplore.query.network.EstimatedComparison;
import org.griplore.query.network.IntervalScale;
import org.griplore.query.statistics.Interval;

/**
 * Some models of one part of a network, each against the mean of them all, on the discipline's
 * scale.
 *
 * <p>With D(i,j) the variance of the difference of two models, the variance of a model less the
 * mean is the mean of D over its row less half the mean of all D; half the mean of D over pairs of
 * different models is what error adds to the spread (n - 1) of the effects, however their errors
 * are related.
 *
 * @param effect plus is better
 * @param variance error variance of each; null when the network has none
 * @param spreadError what error adds to the variance of the effects; 0 when not known
 * @param scale from standard errors to intervals; normal where nothing is known
 */
record Axis(double[] effect, double[] variance, double spreadError, IntervalScale scale) {

  /** The models are compared with each other by the network: all in one part. */
  static Axis of(Network network, int[] models) {
    int n = models.length;
    double[] effect = new double[n];
    double[] row = new double[n];
    boolean known = true;
    IntervalScale scale = IntervalScale.NORMAL;
    double mean = 0;
    double all = 0;
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < i; j++) {
        EstimatedComparison pair = (EstimatedComparison) network.compare(models[i], models[j]);
        scale = pair.estimate().scale();
        if (j == 0) {
          effect[i] = pair.difference();
          mean += pair.difference() / n;
        }
        known &= pair.se().isPresent();
        double d = pair.se().orElse(0) * pair.se().orElse(0);
        row[i] += d / n;
        row[j] += d / n;
        all += 2 * d / n / n;
      }
    }
    for (int i = 0; i < n; i++) {
      effect[i] -= mean;
      row[i] = Math.max(0, row[i] - all / 2);
    }
    return new Axis(effect, known ? row : null, known && n > 1 ? all / 2 * n / (n - 1) : 0, scale);
  }

  /** Standard error of a model's effect; null when not known. */
  Double se(int i) {
    return variance == null ? null : (Double) Math.sqrt(variance[i]);
  }

  /** The 95 % interval of a model's effect. */
  Optional<Interval> interval(int i) {
    return variance == null
        ? Optional.empty()
        : Optional.of(Interval.around(effect[i], scale.reach(Difference.LEVEL) * se(i)));
  }
}
