package org.griplore.query.network;

import java.util.Optional;

/**
 * How far tests scatter in multiples of what their runs let expect: the generalised Q over its
 * degrees of freedom, H squared (Higgins and Thompson 2002, Stat Med 21:1539). One without
 * heterogeneity, on average.
 *
 * @param ratio Q / df, 0 or more
 * @param df degrees of freedom of Q, at least one
 */
public record ExcessScatter(double ratio, int df) {
  private static final double TOLERANCE = 1e-9;

  /** Without a matrix, by conjugate gradients; empty without known variances or without df. */
  public static Optional<ExcessScatter> of(Arms arms) {
    TestRows rows = new TestRows(arms);
    if (rows.knownVariances() == 0) {
      return Optional.empty();
    }
    Components components = new Components(rows, arms.models());
    int df = rows.arms - rows.tests - components.comparedModels() + components.count();
    if (df < 1) {
      return Optional.empty();
    }
    Laplacian laplacian = new Laplacian(rows, ModelOrder.unordered(components));
    double[] variance = NetworkFitter.filled(rows, java.util.OptionalDouble.empty());
    double[] w = GlsPoint.weights(variance, 0);
    double[] s = laplacian.testWeights(w);
    double[] right = laplacian.gather(laplacian.centred(w, s, rows.y));
    double[] effects = new ConjugateGradients(laplacian, w).solve(right, TOLERANCE);
    double[] py = laplacian.centred(w, s, laplacian.residuals(rows.y, effects));
    double q = 0;
    for (int i = 0; i < py.length; i++) {
      q += py[i] * py[i] / w[i];
    }
    return Optional.of(new ExcessScatter(q / df, df));
  }
}
