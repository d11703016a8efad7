package org.griplore.ingest.reduce;

import java.util.Locale;
import org.griplore.ingest.reduce.run.RunPosition;

/**
 * How much better one tyre brakes than another, told of what: the ratio of decelerations (grip) and
 * the ratio of distances are reciprocal, and their percentages differ. 10 % more grip is 9.09 %
 * less distance (arithmetic).
 *
 * @param gripRatio ratio of mean decelerations, better above 1
 */
public record Improvement(double gripRatio) {
  /** Checks the ratio. */
  public Improvement {
    RunPosition.positive(gripRatio, "ratio", "improvement");
  }

  /** From two distances of the same window. */
  public static Improvement ofDistances(double distanceM, double referenceM) {
    return new Improvement(
        RunPosition.positive(referenceM, "distance", "improvement")
            / RunPosition.positive(distanceM, "distance", "improvement"));
  }

  /** Ratio of distances, better below 1. */
  public double distanceRatio() {
    return 1 / gripRatio;
  }

  /** Per cent more grip; negative when there is less. */
  public double gripPercent() {
    return 100 * (gripRatio - 1);
  }

  /** Per cent less distance; negative when it is longer. */
  public double distancePercent() {
    return 100 * (1 - 1 / gripRatio);
  }

  /** Both, with what they are of. */
  public String words() {
    return String.format(
        Locale.ROOT,
        "%.1f %% %s grip (deceleration), which is %.1f %% %s distance",
        Math.abs(gripPercent()),
        gripRatio >= 1 ? "more" : "less",
        Math.abs(distancePercent()),
        gripRatio >= 1 ? "less" : "more");
  }
}
