package org.griplore.query.network;

/** Degrees of freedom of the t quantile in a prediction interval of a network contrast. */
public enum PredictionRule {
  /** The degrees of freedom of Q: arms less tests less models plus connected components. */
  Q_DF(0),
  /**
   * One less, because the heterogeneity variance was estimated as well (Higgins, Thompson and
   * Spiegelhalter 2009, J R Stat Soc A 172:137, carried over to networks).
   */
  Q_DF_LESS_ONE(1);

  private final int less;

  PredictionRule(int less) {
    this.less = less;
  }

  int degrees(int residualDf) {
    return residualDf - less;
  }
}
