package org.griplore.query.network;

/** How the variance that tests add beyond the run-level error is found. */
public enum VarianceMethod {
  /** Restricted maximum likelihood, with the covariance that arms of one test share. */
  REML,
  /** The moment estimator of DerSimonian and Laird in its form for networks; never negative. */
  DL,
  /**
   * No heterogeneity: one common effect. Where no run-level variance is known the residual variance
   * is still estimated, as in ordinary least squares.
   */
  NONE
}
