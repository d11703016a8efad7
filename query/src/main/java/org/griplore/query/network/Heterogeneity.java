package org.griplore.query.network;

import org.griplore.query.statistics.Tails;

/**
 * How far the results of tests scatter beyond their run-level variances.
 *
 * @param q generalised Q: weighted sum of squares left by test and model effects without
 *     heterogeneity
 * @param df its degrees of freedom: arms less tests less models plus components
 * @param p probability of a larger Q when there is no heterogeneity
 * @param iSquared share of the scatter beyond run-level error, {@code max(0, (Q - df) / Q)}, 0 to 1
 */
public record Heterogeneity(double q, int df, double p, double iSquared) {
  static Heterogeneity of(double q, int df) {
    double share = q > 0 && q > df ? (q - df) / q : 0;
    return new Heterogeneity(q, df, df > 0 ? Tails.chiSquaredAbove(q, df) : 1, df > 0 ? share : 0);
  }
}
