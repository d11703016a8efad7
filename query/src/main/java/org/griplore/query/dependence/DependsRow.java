package org.griplore.query.dependence;

import java.util.List;

/**
 * How a contrast changes with one moderator; plus: with more of it the first side gains on the
 * second. Figures are null where the data cannot tell.
 *
 * @param moderator rim, width, mass, temperature or year
 * @param measuredAs the same in words; says which temperature
 * @param in the unit of the moderator's values; empty for a year
 * @param slope change of the contrast, in {@code unit}
 * @param p probability of so large a slope by chance
 * @param df degrees of freedom the interval rests on
 * @param unit such as {@code % per 10 K}
 * @param tests tests with both sides that state the moderator
 * @param lowest the lowest value of the moderator in them
 * @param highest the highest
 * @param at their weighted mean
 * @param contrast the contrast there
 * @param sameModels the slope with each model compared with itself only, where more models than one
 *     stand for a side
 * @param verdict the row in words
 * @param logSlope natural log, for ratio disciplines, for the same step of the moderator
 * @param points the tests
 * @param line the fitted line, for a plot; empty when there is none
 */
public record DependsRow(
    String moderator,
    String measuredAs,
    String in,
    Double slope,
    Double se,
    Double low,
    Double high,
    Double p,
    Double df,
    String unit,
    int tests,
    Double lowest,
    Double highest,
    Double at,
    Double contrast,
    Double contrastLow,
    Double contrastHigh,
    Double sameModels,
    Double sameModelsLow,
    Double sameModelsHigh,
    String verdict,
    Double logSlope,
    Double logSe,
    List<ContrastPoint> points,
    List<FittedPoint> line) {
  /** Keeps the lists from changing. */
  public DependsRow {
    points = List.copyOf(points);
    line = List.copyOf(line);
  }

  /** Whether one of the two intervals of the slope leaves zero out. */
  boolean isTold() {
    return leavesOutZero(low, high) || leavesOutZero(sameModelsLow, sameModelsHigh);
  }

  private static boolean leavesOutZero(Double low, Double high) {
    return low != null && (low > 0 || high < 0);
  }
}
