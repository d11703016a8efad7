package org.griplore.query.network;

/** How an interval is made from a standard error where run-level variances are known. */
public enum IntervalRule {
  /**
   * By t, over the scatter that the tests themselves show: the standard error times the root of the
   * weighted residual sum of squares over its degrees of freedom (Hartung and Knapp 2001, Stat Med
   * 20:3875; for several models the residual of generalised least squares). It holds what it says
   * with two tests as with a hundred. Without residual degrees of freedom there is no interval.
   */
  BY_SCATTER,
  /**
   * The usual convention of meta-analysis programs: normal, the heterogeneity taken as known. Far
   * too short with few tests; kept to compare with published results.
   */
  CONVENTIONAL
}
