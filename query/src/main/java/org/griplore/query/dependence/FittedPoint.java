package org.griplore.query.dependence;

/**
 * The fitted line at one value of the moderator, as it is shown.
 *
 * @param low lower end of the 95 % interval; null when there is none
 * @param high upper end
 */
public record FittedPoint(double at, double expected, Double low, Double high) {}
