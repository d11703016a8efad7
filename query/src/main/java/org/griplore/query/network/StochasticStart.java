package org.griplore.query.network;

import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * A start for REML on a large network whose factor is dear: the same equation with {@code tr P}
 * replaced by the mean of {@code z'Pz} over a few fixed vectors of signs (Hutchinson 1990), each
 * worth one solution by conjugate gradients. Its relative error is about {@code sqrt(2 / (df *
 * vectors))}. The signs come from a fixed seed, and the exact steps that follow end at the same
 * root from any start.
 */
final class StochasticStart {
  private static final long SEED = 20_090_417L;
  private static final int VECTORS = 6;
  private static final double TOLERANCE = 1e-7;

  private final Laplacian laplacian;
  private final double[] variance;
  private final double typical;
  private final double[][] signs;

  StochasticStart(Laplacian laplacian, double[] variance, double typical) {
    this.laplacian = laplacian;
    this.variance = variance;
    this.typical = typical;
    SplittableRandom random = new SplittableRandom(SEED);
    signs = new double[VECTORS][laplacian.rows.arms];
    for (double[] vector : signs) {
      for (int i = 0; i < vector.length; i++) {
        vector[i] = random.nextBoolean() ? 1 : -1;
      }
    }
  }

  /** Generalised Q at no interplay, to the tolerance of conjugate gradients. */
  double q() {
    double[] w = GlsPoint.weights(variance, 0);
    double[] py = projected(w, new ConjugateGradients(laplacian, w), laplacian.rows.y, 1e-12);
    double sum = 0;
    for (int i = 0; i < py.length; i++) {
      sum += py[i] * py[i] / w[i];
    }
    return sum;
  }

  /** An interplay variance near the root, or zero where the equation has none. */
  double interplay() {
    double u = Math.log(2 * typical);
    double lastU = Double.NaN;
    double lastG = Double.NaN;
    double lowest = Math.log(typical);
    for (int step = 0; step < 12; step++) {
      double g = score(Math.exp(u) - typical);
      double slope = (g - lastG) / (u - lastU);
      if (!(slope < -0.05 && slope > -20)) {
        slope = -1;
      }
      double next = u - g / slope;
      if (next <= lowest && u <= lowest) {
        return 0;
      }
      next = Math.max(next, lowest);
      if (Math.abs(next - u) < 1e-4) {
        return Math.exp(next) - typical;
      }
      lastU = u;
      lastG = g;
      u = next;
    }
    return Math.exp(u) - typical;
  }

  private double score(double t) {
    double[] w = GlsPoint.weights(variance, Math.max(0, t));
    ConjugateGradients solver = new ConjugateGradients(laplacian, w);
    double[] parts =
        IntStream.rangeClosed(0, VECTORS)
            .parallel()
            .mapToDouble(
                k -> {
                  double[] x = k == VECTORS ? laplacian.rows.y : signs[k];
                  double[] px = projected(w, solver, x, TOLERANCE);
                  double sum = 0;
                  for (int i = 0; i < px.length; i++) {
                    sum += px[i] * (k == VECTORS ? px[i] : x[i]);
                  }
                  return sum;
                })
            .toArray();
    double trace = 0;
    for (int k = 0; k < VECTORS; k++) {
      trace += parts[k] / VECTORS;
    }
    return Math.log(parts[VECTORS] / trace);
  }

  private double[] projected(double[] w, ConjugateGradients solver, double[] x, double tolerance) {
    double[] s = laplacian.testWeights(w);
    double[] right = laplacian.gather(laplacian.centred(w, s, x));
    double[] effects = solver.solve(right, tolerance);
    return laplacian.centred(w, s, laplacian.residuals(x, effects));
  }
}
