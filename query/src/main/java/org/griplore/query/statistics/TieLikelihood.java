package org.griplore.query.statistics;

import java.util.ArrayList;
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

  /** Some of the models left in a field are chosen together: the first so many of {@code left}. */
  record Choice(int[] left, int chosen, double weight) {}

  /** The choices of a field; the last model left is none. */
  static List<Choice> choices(RankedField field) {
    List<int[]> groups = field.groups();
    int[] all = groups.stream().flatMapToInt(Arrays::stream).toArray();
    List<Choice> choices = new ArrayList<>();
    int from = 0;
    for (int[] group : groups) {
      if (all.length - from > 1) {
        int[] left = Arrays.copyOfRange(all, from, all.length);
        choices.add(new Choice(left, group.length, field.weight()));
      }
      from += group.length;
    }
    return choices;
  }

  void add(Choice choice, double[] parameters) {
    int[] left = choice.left;
    int chosen = choice.chosen;
    double weight = choice.weight;
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
    double[][] sums = new double[sizes][];
    double all = 0;
    for (int s = 0; s < sizes; s++) {
      int t = s == 0 ? 1 : orders[s - 1];
      for (int i = 0; i < n; i++) {
        worths[s][i] = Math.exp((worth(left[i], parameters) - top) / t);
      }
      double delta = s == 0 ? 1 : Math.exp(parameters[models + s - 1]);
      sums[s] = symmetric(worths[s], t);
      ofSize[s] = delta * sums[s][t];
      for (int i = 0; i < n; i++) {
        having[s][i] = delta * worths[s][i] * without(sums[s], worths[s][i], t - 1);
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
    curve(left, worths, sums, ofSize, having, expected, all, weight, parameters);
  }

  /** Adds the covariance of what is counted: 1/t for each model chosen, and the size chosen. */
  private void curve(
      int[] left,
      double[][] worths,
      double[][] sums,
      double[] ofSize,
      double[][] having,
      double[] expected,
      double all,
      double weight,
      double[] parameters) {
    int n = left.length;
    double[][] rest = new double[ofSize.length][];
    double[] deltas = new double[ofSize.length];
    for (int s = 1; s < deltas.length; s++) {
      deltas[s] = Math.exp(parameters[models + s - 1]);
    }
    for (int i = 0; i < n; i++) {
      for (int s = 1; s < ofSize.length; s++) {
        int t = orders[s - 1];
        rest[s] = new double[t - 1];
        for (int d = 0; d < t - 1; d++) {
          rest[s][d] = without(sums[s], worths[s][i], d);
        }
      }
      for (int j = 0; j <= i; j++) {
        double moment = i == j ? having[0][i] : 0;
        for (int s = 1; s < ofSize.length; s++) {
          int t = orders[s - 1];
          double both = having[s][i];
          if (i != j) {
            double others = without(rest[s], worths[s][j], t - 2);
            both = deltas[s] * worths[s][i] * worths[s][j] * others / all;
          }
          moment += both / (t * t);
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

  /** Sums over products of 0 to {@code degree} of the values. */
  private static double[] symmetric(double[] values, int degree) {
    double[] sums = new double[degree + 1];
    sums[0] = 1;
    for (double value : values) {
      for (int d = degree; d > 0; d--) {
        sums[d] += sums[d - 1] * value;
      }
    }
    return sums;
  }

  /**
   * The sum of products of so many values with one value taken out again. What cancels is small
   * against the whole sum, and it is only ever looked at as a share of that.
   */
  private static double without(double[] sums, double value, int degree) {
    double rest = 1;
    for (int d = 1; d <= degree; d++) {
      rest = Math.max(0, sums[d] - value * rest);
    }
    return rest;
  }
}
