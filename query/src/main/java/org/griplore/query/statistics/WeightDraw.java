package org.griplore.query.statistics;

import java.util.SplittableRandom;

/**
 * Draws from the Dirichlet distribution as gamma variates over their sum; gammas by Marsaglia and
 * Tsang 2000, ACM Transactions on Mathematical Software 26:363.
 */
final class WeightDraw {
  private static final double TINY = 1e-300;

  private final double[] parameters;
  private final SplittableRandom random;

  WeightDraw(double[] parameters, SplittableRandom random) {
    this.parameters = parameters;
    this.random = random;
  }

  /** Fills weights that sum to 1. */
  void into(double[] weights) {
    double sum = 0;
    for (int i = 0; i < weights.length; i++) {
      weights[i] = Math.max(TINY, parameters[i] == 1 ? exponential() : gamma(parameters[i]));
      sum += weights[i];
    }
    for (int i = 0; i < weights.length; i++) {
      weights[i] /= sum;
    }
  }

  private double exponential() {
    return -Math.log(1 - random.nextDouble());
  }

  private double gamma(double shape) {
    if (shape < 1) {
      return gamma(shape + 1) * Math.pow(1 - random.nextDouble(), 1 / shape);
    }
    double d = shape - 1.0 / 3;
    double c = 1 / Math.sqrt(9 * d);
    while (true) {
      double z = normal();
      double v = 1 + c * z;
      if (v > 0) {
        v = v * v * v;
        if (Math.log(1 - random.nextDouble()) < 0.5 * z * z + d - d * v + d * Math.log(v)) {
          return d * v;
        }
      }
    }
  }

  /** By the polar method, of which one of two is used: what the next draw is depends on nothing. */
  private double normal() {
    while (true) {
      double u = 2 * random.nextDouble() - 1;
      double v = 2 * random.nextDouble() - 1;
      double s = u * u + v * v;
      if (s > 0 && s < 1) {
        return u * Math.sqrt(-2 * Math.log(s) / s);
      }
    }
  }
}
