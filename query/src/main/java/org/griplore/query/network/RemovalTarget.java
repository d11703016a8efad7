package org.griplore.query.network;

/**
 * A combination of effects whose dependence on single results is asked: c'm with {@code pull = W (I
 * - P_tests) M L^- c}, what each arm's result adds to it.
 *
 * @param value the estimate by all results
 * @param variance its variance in units of the fit's weights
 * @param pull one number an arm
 */
record RemovalTarget(double value, double variance, double[] pull) {

  /** The difference of two models of one component. */
  static RemovalTarget difference(NetworkFit fit, int first, int second) {
    int p = fit.position(first);
    int q = fit.position(second);
    int[] columns = fit.basis().laplacian().column;
    double[] x = new double[columns.length];
    for (int i = 0; i < x.length; i++) {
      x[i] = fit.covariance().unscaled(columns[i], p) - fit.covariance().unscaled(columns[i], q);
    }
    return new RemovalTarget(
        fit.effectAt(p) - fit.effectAt(q), fit.covariance().unscaledDifference(p, q), pull(fit, x));
  }

  /** The effect of a model less the mean of its component. */
  static RemovalTarget effect(NetworkFit fit, int model) {
    int p = fit.position(model);
    int[] columns = fit.basis().laplacian().column;
    double[] x = new double[columns.length];
    for (int i = 0; i < x.length; i++) {
      x[i] = fit.covariance().unscaledCentred(columns[i], p);
    }
    return new RemovalTarget(
        fit.effectAt(p), fit.covariance().ofCentred(p) / fit.scale(), pull(fit, x));
  }

  private static double[] pull(NetworkFit fit, double[] x) {
    Laplacian laplacian = fit.basis().laplacian();
    double[] w = fit.weights();
    return laplacian.centred(w, laplacian.testWeights(w), x);
  }
}
