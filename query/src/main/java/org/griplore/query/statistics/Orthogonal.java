package org.griplore.query.statistics;

import java.util.Optional;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;

/** The thin QR decomposition of a design of full column rank. */
record Orthogonal(DMatrixRMaj q, DMatrixRMaj r) {
  static Optional<Orthogonal> of(DMatrixRMaj design, double tolerance) {
    var qr = DecompositionFactory_DDRM.qr(design.numRows, design.numCols);
    if (!qr.decompose(design.copy())) {
      return Optional.empty();
    }
    DMatrixRMaj q = qr.getQ(null, true);
    DMatrixRMaj r = qr.getR(null, true);
    for (int j = 1; j < r.numCols; j++) {
      // Columns but the first have length 1.
      if (Math.abs(r.get(j, j)) <= tolerance) {
        return Optional.empty();
      }
    }
    return Optional.of(new Orthogonal(q, r));
  }

  int columns() {
    return r.numCols;
  }

  double[] solve(double[] y) {
    int k = columns();
    double[] b = new double[k];
    for (int j = 0; j < k; j++) {
      Sums sum = new Sums();
      for (int i = 0; i < q.numRows; i++) {
        sum.add(q.get(i, j) * y[i]);
      }
      b[j] = sum.total();
    }
    for (int j = k - 1; j >= 0; j--) {
      for (int l = j + 1; l < k; l++) {
        b[j] -= r.get(j, l) * b[l];
      }
      b[j] /= r.get(j, j);
    }
    return b;
  }

  /** R'⁻¹ c, so that c'(X'X)⁻¹X' = (Q R'⁻¹ c)'. */
  double[] solveTransposed(double[] c) {
    double[] d = c.clone();
    for (int j = 0; j < d.length; j++) {
      for (int l = 0; l < j; l++) {
        d[j] -= r.get(l, j) * d[l];
      }
      d[j] /= r.get(j, j);
    }
    return d;
  }

  double leverage(int row, double[] direction) {
    double sum = 0;
    for (int j = 0; j < direction.length; j++) {
      sum += q.get(row, j) * direction[j];
    }
    return sum;
  }

  /** y less its projection, twice, as once leaves rounding of the size of y. */
  double[] residuals(double[] y) {
    double[] e = y.clone();
    for (int pass = 0; pass < 2; pass++) {
      for (int j = 0; j < columns(); j++) {
        Sums sum = new Sums();
        for (int i = 0; i < e.length; i++) {
          sum.add(q.get(i, j) * e[i]);
        }
        double along = sum.total();
        for (int i = 0; i < e.length; i++) {
          e[i] -= along * q.get(i, j);
        }
      }
    }
    return e;
  }
}
