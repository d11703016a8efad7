package org.griplore.query.network;

import java.util.Arrays;
import org.griplore.query.solver.BlockEnvelope;
import org.griplore.query.solver.EnvelopeCholesky;

/**
 * The information on model effects once the tests are eliminated: with arm weights w and the weight
 * s of a test, {@code L = sum over tests of diag(w) - w w'/s}, the weighted Laplacian of the graph
 * of models. Arms are addressed by the position of their model.
 */
final class Laplacian {
  final TestRows rows;
  final ModelOrder order;

  /** Position of each arm's model. */
  final int[] column;

  private final BlockEnvelope shape;

  Laplacian(TestRows rows, ModelOrder order) {
    this.rows = rows;
    this.order = order;
    this.column = new int[rows.arms];
    for (int i = 0; i < rows.arms; i++) {
      column[i] = order.position[rows.model[i]];
    }
    this.shape = new BlockEnvelope(order.first);
  }

  int size() {
    return order.size();
  }

  /** Sum of weights of each test. */
  double[] testWeights(double[] w) {
    double[] s = new double[rows.tests];
    for (int t = 0; t < rows.tests; t++) {
      for (int i = rows.start[t]; i < rows.start[t + 1]; i++) {
        s[t] += w[i];
      }
    }
    return s;
  }

  /** Factors L with the effect of one model of each component held at zero. */
  EnvelopeCholesky factor(double[] w) {
    int b = shape.side;
    double[][] upper = shape.upperZeros();
    for (int p = 0; p < shape.blocks * b; p++) {
      if (p >= size() || order.grounded[p]) {
        upper[shape.index(p / b, p / b)][p % b * b + p % b] = 1;
      }
    }
    double[] s = testWeights(w);
    for (int t = 0; t < rows.tests; t++) {
      for (int i = rows.start[t]; i < rows.start[t + 1]; i++) {
        int p = column[i];
        if (order.grounded[p]) {
          continue;
        }
        double f = w[i] / s[t];
        for (int j = rows.start[t]; j < rows.start[t + 1]; j++) {
          int q = column[j];
          if (q < p || order.grounded[q]) {
            continue;
          }
          // w - w^2/s as w (s - w) / s keeps its digits when one arm outweighs the rest
          upper[shape.index(p / b, q / b)][p % b * b + q % b] +=
              i == j ? f * others(w, t, i) : -f * w[j];
        }
      }
    }
    return EnvelopeCholesky.factor(shape, upper);
  }

  private double others(double[] w, int t, int except) {
    double sum = 0;
    for (int j = rows.start[t]; j < rows.start[t + 1]; j++) {
      if (j != except) {
        sum += w[j];
      }
    }
    return sum;
  }

  /**
   * Centres arm values inside tests and weights them: {@code P0 x}, the part of x that tests do not
   * explain, times the weights.
   */
  double[] centred(double[] w, double[] s, double[] x) {
    double[] out = new double[rows.arms];
    for (int t = 0; t < rows.tests; t++) {
      double mean = 0;
      for (int i = rows.start[t]; i < rows.start[t + 1]; i++) {
        mean += w[i] * x[i];
      }
      mean /= s[t];
      for (int i = rows.start[t]; i < rows.start[t + 1]; i++) {
        out[i] = w[i] * (x[i] - mean);
      }
    }
    return out;
  }

  /** Sums arm values over the arms of each position. */
  double[] gather(double[] arms) {
    double[] out = new double[size()];
    for (int i = 0; i < arms.length; i++) {
      out[column[i]] += arms[i];
    }
    return out;
  }

  /** {@code out = L x} without forming L. */
  void apply(double[] w, double[] s, double[] x, double[] out) {
    Arrays.fill(out, 0);
    for (int t = 0; t < rows.tests; t++) {
      int from = rows.start[t];
      int to = rows.start[t + 1];
      double mean = 0;
      for (int i = from; i < to; i++) {
        mean += w[i] * x[column[i]];
      }
      mean /= s[t];
      for (int i = from; i < to; i++) {
        out[column[i]] += w[i] * (x[column[i]] - mean);
      }
    }
  }

  /** Diagonal of L. */
  double[] diagonal(double[] w, double[] s) {
    double[] d = new double[size()];
    for (int t = 0; t < rows.tests; t++) {
      for (int i = rows.start[t]; i < rows.start[t + 1]; i++) {
        d[column[i]] += w[i] * (1 - w[i] / s[t]);
      }
    }
    return d;
  }

  /** What model effects leave of the results. */
  double[] residuals(double[] y, double[] effects) {
    double[] e = new double[rows.arms];
    for (int i = 0; i < e.length; i++) {
      e[i] = y[i] - effects[column[i]];
    }
    return e;
  }
}
