package org.griplore.query.network;

/** What was known of the run-level variances of a fit. */
public enum ErrorKnowledge {
  /** Every arm brought its own variance. */
  KNOWN,
  /** Some or all arms were given a typical variance. */
  MIXED,
  /** None was known: error and heterogeneity are estimated together from the residuals. */
  UNKNOWN
}
