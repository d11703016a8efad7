package org.griplore.query.network;

import org.griplore.query.solver.EnvelopeCholesky;
import org.griplore.query.solver.SymmetricInverse;

/** Variances of differences of model effects, from the inverse of the information matrix. */
final class EffectCovariance {
  /** Up to this order the whole inverse is kept (8 bytes an entry: 128 MB at most). */
  static final int WHOLE = 4000;

  private final ModelOrder order;
  private final EnvelopeCholesky factor;
  private final SymmetricInverse inverse;
  private final double scale;

  /** For each position the sum of its row of the inverse over its component. */
  private final double[] rowSums;

  private final double[] partSums;
  private final Components components;

  /**
   * @param held inverse already at hand, possibly only inside the envelope, or null
   * @param scale factor of every variance
   */
  EffectCovariance(
      ModelOrder order,
      Components components,
      EnvelopeCholesky factor,
      SymmetricInverse held,
      double scale) {
    this(order, components, factor, held, scale, WHOLE);
  }

  /** With another bound on the order up to which the whole inverse is kept. */
  EffectCovariance(
      ModelOrder order,
      Components components,
      EnvelopeCholesky factor,
      SymmetricInverse held,
      double scale,
      int wholeUpTo) {
    this.order = order;
    this.components = components;
    this.factor = factor;
    this.scale = scale;
    boolean whole = order.size() <= wholeUpTo;
    this.inverse = held != null && (!whole || full(held)) ? held : factor.inverse(whole);
    double[] ones = new double[order.size()];
    for (int p = 0; p < ones.length; p++) {
      ones[p] = order.grounded[p] ? 0 : 1;
    }
    this.rowSums = factor.solve(ones);
    this.partSums = new double[components.count()];
    for (int p = 0; p < ones.length; p++) {
      if (order.grounded[p]) {
        rowSums[p] = 0;
      }
      partSums[components.ofModel[order.modelAt[p]]] += rowSums[p];
    }
  }

  private boolean full(SymmetricInverse held) {
    for (int p = 0; p < order.size(); p++) {
      if (!held.holds(0, p)) {
        return false;
      }
    }
    return true;
  }

  /** Variance of the difference of the effects at two positions of one component. */
  double ofDifference(int p, int q) {
    return scale * unscaledDifference(p, q);
  }

  /** The same in units of the weights, before the common scale. */
  double unscaledDifference(int p, int q) {
    return Math.max(0, entry(p, p) + entry(q, q) - 2 * entry(p, q));
  }

  /** Entry of the inverse, the grounded model at zero, in units of the weights. */
  double unscaled(int p, int q) {
    return entry(p, q);
  }

  /** Row p of the inverse times the effect at q less the mean of its component. */
  double unscaledCentred(int p, int q) {
    int component = components.ofModel[order.modelAt[q]];
    return components.ofModel[order.modelAt[p]] == component
        ? entry(p, q) - rowSums[p] / components.size[component]
        : 0;
  }

  /** Variance of the effect at a position less the mean effect of its component. */
  double ofCentred(int p) {
    int component = components.ofModel[order.modelAt[p]];
    double n = components.size[component];
    return Math.max(0, scale * (entry(p, p) - 2 * rowSums[p] / n + partSums[component] / (n * n)));
  }

  /** Variance of a combination of effects whose weights add up to zero in each component. */
  double ofCombination(int[] positions, double[] weights) {
    double[] right = new double[order.size()];
    for (int k = 0; k < positions.length; k++) {
      if (!order.grounded[positions[k]]) {
        right[positions[k]] += weights[k];
      }
    }
    double[] x = factor.solve(right);
    double sum = 0;
    for (int p = 0; p < right.length; p++) {
      sum += right[p] * x[p];
    }
    return Math.max(0, scale * sum);
  }

  private double entry(int p, int q) {
    if (order.grounded[p] || order.grounded[q]) {
      return 0;
    }
    if (inverse.holds(p, q)) {
      return inverse.get(p, q);
    }
    double[] unit = new double[order.size()];
    unit[p] = 1;
    return factor.solve(unit)[q];
  }
}
