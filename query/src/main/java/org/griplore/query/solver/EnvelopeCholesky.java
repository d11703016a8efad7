package org.griplore.query.solver;

/**
 * Factor U of a positive definite matrix A = U'U, right-looking over the blocks of an envelope
 * (George and Liu 1981, Computer Solution of Large Sparse Positive Definite Systems, chapter 4). A
 * narrow band costs size times width squared, a full matrix a third of its size cubed.
 */
public final class EnvelopeCholesky {
  private final BlockEnvelope shape;
  private final double[][] u;

  private EnvelopeCholesky(BlockEnvelope shape, double[][] u) {
    this.shape = shape;
    this.u = u;
  }

  /**
   * Factors in place; the blocks given belong to the result afterwards.
   *
   * @param upper upper blocks of A, rows and columns beyond its order hold the identity
   * @throws ArithmeticException when A is not positive definite to working precision
   */
  public static EnvelopeCholesky factor(BlockEnvelope shape, double[][] upper) {
    int b = shape.side;
    for (int k = 0; k < shape.blocks; k++) {
      int row = k;
      double[] pivot = upper[shape.index(k, k)];
      BlockKernel.factor(pivot, b);
      int[] right = shape.reach[k];
      int n = right.length;
      shape.each(n, i -> BlockKernel.solveTransposed(pivot, upper[shape.index(row, right[i])], b));
      shape.each(
          n * n,
          pair -> {
            int i = right[pair / n];
            int j = right[pair % n];
            if (i <= j) {
              BlockKernel.subtractTransposedProduct(
                  upper[shape.index(i, j)],
                  upper[shape.index(row, i)],
                  upper[shape.index(row, j)],
                  b);
            }
          });
    }
    return new EnvelopeCholesky(shape, upper);
  }

  /** Natural logarithm of the determinant of A. */
  public double logDeterminant() {
    double sum = 0;
    for (int k = 0; k < shape.blocks; k++) {
      double[] block = u[shape.index(k, k)];
      for (int r = 0; r < shape.side; r++) {
        sum += Math.log(block[r * shape.side + r]);
      }
    }
    return 2 * sum;
  }

  /** Solution of A x = right side. */
  public double[] solve(double[] rightSide) {
    int b = shape.side;
    double[] x = java.util.Arrays.copyOf(rightSide, shape.blocks * b);
    for (int k = 0; k < shape.blocks; k++) {
      double[] pivot = u[shape.index(k, k)];
      for (int r = 0; r < b; r++) {
        double value = x[k * b + r] / pivot[r * b + r];
        x[k * b + r] = value;
        if (value != 0) {
          spread(pivot, r, r + 1, x, k * b, value);
          for (int j : shape.reach[k]) {
            spread(u[shape.index(k, j)], r, 0, x, j * b, value);
          }
        }
      }
    }
    backwards(x);
    return java.util.Arrays.copyOf(x, shape.size);
  }

  /**
   * Solution of U x = right side. Of independent standard normals it has the inverse of A as its
   * covariance.
   */
  public double[] solveUpper(double[] rightSide) {
    int b = shape.side;
    double[] x = java.util.Arrays.copyOf(rightSide, shape.blocks * b);
    backwards(x);
    return java.util.Arrays.copyOf(x, shape.size);
  }

  private void backwards(double[] x) {
    int b = shape.side;
    for (int k = shape.blocks - 1; k >= 0; k--) {
      double[] pivot = u[shape.index(k, k)];
      for (int r = b - 1; r >= 0; r--) {
        double value = x[k * b + r] - dot(pivot, r, r + 1, x, k * b);
        for (int j : shape.reach[k]) {
          value -= dot(u[shape.index(k, j)], r, 0, x, j * b);
        }
        x[k * b + r] = value / pivot[r * b + r];
      }
    }
  }

  private void spread(double[] block, int row, int from, double[] x, int at, double value) {
    int b = shape.side;
    for (int c = from; c < b; c++) {
      x[at + c] -= value * block[row * b + c];
    }
  }

  private double dot(double[] block, int row, int from, double[] x, int at) {
    int b = shape.side;
    double sum = 0;
    for (int c = from; c < b; c++) {
      sum += block[row * b + c] * x[at + c];
    }
    return sum;
  }

  /**
   * The inverse of A: only its entries inside the envelope, which is all that traces over tests
   * need, or every entry.
   */
  public SymmetricInverse inverse(boolean whole) {
    return SymmetricInverse.of(shape, u, whole);
  }
}
