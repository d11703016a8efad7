package org.griplore.query.network;

import java.util.Optional;
import java.util.OptionalDouble;

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

  /** Up to so many models one factor is cheap; beyond it, conjugate gradients form no matrix. */
  private static final int FACTORED = 400;

  /** Of one archive's discipline; empty without known variances or without degrees of freedom. */
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
    double[] variance = NetworkFitter.filled(rows, OptionalDouble.empty());
    double q =
        components.comparedModels() <= FACTORED
            ? GlsPoint.at(
                    new Laplacian(rows, ModelOrder.of(rows, components, arms.models())),
                    variance,
                    0,
                    false,
                    false)
                .quadratic
            : iterated(new Laplacian(rows, ModelOrder.unordered(components)), variance);
    return Optional.of(new ExcessScatter(q / df, df));
  }

  private static double iterated(Laplacian laplacian, double[] variance) {
    double[] w = GlsPoint.weights(variance, 0);
    double[] s = laplacian.testWeights(w);
    double[] right = laplacian.gather(laplacian.centred(w, s, laplacian.rows.y));
    double[] effects = new ConjugateGradients(laplacian, w).solve(right, TOLERANCE);
    double[] py = laplacian.centred(w, s, laplacian.residuals(laplacian.rows.y, effects));
    double q = 0;
    for (int i = 0; i < py.length; i++) {
      q += py[i] * py[i] / w[i];
    }
    return q;
  }
}
