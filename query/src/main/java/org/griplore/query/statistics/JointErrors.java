package org.griplore.query.statistics;

import java.util.SplittableRandom;

/**
 * Draws of errors whose differences have stated standard deviations. With d(i,j) the variance of a
 * difference, errors less the first have the covariance (d(i,0) + d(j,0) - d(i,j)) / 2, whose
 * Cholesky factor makes draws of independent normals.
 */
public final class JointErrors implements RankIntervals.ErrorDraw {
  /** A pivot this small beside its diagonal is taken as none: the error follows from the others. */
  private static final double NONE = 1e-12;

  private final double[][] factor;

  private JointErrors(double[][] factor) {
    this.factor = factor;
  }

  /** Of so many estimates; takes as many steps as their number cubed. */
  public static JointErrors of(int count, RankIntervals.PairSpread spread) {
    double[] toFirst = new double[count];
    for (int i = 1; i < count; i++) {
      toFirst[i] = square(spread.of(i, 0));
    }
    double[][] factor = new double[count][];
    for (int i = 0; i < count; i++) {
      factor[i] = new double[i + 1];
      for (int j = 1; j <= i; j++) {
        double between = i == j ? 0 : square(spread.of(i, j));
        double sum = (toFirst[i] + toFirst[j] - between) / 2;
        for (int k = 1; k < j; k++) {
          sum -= factor[i][k] * factor[j][k];
        }
        if (i == j) {
          factor[i][i] = sum > NONE * toFirst[i] ? Math.sqrt(sum) : 0;
        } else {
          factor[i][j] = factor[j][j] > 0 ? sum / factor[j][j] : 0;
        }
      }
    }
    return new JointErrors(factor);
  }

  @Override
  public void next(SplittableRandom random, double[] errors) {
    double[] normal = new double[factor.length];
    for (int i = 0; i < normal.length; i++) {
      normal[i] = random.nextGaussian();
    }
    for (int i = 0; i < normal.length; i++) {
      double sum = 0;
      for (int j = 1; j <= i; j++) {
        sum += factor[i][j] * normal[j];
      }
      errors[i] = sum;
    }
  }

  private static double square(double number) {
    return number * number;
  }
}
