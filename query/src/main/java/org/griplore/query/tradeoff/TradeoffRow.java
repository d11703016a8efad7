package org.griplore.query.tradeoff;

import org.griplore.query.discipline.ComparisonScale;

/**
 * A model in two disciplines, against the mean of the models shown; plus is better in both. Figures
 * are null where they could not be estimated.
 *
 * @param x in the first discipline, in its unit or in per cent of performance
 * @param y in the second
 * @param front whether no other model is at least as good in both and better in one
 * @param frontChance how surely, given the errors of the estimates, from 0 to 1
 * @param tests tests that had the model in both disciplines
 * @param step the step from its predecessor; null when there is none to compare with
 * @param logX natural log of x, for ratio disciplines
 */
public record TradeoffRow(
    String model,
    Double x,
    Double xSe,
    Double xLow,
    Double xHigh,
    Double y,
    Double ySe,
    Double yLow,
    Double yHigh,
    boolean front,
    Double frontChance,
    int tests,
    TradeoffStep step,
    Double logX,
    Double logXSe,
    Double logY,
    Double logYSe) {
  /** The row of the i-th model on both axes. */
  static TradeoffRow of(
      String model,
      ComparisonScale x,
      Axis onX,
      ComparisonScale y,
      Axis onY,
      int i,
      boolean front,
      Double frontChance,
      int tests,
      TradeoffStep step) {
    var xInterval = onX.interval(i);
    var yInterval = onY.interval(i);
    return new TradeoffRow(
        model,
        x.shown(onX.effect()[i]),
        x.shownSe(onX.effect()[i], onX.se(i)),
        x.shownLow(xInterval),
        x.shownHigh(xInterval),
        y.shown(onY.effect()[i]),
        y.shownSe(onY.effect()[i], onY.se(i)),
        y.shownLow(yInterval),
        y.shownHigh(yInterval),
        front,
        frontChance,
        tests,
        step,
        x.log(onX.effect()[i]),
        x.isRatio() ? onX.se(i) : null,
        y.log(onY.effect()[i]),
        y.isRatio() ? onY.se(i) : null);
  }
}
