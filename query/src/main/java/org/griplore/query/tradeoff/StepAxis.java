package org.griplore.query.tradeoff;

import java.util.List;
import org.griplore.query.discipline.ModelStep;
import org.griplore.query.discipline.Network;
import org.griplore.query.network.EstimatedComparison;

/**
 * Steps from one generation to the next in one discipline, on its scale.
 *
 * @param step the steps, plus is better
 * @param compared what the network says of each
 * @param variance error variance of each; null when the network has none
 * @param shared mean error covariance of two different steps: those that share a model have errors
 *     in common, and so have those that share tests
 */
record StepAxis(
    double[] step, List<EstimatedComparison> compared, double[] variance, double shared) {

  static StepAxis of(Network network, List<ModelStep> steps) {
    List<EstimatedComparison> compared =
        steps.stream()
            .map(s -> (EstimatedComparison) network.compare(s.newer(), s.older()))
            .toList();
    double[] step = compared.stream().mapToDouble(EstimatedComparison::difference).toArray();
    if (compared.stream().anyMatch(c -> c.se().isEmpty())) {
      return new StepAxis(step, compared, null, 0);
    }
    double[] variance =
        compared.stream().mapToDouble(c -> Math.pow(c.se().getAsDouble(), 2)).toArray();
    double sum = 0;
    int n = steps.size();
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < i; j++) {
        sum += covariance(network, steps.get(i), steps.get(j));
      }
    }
    return new StepAxis(step, compared, variance, n < 2 ? 0 : 2 * sum / n / (n - 1));
  }

  /** By variances of differences: cov(a - b, c - d) = (D(a,d) + D(b,c) - D(a,c) - D(b,d)) / 2. */
  private static double covariance(Network network, ModelStep one, ModelStep two) {
    return (d(network, one.newer(), two.older())
            + d(network, one.older(), two.newer())
            - d(network, one.newer(), two.newer())
            - d(network, one.older(), two.older()))
        / 2;
  }

  private static double d(Network network, int first, int second) {
    return first == second
        ? 0
        : Math.pow(((EstimatedComparison) network.compare(first, second)).se().getAsDouble(), 2);
  }
}
