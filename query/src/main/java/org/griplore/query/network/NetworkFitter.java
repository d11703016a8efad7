package org.griplore.query.network;

import java.util.OptionalDouble;

/**
 * Fits the two-way network of one discipline. The models' order and the shape of their information
 * matrix are found once a fit; every step towards the heterogeneity variance refactors in that
 * shape.
 */
public final class NetworkFitter {
  private static final double WIDEST = 1e5;

  private NetworkFitter() {}

  /**
   * Fits model effects by generalised least squares, with the heterogeneity variance of the chosen
   * method.
   *
   * @param arms the results
   * @param options the choices
   * @return the fit; it is immutable and answers comparisons in constant time
   * @throws IllegalArgumentException when one test holds a model twice
   * @throws ArithmeticException when variances differ so widely that the equations lose all digits
   */
  public static NetworkFit fit(Arms arms, FitOptions options) {
    TestRows rows = new TestRows(arms);
    Components components = new Components(rows, arms.models());
    ModelOrder order = ModelOrder.of(rows, components, arms.models());
    Laplacian laplacian = new Laplacian(rows, order);
    int df = rows.arms - rows.tests - order.size() + components.count();
    ErrorKnowledge errors = errors(rows, options.typicalVariance());
    ArmsOfModel armsOfModel = new ArmsOfModel(rows, arms.models());
    NetworkFit.Basis basis =
        new NetworkFit.Basis(arms, options, rows, components, laplacian, armsOfModel, errors, df);
    if (errors == ErrorKnowledge.UNKNOWN) {
      double[] ones = new double[rows.arms];
      java.util.Arrays.fill(ones, 1);
      GlsPoint point = GlsPoint.at(laplacian, ones, 0, false, false);
      return NetworkFit.lumped(basis, point);
    }
    double[] variance = filled(rows, options.typicalVariance());
    HeterogeneityEstimator.Estimate estimate =
        new HeterogeneityEstimator(laplacian, components, variance, df).estimate(options.method());
    return NetworkFit.known(basis, estimate, effects(laplacian, variance, estimate));
  }

  /** Effects at the estimate, which may stand a last small step from the fitted point. */
  private static double[] effects(
      Laplacian laplacian, double[] variance, HeterogeneityEstimator.Estimate estimate) {
    if (estimate.tauSquared() == estimate.point().tauSquared || laplacian.size() < 500) {
      return estimate.point().effects;
    }
    double[] w = GlsPoint.weights(variance, estimate.tauSquared());
    double[] right =
        laplacian.gather(laplacian.centred(w, laplacian.testWeights(w), laplacian.rows.y));
    return new ConjugateGradients(laplacian, w).solve(right, 1e-12);
  }

  static ErrorKnowledge errors(TestRows rows, OptionalDouble typical) {
    int known = rows.knownVariances();
    if (rows.arms == 0) {
      return ErrorKnowledge.UNKNOWN;
    }
    if (known == rows.arms) {
      return ErrorKnowledge.KNOWN;
    }
    return known > 0 || typical.isPresent() ? ErrorKnowledge.MIXED : ErrorKnowledge.UNKNOWN;
  }

  /**
   * Variances with the unknown ones filled. One that lies more than five orders of magnitude from
   * the median is held at that bound: its arm outweighs or counts for nothing either way, and
   * beyond it the equations would lose their digits.
   */
  static double[] filled(TestRows rows, OptionalDouble typical) {
    double[] variance = rows.variance.clone();
    if (rows.knownVariances() < variance.length) {
      double fill = typical.isPresent() ? typical.getAsDouble() : rows.medianVariance();
      for (int i = 0; i < variance.length; i++) {
        if (Double.isNaN(variance[i])) {
          variance[i] = fill;
        }
      }
    }
    double[] sorted = variance.clone();
    java.util.Arrays.sort(sorted);
    double median = sorted[sorted.length / 2];
    for (int i = 0; i < variance.length; i++) {
      variance[i] = Math.max(median / WIDEST, Math.min(median * WIDEST, variance[i]));
    }
    return variance;
  }
}
