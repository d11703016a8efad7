package org.griplore.query.outlook;

/**
 * How far things differ in a discipline, as variances on its scale.
 *
 * @param tauSquared of a result around its model's level, the scatter of runs apart
 * @param line of lines around the mean of their season class
 * @param step of steps from one generation to the next around the usual step
 * @param run of single runs of a set; 0 where no result tells it, and then it is in the
 *     heterogeneity
 * @param usualShare mean of 1/runs over results that tell their runs; for those that do not
 * @param within spread of results within a test and season class, the yardstick of all
 */
record VarianceComponents(
    double tauSquared, double line, double step, double run, double usualShare, double within) {

  /** Variance of a result around its model's level, by its number of runs; 0 for not known. */
  double result(int runs) {
    return tauSquared + run * (runs > 0 ? 1.0 / runs : usualShare);
  }
}
