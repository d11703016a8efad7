package org.griplore.query.statistics;

/**
 * An interval, low end first.
 *
 * @param low lower end
 * @param high upper end
 */
public record Interval(double low, double high) {
  /** The middle plus and minus a half width. */
  public static Interval around(double middle, double half) {
    return new Interval(middle - half, middle + half);
  }

  /** Whether a value lies within, ends included. */
  public boolean contains(double value) {
    return low <= value && value <= high;
  }
}
