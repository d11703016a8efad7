package org.griplore.query.tradeoff;

import java.util.Optional;
import org.griplore.query.discipline.ComparisonScale;
import org.griplore.query.discipline.Difference;
import org.griplore.query.discipline.ModelStep;
import org.griplore.query.evidence.Evidence;
import org.griplore.query.evidence.Names;
import org.griplore.query.network.EstimatedComparison;
import org.griplore.query.statistics.Interval;

/**
 * What a new generation gained over its predecessor in two disciplines; plus is better.
 *
 * @param line the line; null when not known
 * @param dx the step in the first discipline
 * @param dy the step in the second
 * @param improvedBoth true when both intervals lie above zero, false when one lies below, null when
 *     that cannot be told
 */
public record TradeoffStep(
    String line,
    String older,
    String newer,
    Double dx,
    Double dxLow,
    Double dxHigh,
    Double dy,
    Double dyLow,
    Double dyHigh,
    Boolean improvedBoth) {
  /** A step as both networks compare its models. */
  static TradeoffStep of(
      Evidence evidence,
      ModelStep step,
      ComparisonScale x,
      EstimatedComparison dx,
      ComparisonScale y,
      EstimatedComparison dy) {
    Optional<Interval> inX = dx.interval(Difference.LEVEL);
    Optional<Interval> inY = dy.interval(Difference.LEVEL);
    Double xLow = x.shownLow(inX);
    Double xHigh = x.shownHigh(inX);
    Double yLow = y.shownLow(inY);
    Double yHigh = y.shownHigh(inY);
    return new TradeoffStep(
        Names.lineName(evidence.models().get(step.newer())),
        evidence.models().get(step.older()).name(),
        evidence.models().get(step.newer()).name(),
        x.shown(dx.difference()),
        xLow,
        xHigh,
        y.shown(dy.difference()),
        yLow,
        yHigh,
        improvedBoth(xLow, xHigh, yLow, yHigh));
  }

  static Boolean improvedBoth(Double dxLow, Double dxHigh, Double dyLow, Double dyHigh) {
    if (dxLow == null || dyLow == null) {
      return null;
    }
    if (dxLow > 0 && dyLow > 0) {
      return true;
    }
    return dxHigh < 0 || dyHigh < 0 ? Boolean.FALSE : null;
  }
}
