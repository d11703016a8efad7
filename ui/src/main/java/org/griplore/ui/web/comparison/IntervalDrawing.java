package org.griplore.ui.web.comparison;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * A small drawing of an interval, in user units of {@link #WIDTH} by {@link #HEIGHT}: a line from
 * one end to the other, a dot for the figure, a rule where the difference is zero.
 *
 * @param from where the interval begins
 * @param to where it ends
 * @param at the figure
 * @param zero no difference
 */
public record IntervalDrawing(String from, String to, String at, String zero) {
  /** Width of the drawing. */
  public static final int WIDTH = 88;

  /** Height of the drawing. */
  public static final int HEIGHT = 12;

  private static final double MARGIN = 5;

  /** The scale that all drawings of a column share; zero is always on it. */
  record Frame(double low, double high) {
    /** An interval on this scale; null when it has no ends. */
    IntervalDrawing draw(Double from, Double at, Double to) {
      return from == null || to == null || at == null || !(high > low)
          ? null
          : new IntervalDrawing(x(from), x(to), x(at), x(0));
    }

    private String x(double value) {
      double share = (value - low) / (high - low);
      return String.format(Locale.ROOT, "%.1f", MARGIN + share * (WIDTH - 2 * MARGIN));
    }
  }

  /** The scale that holds these figures; missing ones are null. */
  static Frame frame(Stream<Double> figures) {
    List<Double> known = figures.filter(Objects::nonNull).toList();
    return new Frame(
        Math.min(0, known.stream().mapToDouble(Double::doubleValue).min().orElse(0)),
        Math.max(0, known.stream().mapToDouble(Double::doubleValue).max().orElse(0)));
  }
}
