package org.griplore.query.outlook;

/**
 * Levels of a field of models, or their results in a new test, jointly normal.
 *
 * @param mean one a model, plus is better
 * @param covariance theirs
 */
record Levels(double[] mean, double[][] covariance) {
  /** Results in a new test: each level with the variance of a result around it. */
  Levels results(double[] variance) {
    double[][] with = new double[mean.length][];
    for (int i = 0; i < mean.length; i++) {
      with[i] = covariance[i].clone();
      with[i][i] += variance[i];
    }
    return new Levels(mean, with);
  }

  /** Each less the mean of the field. */
  Levels lessMean() {
    int k = mean.length;
    double middle = 0;
    double[] rows = new double[k];
    double all = 0;
    for (int i = 0; i < k; i++) {
      middle += mean[i] / k;
      for (int j = 0; j < k; j++) {
        rows[i] += covariance[i][j] / k;
      }
      all += rows[i] / k;
    }
    double[] deltas = new double[k];
    double[][] theirs = new double[k][k];
    for (int i = 0; i < k; i++) {
      deltas[i] = mean[i] - middle;
      for (int j = 0; j < k; j++) {
        theirs[i][j] = covariance[i][j] - rows[i] - rows[j] + all;
      }
    }
    return new Levels(deltas, theirs);
  }

  /** Standard deviation of one. */
  double sd(int i) {
    return Math.sqrt(Math.max(0, covariance[i][i]));
  }
}
