package org.griplore.query.network;

import org.griplore.query.solver.EnvelopeCholesky;
import org.griplore.query.solver.SymmetricInverse;

/**
 * Generalised least squares at one heterogeneity variance: model effects, the generalised sum of
 * squares and what the estimators of the heterogeneity variance need. With {@code P = W - W X
 * (X'WX)^- X'W}, X the test and model columns and W the inverse arm variances:
 *
 * <ul>
 *   <li>{@code quadratic = y'Py}, the Q statistic when the heterogeneity variance is zero,
 *   <li>{@code squared = y'PPy}, minus the slope of the quadratic form in the variance,
 *   <li>{@code trace = tr P}, from the inverse inside the envelope: {@code tr P0 - tr(L^-1
 *       M'P0P0M)} with P0 the same matrix for tests alone, block diagonal over tests.
 * </ul>
 */
final class GlsPoint {
  final double tauSquared;
  final double[] weights;

  /** Model effects by position, the grounded model of each component at zero. */
  final double[] effects;

  final double quadratic;
  final double squared;
  final EnvelopeCholesky factor;

  /** Null when no trace was asked. */
  final SymmetricInverse inverse;

  /** NaN when no trace was asked. */
  final double trace;

  /** tr(L^-1 M'P0P0M), what models take from the trace; NaN when no trace was asked. */
  final double modelTrace;

  private final Laplacian laplacian;
  private final double[] testWeights;

  private GlsPoint(
      Laplacian laplacian, double[] variance, double tauSquared, boolean withTrace, boolean whole) {
    this.laplacian = laplacian;
    this.tauSquared = tauSquared;
    this.weights = weights(variance, tauSquared);
    this.testWeights = laplacian.testWeights(weights);
    this.factor = laplacian.factor(weights);
    double[] y = laplacian.rows.y;
    double[] right = laplacian.gather(laplacian.centred(weights, testWeights, y));
    for (int p = 0; p < right.length; p++) {
      if (laplacian.order.grounded[p]) {
        right[p] = 0;
      }
    }
    this.effects = factor.solve(right);
    double[] e = laplacian.residuals(y, effects);
    double[] py = laplacian.centred(weights, testWeights, e);
    double q = 0;
    double qq = 0;
    for (int i = 0; i < py.length; i++) {
      q += py[i] * py[i] / weights[i];
      qq += py[i] * py[i];
    }
    this.quadratic = q;
    this.squared = qq;
    this.inverse = withTrace ? factor.inverse(whole) : null;
    this.modelTrace = withTrace ? modelTrace() : Double.NaN;
    this.trace = withTrace ? testTrace() - modelTrace : Double.NaN;
    if (withTrace && !(trace > 0)) {
      throw new ArithmeticException(
          "Arm variances differ so widely that the trace for the heterogeneity came out as "
              + trace
              + ".");
    }
  }

  /**
   * @param variance run-level variance of each arm
   * @param tauSquared variance added to each arm
   * @param withTrace whether the inverse and the trace are wanted
   * @param whole whether that inverse is kept whole and not only where tests need it
   */
  static GlsPoint at(
      Laplacian laplacian, double[] variance, double tauSquared, boolean withTrace, boolean whole) {
    return new GlsPoint(laplacian, variance, tauSquared, withTrace, whole);
  }

  static double[] weights(double[] variance, double tauSquared) {
    double[] w = new double[variance.length];
    for (int i = 0; i < w.length; i++) {
      w[i] = 1 / (variance[i] + tauSquared);
    }
    return w;
  }

  private double testTrace() {
    TestRows rows = laplacian.rows;
    double sum = 0;
    for (int t = 0; t < rows.tests; t++) {
      for (int i = rows.start[t]; i < rows.start[t + 1]; i++) {
        sum += weights[i] * (1 - weights[i] / testWeights[t]);
      }
    }
    return sum;
  }

  private double modelTrace() {
    TestRows rows = laplacian.rows;
    double sum = 0;
    for (int t = 0; t < rows.tests; t++) {
      double s = testWeights[t];
      double squares = 0;
      for (int i = rows.start[t]; i < rows.start[t + 1]; i++) {
        squares += weights[i] * weights[i];
      }
      for (int i = rows.start[t]; i < rows.start[t + 1]; i++) {
        double wi = weights[i];
        int p = laplacian.column[i];
        if (laplacian.order.grounded[p]) {
          continue;
        }
        sum += wi * wi * inverse.get(p, p);
        for (int j = rows.start[t]; j < rows.start[t + 1]; j++) {
          int q = laplacian.column[j];
          if (!laplacian.order.grounded[q]) {
            double wj = weights[j];
            sum -= wi * wj * ((wi + wj) / s - squares / (s * s)) * inverse.get(p, q);
          }
        }
      }
    }
    return sum;
  }

  /** Restricted log likelihood up to a constant that no variance changes. */
  double logLikelihood() {
    double sum = factor.logDeterminant() + quadratic;
    for (double w : weights) {
      sum -= Math.log(w);
    }
    for (double s : testWeights) {
      sum += Math.log(s);
    }
    return -sum / 2;
  }

  /** Effect of each kept test, given model effects on any one origin a component. */
  double[] testEffects(double[] modelEffects) {
    TestRows rows = laplacian.rows;
    double[] e = laplacian.residuals(rows.y, modelEffects);
    double[] out = new double[rows.tests];
    for (int t = 0; t < rows.tests; t++) {
      for (int i = rows.start[t]; i < rows.start[t + 1]; i++) {
        out[t] += weights[i] * e[i];
      }
      out[t] /= testWeights[t];
    }
    return out;
  }
}
