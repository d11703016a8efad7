package org.griplore.query.network;

/**
 * Effects with the mean of each part taken away, so that they do not depend on what was grounded.
 */
final class Centred {
  private Centred() {}

  static double[] effects(ModelOrder order, Components parts, double[] byPosition) {
    double[] mean = new double[parts.count()];
    for (int p = 0; p < byPosition.length; p++) {
      mean[parts.ofModel[order.modelAt[p]]] += byPosition[p];
    }
    for (int part = 0; part < mean.length; part++) {
      mean[part] /= parts.size[part];
    }
    double[] out = new double[byPosition.length];
    for (int p = 0; p < out.length; p++) {
      out[p] = byPosition[p] - mean[parts.ofModel[order.modelAt[p]]];
    }
    return out;
  }
}
