package org.griplore.query.network;

/**
 * Effects with the mean of each component taken away, so that they do not depend on what was
 * grounded.
 */
final class Centred {
  private Centred() {}

  static double[] effects(ModelOrder order, Components components, double[] byPosition) {
    double[] mean = new double[components.count()];
    for (int p = 0; p < byPosition.length; p++) {
      mean[components.ofModel[order.modelAt[p]]] += byPosition[p];
    }
    for (int component = 0; component < mean.length; component++) {
      mean[component] /= components.size[component];
    }
    double[] out = new double[byPosition.length];
    for (int p = 0; p < out.length; p++) {
      out[p] = byPosition[p] - mean[components.ofModel[order.modelAt[p]]];
    }
    return out;
  }
}
