package org.griplore.ingest.reduce.run;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.griplore.store.vocabulary.LoggedRun;

/**
 * The speeds between which a braking run is evaluated.
 *
 * @param fromKmh speed at the start, km/h
 * @param toKmh speed at the end, km/h; 0 for a full stop
 */
public record Window(double fromKmh, double toKmh) {
  private static final double ROUND_TO_KMH = 5;

  /** Checks the speeds. */
  public Window {
    RunPosition.notNegative(fromKmh, "speed", "braking window");
    RunPosition.notNegative(toKmh, "speed", "braking window");
    if (fromKmh <= toKmh) {
      throw RunPosition.refusal(
          "braking window", fromKmh + " to " + toKmh + " km/h", "a falling speed");
    }
  }

  /**
   * The window that runs aimed at: the means of their logged speeds, each to the nearest 5 km/h. A
   * guess; whoever uses it says so. Empty where no run has both speeds or the guess is no window.
   */
  public static Optional<Window> aimedAt(List<LoggedRun> runs) {
    List<LoggedRun> logged =
        runs.stream().filter(run -> run.fromKmh() != null && run.toKmh() != null).toList();
    double from = nearest(logged.stream().map(LoggedRun::fromKmh).toList());
    double to = nearest(logged.stream().map(LoggedRun::toKmh).toList());
    return logged.isEmpty() || from <= to ? Optional.empty() : Optional.of(new Window(from, to));
  }

  private static double nearest(List<Double> speeds) {
    double mean = speeds.stream().filter(Objects::nonNull).mapToDouble(d -> d).average().orElse(0);
    return ROUND_TO_KMH * Math.rint(mean / ROUND_TO_KMH);
  }

  /** (v1^2 - v2^2), in m2/s2. */
  public double squares() {
    return SpeedCorrection.squares(fromKmh, toKmh);
  }

  /** As {@code 80 to 20 km/h}. */
  public String words() {
    return number(fromKmh) + " to " + number(toKmh) + " km/h";
  }

  private static String number(double value) {
    return value == Math.rint(value)
        ? String.format(Locale.ROOT, "%.0f", value)
        : String.format(Locale.ROOT, "%s", value);
  }
}
