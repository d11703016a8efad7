package org.griplore.query.statistics;

import java.util.Optional;
import org.ejml.data.DMatrixRMaj;

/** Columns centred at their weighted mean and scaled, rows times the root of their weight. */
record CentredDesign(
    double[] means, double[] scales, double[] roots, double sumOfWeights, Orthogonal qr) {
  static Optional<CentredDesign> of(double[][] x, double[] w, double tolerance) {
    int n = x.length;
    int p = x[0].length;
    double[] means = new double[p];
    double[] scales = new double[p];
    double[] roots = new double[n];
    double total = Sums.of(w);
    DMatrixRMaj design = new DMatrixRMaj(n, p + 1);
    for (int i = 0; i < n; i++) {
      roots[i] = Math.sqrt(w[i]);
      design.set(i, 0, roots[i]);
    }
    for (int j = 0; j < p; j++) {
      Sums mean = new Sums();
      for (int i = 0; i < n; i++) {
        mean.add(w[i] * (x[i][j] - x[0][j]));
      }
      means[j] = x[0][j] + mean.total() / total;
      double squares = 0;
      double largest = 0;
      for (int i = 0; i < n; i++) {
        double d = roots[i] * (x[i][j] - means[j]);
        design.set(i, j + 1, d);
        squares += d * d;
        largest = Math.max(largest, Math.abs(roots[i] * x[i][j]));
      }
      scales[j] = Math.sqrt(squares);
      if (scales[j] <= tolerance * largest * Math.sqrt(n)) {
        return Optional.empty();
      }
      for (int i = 0; i < n; i++) {
        design.set(i, j + 1, design.get(i, j + 1) / scales[j]);
      }
    }
    return Orthogonal.of(design, tolerance)
        .map(qr -> new CentredDesign(means, scales, roots, total, qr));
  }

  int columns() {
    return means.length + 1;
  }

  double[] weighted(double[] y) {
    double[] result = new double[y.length];
    for (int i = 0; i < y.length; i++) {
      result[i] = roots[i] * y[i];
    }
    return result;
  }

  double totalSquares(double[] y) {
    Sums mean = new Sums();
    for (int i = 0; i < y.length; i++) {
      mean.add(roots[i] * roots[i] * (y[i] - y[0]));
    }
    double middle = mean.total() / sumOfWeights;
    Sums squares = new Sums();
    for (int i = 0; i < y.length; i++) {
      double d = roots[i] * (y[i] - y[0] - middle);
      squares.add(d * d);
    }
    return squares.total();
  }

  /** The contrast in terms of the centred, scaled coefficients. */
  double[] contrast(double[] raw) {
    Checks.sameLength("coefficients", raw.length, columns());
    double[] centred = new double[raw.length];
    centred[0] = raw[0];
    for (int j = 0; j < means.length; j++) {
      centred[j + 1] = (raw[j + 1] - raw[0] * means[j]) / scales[j];
    }
    return centred;
  }

  /** A contrast of {@link #contrast} applied to a solution. */
  double value(double[] centred, double[] solution) {
    Sums sum = new Sums();
    for (int j = 0; j < centred.length; j++) {
      sum.add(centred[j] * solution[j]);
    }
    return sum.total();
  }
}
