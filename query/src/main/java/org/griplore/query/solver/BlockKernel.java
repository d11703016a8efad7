package org.griplore.query.solver;

/**
 * Products and triangular solves of square row-major blocks of side {@code b}. Every inner loop
 * adds multiples of rows to a row, the form that the virtual machine turns into vector
 * instructions.
 */
final class BlockKernel {
  private BlockKernel() {}

  /** {@code c -= a' * m}. */
  public static void subtractTransposedProduct(double[] c, double[] a, double[] m, int b) {
    for (int r = 0; r < b; r++) {
      int k = 0;
      for (; k + 8 <= b; k += 8) {
        int at = k * b + r;
        addEight(
            c,
            r * b,
            m,
            k * b,
            b,
            -a[at],
            -a[at + b],
            -a[at + 2 * b],
            -a[at + 3 * b],
            -a[at + 4 * b],
            -a[at + 5 * b],
            -a[at + 6 * b],
            -a[at + 7 * b]);
      }
      for (; k < b; k++) {
        addRow(c, r * b, m, k * b, b, -a[k * b + r]);
      }
    }
  }

  /** {@code c -= a * m}. */
  public static void subtractProduct(double[] c, double[] a, double[] m, int b) {
    for (int r = 0; r < b; r++) {
      int k = 0;
      for (; k + 8 <= b; k += 8) {
        int at = r * b + k;
        addEight(
            c,
            r * b,
            m,
            k * b,
            b,
            -a[at],
            -a[at + 1],
            -a[at + 2],
            -a[at + 3],
            -a[at + 4],
            -a[at + 5],
            -a[at + 6],
            -a[at + 7]);
      }
      for (; k < b; k++) {
        addRow(c, r * b, m, k * b, b, -a[r * b + k]);
      }
    }
  }

  /**
   * Factors the upper triangle in place into U with U'U = A and clears what is below it.
   *
   * @throws ArithmeticException when a pivot is not positive
   */
  public static void factor(double[] a, int b) {
    for (int k = 0; k < b; k++) {
      double pivot = a[k * b + k];
      if (!(pivot > 0) || Double.isInfinite(pivot)) {
        throw new ArithmeticException("The information matrix has the pivot " + pivot + ".");
      }
      double root = Math.sqrt(pivot);
      a[k * b + k] = root;
      for (int c = k + 1; c < b; c++) {
        a[k * b + c] /= root;
      }
      for (int r = k + 1; r < b; r++) {
        double f = a[k * b + r];
        if (f != 0) {
          for (int c = r; c < b; c++) {
            a[r * b + c] -= f * a[k * b + c];
          }
        }
        a[r * b + k] = 0;
      }
    }
  }

  /** Replaces x by the solution of {@code U' * s = x}, U upper triangular. */
  public static void solveTransposed(double[] u, double[] x, int b) {
    for (int r = 0; r < b; r++) {
      for (int q = 0; q < r; q++) {
        addRow(x, r * b, x, q * b, b, -u[q * b + r]);
      }
      scale(x, r * b, b, 1 / u[r * b + r]);
    }
  }

  /** Replaces x by the solution of {@code U * s = x}, U upper triangular. */
  public static void solve(double[] u, double[] x, int b) {
    for (int r = b - 1; r >= 0; r--) {
      for (int q = r + 1; q < b; q++) {
        addRow(x, r * b, x, q * b, b, -u[r * b + q]);
      }
      scale(x, r * b, b, 1 / u[r * b + r]);
    }
  }

  public static double[] transpose(double[] a, int b) {
    double[] t = new double[b * b];
    for (int r = 0; r < b; r++) {
      for (int c = 0; c < b; c++) {
        t[c * b + r] = a[r * b + c];
      }
    }
    return t;
  }

  private static void scale(double[] x, int at, int n, double f) {
    for (int i = 0; i < n; i++) {
      x[at + i] *= f;
    }
  }

  private static void addRow(double[] c, int co, double[] m, int mo, int n, double f) {
    for (int i = 0; i < n; i++) {
      c[co + i] += f * m[mo + i];
    }
  }

  private static void addEight(
      double[] c,
      int co,
      double[] m,
      int mo,
      int n,
      double f0,
      double f1,
      double f2,
      double f3,
      double f4,
      double f5,
      double f6,
      double f7) {
    int m1 = mo + n;
    int m2 = m1 + n;
    int m3 = m2 + n;
    int m4 = m3 + n;
    int m5 = m4 + n;
    int m6 = m5 + n;
    int m7 = m6 + n;
    for (int i = 0; i < n; i++) {
      c[co + i] +=
          (f0 * m[mo + i] + f1 * m[m1 + i])
              + (f2 * m[m2 + i] + f3 * m[m3 + i])
              + ((f4 * m[m4 + i] + f5 * m[m5 + i]) + (f6 * m[m6 + i] + f7 * m[m7 + i]));
    }
  }
}
