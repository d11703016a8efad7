package org.griplore.query.statistics;

import java.util.Arrays;
import java.util.List;
import org.ejml.data.DMatrixRMaj;

/**
 * Log likelihood of ranked fields under the Plackett-Luce model with ties, with slope and curvature
 * in the log worths and log tie parameters.
 *
 * <p>A field is chosen group by group from what is left. A group S of size t has the weight δ_t (Π
 * worths)^(1/t), δ_1 = 1; its chance is its weight over that of all groups that could be chosen.
 * The sum over groups of size t is the elementary symmetric polynomial of degree t in worth^(1/t),
 * so no group need be listed.
 */
final class TieLikelihood {
  private final int models;
  private final int[] orders;
  final double[] slope;
  final DMatrixRMaj information;
  private double value;

  /**
   * @param orders sizes of ties that occur, ascending, each 2 or more
   */
  TieLikelihood(int models, int[] orders) {
    this.models = models;
    this.orders = orders;
    this.slope = new double[models + orders.length];
    this.information = new DMatrixRMaj(models + orders.length, models + orders.length);
  }

  double value() {
    return value;
  }

  /** Starts anew at parameters: log worths, then log δ of each order. */
  void clear() {
    value = 0;
    Arrays.fill(slope, 0);
    information.zero();
  }

  void add(RankedField field, double[] parameters) {
    List<int[]> groups = field.groups();
    int[] left = groups.stream().flatMapToInt(Arrays::stream).toArray();
    int from = 0;
    for (int[] group : groups) {
      if (left.length - from < 2) {
        return;
      }
      choice(Arrays.copyOfRange(left, from, left.length), group.length, field.weight(), parameters);
      from += group.length;
    }
  }

  /** The first {@code chosen} of the models left are chosen together. */
  private void choice(int[] left, int chosen, double weight, double[] parameters) {
    int n = left.length;
    double top = Double.NEGATIVE_INFINITY;
    for (int model : left) {
      top = Math.max(top, worth(model, parameters));
    }
    int sizes = 1;
    while (sizes <= orders.length && orders[sizes - 1] <= n) {
      sizes++;
    }
    double[] ofSize = new double[sizes];
    double[][] having = new double[sizes][n];
    double[][] worths = new double[sizes][n];
    double all = 0;
    for (int s = 0; s < sizes; s++) {
      int t = s == 0 ? 1 : orders[s - 1];
      for (int i = 0; i < n; i++) {
        worths[s][i] = Math.exp((worth(left[i], parameters) - top) / t);
      }
      double delta = s == 0 ? 1 : Math.exp(parameters[models + s - 1]);
      ofSize[s] = delta * symmetric(worths[s], t, -1, -1);
      for (int i = 0; i < n; i++) {
        having[s][i] = delta * worths[s][i] * symmetric(worths[s], t - 1, i, -1);
      }
      all += ofSize[s];
    }
    double[] expected = new double[n];
    for (int s = 0; s < sizes; s++) {
      int t = s == 0 ? 1 : orders[s - 1];
      ofSize[s] /= all;
      for (int i = 0; i < n; i++) {
        having[s][i] /= all;
        expected[i] += having[s][i] / t;
      }
    }
    int order = chosen == 1 ? -1 : Arrays.binarySearch(orders, chosen);
    double log = order < 0 ? 0 : parameters[models + order];
    for (int i = 0; i < chosen; i++) {
      log += (worth(left[i], parameters) - top) / chosen;
      move(left[i], weight / chosen);
    }
    if (order >= 0) {
      slope[models + order] += weight;
    }
    value += weight * (log - Math.log(all));
    for (int i = 0; i < n; i++) {
      move(left[i], -weight * expected[i]);
    }
    for (int s = 1; s < sizes; s++) {
      slope[models + s - 1] -= weight * ofSize[s];
    }
    curve(left, worths, ofSize, having, expected, all, weight, parameters);
  }

  /** Adds the covariance of what is counted: 1/t for each model chosen, and the size chosen. */
  private void curve(
      int[] left,
      double[][] worths,
      double[] ofSize,
      double[][] having,
      double[] expected,
      double all,
      double weight,
      double[] parameters) {
    int n = left.length;
    for (int i = 0; i < n; i++) {
      for (int j = 0; j <= i; j++) {
        double moment = 0;
        for (int s = 0; s < ofSize.length; s++) {
          int t = s == 0 ? 1 : orders[s - 1];
          if (i == j) {
            moment += having[s][i] / (t * t);
          } else if (t > 1) {
            double delta = Math.exp(parameters[models + s - 1]);
            double pair =
                worths[s][i] * worths[s][j] * symmetric(worths[s], t - 2, i, j) * delta / all;
            moment += pair / (t * t);
          }
        }
        bend(left[i], left[j], weight * (moment - expected[i] * expected[j]));
      }
      for (int s = 1; s < ofSize.length; s++) {
        bend(
            left[i],
            models + s - 1,
            weight * (having[s][i] / orders[s - 1] - expected[i] * ofSize[s]));
      }
    }
    for (int s = 1; s < ofSize.length; s++) {
      for (int r = 1; r <= s; r++) {
        double moment = r == s ? ofSize[s] : 0;
        bend(models + s - 1, models + r - 1, weight * (moment - ofSize[s] * ofSize[r]));
      }
    }
  }

  /** A model numbered beyond the last is the ghost: worth 1 whatever the parameters. */
  private double worth(int model, double[] parameters) {
    return model >= models ? 0 : parameters[model];
  }

  private void move(int model, double by) {
    if (model < models) {
      slope[model] += by;
    }
  }

  private void bend(int i, int j, double by) {
    if ((i == PlackettLuce.GHOST) || (j == PlackettLuce.GHOST)) {
      return;
    }
    information.add(i, j, by);
    if (i != j) {
      information.add(j, i, by);
    }
  }

  /** Sum over products of {@code degree} values, two positions left out (-1 for none). */
  private static double symmetric(double[] values, int degree, int without, int andWithout) {
    if (degree < 0) {
      return 0;
    }
    double[] sums = new double[degree + 1];
    sums[0] = 1;
    for (int i = 0; i < values.length; i++) {
      if (i != without && i != andWithout) {
        for (int d = degree; d > 0; d--) {
          sums[d] += sums[d - 1] * values[i];
        }
      }
    }
    return sums[degree];
  }
}
