package org.griplore.query.network;

import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * A start for REML on a large network whose factor is dear: the same equation with {@code tr P = tr
 * P0 - tr(L^+ B)}, {@code B = M'P0P0M}, its first trace exact and the second the mean of {@code
 * z'L^+Bz} over a few fixed vectors of signs on models (Hutchinson 1990), each worth one solution
 * by conjugate gradients. With equal arm variances {@code L^+B} is a multiple of the identity less
 * a constant a component, so that the estimate has next to no error there, and little while
 * variances are of one order. The signs come from a fixed seed, and the exact step that follows
 * ends at the same root from any start.
 */
final class StochasticStart {
  private static final long SEED = 20_090_417L;
  private static final int VECTORS = 4;
  private static final double TOLERANCE = 1e-7;

  private final Laplacian laplacian;
  private final Components components;
  private final double[] variance;
  private final double typical;
  private final double[][] signs;
  private double slope = -1;

  StochasticStart(Laplacian laplacian, Components components, double[] variance, double typical) {
    this.laplacian = laplacian;
    this.components = components;
    this.variance = variance;
    this.typical = typical;
    SplittableRandom random = new SplittableRandom(SEED);
    signs = new double[VECTORS][laplacian.size()];
    for (double[] vector : signs) {
      for (int i = 0; i < vector.length; i++) {
        vector[i] = random.nextBoolean() ? 1 : -1;
      }
    }
  }

  /** Generalised Q at no heterogeneity, to the tolerance of conjugate gradients. */
  double q() {
    double[] w = GlsPoint.weights(variance, 0);
    double[] py = projected(w, new ConjugateGradients(laplacian, w), 1e-12);
    double sum = 0;
    for (int i = 0; i < py.length; i++) {
      sum += py[i] * py[i] / w[i];
    }
    return sum;
  }

  /** Slope of the equation at the last step of {@link #tauSquared()}, near minus one. */
  double slope() {
    return slope;
  }

  /** A heterogeneity variance near the root, or zero where the equation has none. */
  double tauSquared() {
    double u = Math.log(2 * typical);
    double lastU = Double.NaN;
    double lastG = Double.NaN;
    double lowest = Math.log(typical);
    for (int step = 0; step < 12; step++) {
      double g = score(Math.exp(u) - typical);
      double secant = (g - lastG) / (u - lastU);
      if (secant < -0.05 && secant > -20) {
        slope = secant;
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
    double[] s = laplacian.testWeights(w);
    ConjugateGradients solver = new ConjugateGradients(laplacian, w);
    double[] values =
        IntStream.rangeClosed(0, VECTORS)
            .parallel()
            .mapToDouble(k -> k == VECTORS ? squared(w, solver) : sample(w, s, solver, signs[k]))
            .toArray();
    double trace = traceOfTests(w, s);
    for (int k = 0; k < VECTORS; k++) {
      trace -= values[k] / VECTORS;
    }
    return Math.log(values[VECTORS] / trace);
  }

  /** tr P0. */
  private double traceOfTests(double[] w, double[] s) {
    double sum = 0;
    for (int t = 0; t < laplacian.rows.tests; t++) {
      for (int i = laplacian.rows.start[t]; i < laplacian.rows.start[t + 1]; i++) {
        sum += w[i] * (1 - w[i] / s[t]);
      }
    }
    return sum;
  }

  /** z'L^+Bz. */
  private double sample(double[] w, double[] s, ConjugateGradients solver, double[] z) {
    double[] arms = new double[w.length];
    for (int i = 0; i < arms.length; i++) {
      arms[i] = z[laplacian.column[i]];
    }
    double[] twice = laplacian.centred(w, s, laplacian.centred(w, s, arms));
    double[] x = solver.solve(laplacian.gather(twice), TOLERANCE);
    double[] least = Centred.effects(laplacian.order, components, x);
    double sum = 0;
    for (int p = 0; p < z.length; p++) {
      sum += z[p] * least[p];
    }
    return sum;
  }

  /** y'PPy. */
  private double squared(double[] w, ConjugateGradients solver) {
    double sum = 0;
    for (double value : projected(w, solver, TOLERANCE)) {
      sum += value * value;
    }
    return sum;
  }

  /** Py. */
  private double[] projected(double[] w, ConjugateGradients solver, double tolerance) {
    double[] y = laplacian.rows.y;
    double[] s = laplacian.testWeights(w);
    double[] right = laplacian.gather(laplacian.centred(w, s, y));
    return laplacian.centred(w, s, laplacian.residuals(y, solver.solve(right, tolerance)));
  }
}
