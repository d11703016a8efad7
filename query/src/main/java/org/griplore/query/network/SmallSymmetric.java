package org.griplore.query.network;

import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.EigenDecomposition_F64;

/**
 * The pseudo-inverse of a small positive semidefinite matrix by its eigenvectors. Directions
 * without eigenvalue are those that only the removed results told of.
 */
final class SmallSymmetric {
  /** An eigenvalue this small beside the scale is none. */
  private static final double NONE = 1e-9;

  /** A vector with so much of it along empty directions lies outside. */
  private static final double OUTSIDE = 1e-6;

  private final double[][] vectors;
  private final double[] values;
  private final int empty;

  private SmallSymmetric(double[][] vectors, double[] values, int empty) {
    this.vectors = vectors;
    this.values = values;
    this.empty = empty;
  }

  /**
   * @param scale what the entries would be of if nothing were taken from them, above 0
   */
  static SmallSymmetric of(DMatrixRMaj matrix, double scale) {
    int n = matrix.numRows;
    EigenDecomposition_F64<DMatrixRMaj> eigen = DecompositionFactory_DDRM.eig(n, true, true);
    if (!eigen.decompose(matrix.copy())) {
      throw new ArithmeticException("The eigenvalues of a matrix of " + n + " did not settle.");
    }
    double[][] vectors = new double[n][];
    double[] values = new double[n];
    int empty = 0;
    for (int i = 0; i < n; i++) {
      double value = eigen.getEigenvalue(i).getReal();
      values[i] = value > NONE * scale ? value : 0;
      empty += values[i] == 0 ? 1 : 0;
      vectors[i] = eigen.getEigenVector(i).getData().clone();
    }
    return new SmallSymmetric(vectors, values, empty);
  }

  /** Whether more than one direction, that of a constant, is empty. */
  boolean holdsTogether() {
    return empty > 1;
  }

  /** Whether a vector lies in the directions that have eigenvalues. */
  boolean reaches(double[] vector) {
    double all = 0;
    double outside = 0;
    for (double x : vector) {
      all += x * x;
    }
    for (int i = 0; i < values.length; i++) {
      if (values[i] == 0) {
        double along = dot(vectors[i], vector);
        outside += along * along;
      }
    }
    return outside <= OUTSIDE * OUTSIDE * all;
  }

  /** The pseudo-inverse times a vector. */
  double[] solve(double[] vector) {
    double[] out = new double[vector.length];
    for (int i = 0; i < values.length; i++) {
      if (values[i] > 0) {
        double along = dot(vectors[i], vector) / values[i];
        for (int k = 0; k < out.length; k++) {
          out[k] += along * vectors[i][k];
        }
      }
    }
    return out;
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }
}
