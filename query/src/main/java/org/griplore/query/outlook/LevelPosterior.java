package org.griplore.query.outlook;

import java.util.Arrays;

/**
 * What is believed of the levels of models, as one normal distribution: first that of nothing but
 * the lineage, then that given each test taken in. The level of a test itself is unknown, so only
 * differences inside tests tell anything (a flat prior on it, integrated out).
 *
 * <p>State: the mean of each season class, the usual step, then the models. A model joins when it
 * is first asked for, its ancestors before it: {@code level = predecessor + usual step + N(0,
 * step)}, and for the first of a line {@code level = mean of its season class + N(0, line)}. A test
 * of k models costs n²k for n models in the state. What is told does not depend on the order of the
 * tests. Sources: Robinson 1991, Statistical Science 6:15 (best linear unbiased prediction); Kalman
 * 1960 (taking results in one after another).
 */
final class LevelPosterior {
  /** How far off the mean of a season class may be before any test, in components within a test. */
  private static final double VAGUE = 10;

  /** The same for the usual step: it is around nothing, and rarely more than a spread. */
  private static final double USUAL_STEP = 0.5;

  private static final int STEP = DescentForest.GROUPS;

  private final DescentForest descent;
  private final VarianceComponents components;
  private final int[] position;
  private int[] modelAt;
  private double[] mean;
  private double[][] covariance;
  private int size;

  LevelPosterior(DescentForest descent, VarianceComponents components) {
    this.descent = descent;
    this.components = components;
    this.position = new int[descent.parent().length];
    Arrays.fill(position, -1);
    this.size = STEP + 1;
    this.modelAt = new int[16];
    this.mean = new double[16];
    this.covariance = new double[16][16];
    for (int i = 0; i < size; i++) {
      double sd = i == STEP ? USUAL_STEP : VAGUE;
      modelAt[i] = -1;
      covariance[i][i] = sd * sd * components.within();
    }
  }

  /** How many numbers are believed in. */
  int size() {
    return size;
  }

  /** The usual step from one generation to the next, as believed now. */
  double usualStep() {
    return mean[STEP];
  }

  private int at(int model) {
    if (position[model] < 0) {
      int parent = descent.parent()[model];
      if (parent >= 0) {
        join(model, at(parent), STEP, components.step());
      } else {
        join(model, descent.group()[model], -1, components.line());
      }
    }
    return position[model];
  }

  /** A new number: the sum of one or two known ones and something of its own. */
  private void join(int model, int from, int also, double own) {
    if (size == mean.length) {
      grow();
    }
    int at = size++;
    for (int i = 0; i < at; i++) {
      double c = covariance[from][i] + (also < 0 ? 0 : covariance[also][i]);
      covariance[at][i] = c;
      covariance[i][at] = c;
    }
    mean[at] = mean[from] + (also < 0 ? 0 : mean[also]);
    covariance[at][at] = covariance[at][from] + (also < 0 ? 0 : covariance[at][also]) + own;
    position[model] = at;
    modelAt[at] = model;
  }

  private void grow() {
    int room = 2 * mean.length;
    mean = Arrays.copyOf(mean, room);
    modelAt = Arrays.copyOf(modelAt, room);
    double[][] larger = new double[room][];
    for (int i = 0; i < room; i++) {
      larger[i] = i < covariance.length ? Arrays.copyOf(covariance[i], room) : new double[room];
    }
    covariance = larger;
  }

  /** Leaves a model out of the state: for one that no later test holds and none descends from. */
  void forget(int model) {
    int at = position[model];
    if (at < 0) {
      return;
    }
    int last = --size;
    if (at != last) {
      double[] row = covariance[at];
      covariance[at] = covariance[last];
      covariance[last] = row;
      for (int i = 0; i <= last; i++) {
        covariance[i][at] = covariance[i][last];
      }
      mean[at] = mean[last];
      modelAt[at] = modelAt[last];
      position[modelAt[at]] = at;
    }
    position[model] = -1;
  }

  /** Levels of models, by their positions in the evidence. */
  Levels levels(int[] models) {
    int[] at = Arrays.stream(models).map(this::at).toArray();
    double[] levels = new double[at.length];
    double[][] their = new double[at.length][at.length];
    for (int i = 0; i < at.length; i++) {
      levels[i] = mean[at[i]];
      for (int j = 0; j < at.length; j++) {
        their[i][j] = covariance[at[i]][at[j]];
      }
    }
    return new Levels(levels, their);
  }

  /**
   * Takes a test in.
   *
   * @return the restricted log likelihood of its differences given all before it, up to a constant
   *     of its size
   */
  double take(TestBlock block) {
    int k = block.models().length;
    int[] at = new int[k];
    for (int i = 0; i < k; i++) {
      at[i] = at(block.models()[i]);
    }
    double[][] a = new double[k][k];
    double[] error = new double[k];
    for (int i = 0; i < k; i++) {
      for (int j = 0; j < k; j++) {
        a[i][j] = covariance[at[i]][at[j]];
      }
      a[i][i] += components.result(block.runs()[i]);
      error[i] = block.y()[i] - mean[at[i]];
    }
    ErrorContrasts free = ErrorContrasts.of(a);
    update(at, free.weights(), error);
    return -0.5 * (free.logDeterminant() + free.quadratic(error));
  }

  private void update(int[] at, double[][] w, double[] error) {
    int k = at.length;
    double[][] gain = new double[size][k];
    for (int i = 0; i < size; i++) {
      double[] row = covariance[i];
      double change = 0;
      for (int c = 0; c < k; c++) {
        double sum = 0;
        for (int d = 0; d < k; d++) {
          sum += row[at[d]] * w[d][c];
        }
        gain[i][c] = sum;
        change += sum * error[c];
      }
      mean[i] += change;
    }
    double[][] columns = new double[size][k];
    for (int i = 0; i < size; i++) {
      for (int c = 0; c < k; c++) {
        columns[i][c] = covariance[i][at[c]];
      }
    }
    for (int i = 0; i < size; i++) {
      double[] row = covariance[i];
      double[] g = gain[i];
      for (int j = 0; j <= i; j++) {
        double sum = 0;
        double[] column = columns[j];
        for (int c = 0; c < k; c++) {
          sum += g[c] * column[c];
        }
        row[j] -= sum;
        covariance[j][i] = row[j];
      }
    }
  }
}
