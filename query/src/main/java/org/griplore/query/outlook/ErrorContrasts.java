package org.griplore.query.outlook;

/**
 * What a covariance A of results says of their differences when their common level is unknown:
 * {@code W = A^-1 - A^-1 1 1' A^-1 / (1' A^-1 1)}.
 *
 * @param weights W
 * @param logDeterminant {@code log |A| + log (1' A^-1 1)}
 */
record ErrorContrasts(double[][] weights, double logDeterminant) {
  static ErrorContrasts of(double[][] a) {
    int k = a.length;
    double[][] factor = cholesky(a);
    double log = 0;
    double[][] inverse = new double[k][k];
    for (int c = 0; c < k; c++) {
      log += 2 * Math.log(factor[c][c]);
      double[] x = new double[k];
      x[c] = 1;
      for (int i = c; i < k; i++) {
        for (int j = c; j < i; j++) {
          x[i] -= factor[i][j] * x[j];
        }
        x[i] /= factor[i][i];
      }
      for (int i = k - 1; i >= 0; i--) {
        for (int j = i + 1; j < k; j++) {
          x[i] -= factor[j][i] * x[j];
        }
        x[i] /= factor[i][i];
      }
      for (int i = 0; i < k; i++) {
        inverse[i][c] = x[i];
      }
    }
    double[] sums = new double[k];
    double all = 0;
    for (int i = 0; i < k; i++) {
      for (int j = 0; j < k; j++) {
        sums[i] += inverse[i][j];
      }
      all += sums[i];
    }
    for (int i = 0; i < k; i++) {
      for (int j = 0; j < k; j++) {
        inverse[i][j] -= sums[i] * sums[j] / all;
      }
    }
    return new ErrorContrasts(inverse, log + Math.log(all));
  }

  /** {@code e' W e}. */
  double quadratic(double[] e) {
    double sum = 0;
    for (int i = 0; i < e.length; i++) {
      for (int j = 0; j < e.length; j++) {
        sum += e[i] * weights[i][j] * e[j];
      }
    }
    return sum;
  }

  /** The lower factor of a positive definite matrix. */
  static double[][] cholesky(double[][] a) {
    int k = a.length;
    double[][] factor = new double[k][k];
    for (int i = 0; i < k; i++) {
      for (int j = 0; j <= i; j++) {
        double sum = a[i][j];
        for (int c = 0; c < j; c++) {
          sum -= factor[i][c] * factor[j][c];
        }
        factor[i][j] = i == j ? Math.sqrt(sum) : sum / factor[j][j];
      }
    }
    return factor;
  }
}
