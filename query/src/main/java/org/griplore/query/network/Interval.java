package org.griplore.query.network;

/**
 * An interval on the scale of the results.
 *
 * @param low lower end
 * @param high upper end
 */
public record Interval(double low, double high) {
  static Interval around(double centre, double halfWidth) {
    return new Interval(centre - halfWidth, centre + halfWidth);
  }

  /** Whether a value lies inside or on an end. */
  public boolean contains(double value) {
    return value >= low && value <= high;
  }
}
