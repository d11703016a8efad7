package org.griplore.query.tradeoff;

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
