package org.griplore.query.network;

/**
 * Solves L x = b by conjugate gradients with the diagonal as preconditioner (Hestenes and Stiefel
 * 1952). L is only ever applied test by test. It is singular (a constant a component is free); b
 * must lie in its range, which holds for every b that was centred inside tests.
 */
final class ConjugateGradients {
  private static final double ENOUGH = 1e-8;

  private final Laplacian laplacian;
  private final double[] w;
  private final double[] s;
  private final double[] inverseDiagonal;

  ConjugateGradients(Laplacian laplacian, double[] w) {
    this.laplacian = laplacian;
    this.w = w;
    this.s = laplacian.testWeights(w);
    this.inverseDiagonal = laplacian.diagonal(w, s);
    for (int i = 0; i < inverseDiagonal.length; i++) {
      inverseDiagonal[i] = 1 / inverseDiagonal[i];
    }
  }

  /**
   * @param tolerance bound on the preconditioned residual relative to that of x = 0 (rounding may
   *     keep it from being met; 1e-8 must be)
   * @throws ArithmeticException when even 1e-8 is not met in ten times the order of L steps
   */
  double[] solve(double[] b, double tolerance) {
    int n = b.length;
    double[] x = new double[n];
    double[] r = b.clone();
    double[] p = new double[n];
    double[] q = new double[n];
    double rho = preconditioned(r, p);
    double atStart = rho;
    double goal = rho * tolerance * tolerance;
    int most = 10 * n + 100;
    for (int step = 0; rho > goal && step < most; step++) {
      laplacian.apply(w, s, p, q);
      double curvature = 0;
      for (int i = 0; i < n; i++) {
        curvature += p[i] * q[i];
      }
      if (!(curvature > 0)) {
        break;
      }
      double alpha = rho / curvature;
      double next = 0;
      for (int i = 0; i < n; i++) {
        x[i] += alpha * p[i];
        r[i] -= alpha * q[i];
        next += r[i] * r[i] * inverseDiagonal[i];
      }
      double beta = next / rho;
      for (int i = 0; i < n; i++) {
        p[i] = r[i] * inverseDiagonal[i] + beta * p[i];
      }
      rho = next;
    }
    if (rho > Math.max(goal, atStart * ENOUGH * ENOUGH)) {
      throw new ArithmeticException(
          "Conjugate gradients did not settle in " + most + " steps on " + n + " models.");
    }
    return x;
  }

  private double preconditioned(double[] r, double[] z) {
    double sum = 0;
    for (int i = 0; i < r.length; i++) {
      z[i] = r[i] * inverseDiagonal[i];
      sum += r[i] * z[i];
    }
    return sum;
  }
}
