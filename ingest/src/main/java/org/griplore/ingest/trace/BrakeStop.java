package org.griplore.ingest.trace;

import java.util.ArrayList;
import java.util.List;
import org.griplore.ingest.reduce.run.FullyDevelopedDeceleration;
import org.griplore.ingest.reduce.run.FullyDevelopedDeceleration.Point;
import org.griplore.store.vocabulary.Refusal;

/**
 * One stop of a trace, from its highest speed on.
 *
 * @param row where it begins in the source
 * @param tyre whose stop it is; empty where the trace does not say
 * @param points speed in km/h, falling, and distance in m since the highest speed
 * @param seconds how long it took; NaN where the trace has no time
 */
record BrakeStop(int row, String tyre, List<Point> points, double seconds) {
  /** A logged line: time in s and distance in m may be NaN, speed is in km/h. */
  record Sample(int row, String stop, String tyre, double time, double speed, double distance) {}

  /** So much of the highest speed must it rise again for another stop to have begun. */
  private static final double NEW_STOP = 0.2;

  /** A stop is a fall of at least so much of its highest speed. */
  private static final double LEAST_FALL = 0.3;

  private static final int FEWEST_POINTS = 4;

  /** The stops of a trace, in their order. */
  static List<BrakeStop> of(List<Sample> samples) {
    List<BrakeStop> stops = new ArrayList<>();
    List<Sample> part = new ArrayList<>();
    double lowest = Double.POSITIVE_INFINITY;
    double highest = 0;
    for (Sample sample : samples) {
      Sample before = part.isEmpty() ? sample : part.get(part.size() - 1);
      boolean fell = highest - lowest >= LEAST_FALL * highest;
      boolean another =
          !sample.stop().equals(before.stop())
              || !sample.tyre().equals(before.tyre())
              || sample.time() < before.time()
              || fell && sample.speed() > lowest + NEW_STOP * highest;
      if (another) {
        add(stops, part);
        part = new ArrayList<>();
        lowest = Double.POSITIVE_INFINITY;
        highest = 0;
      }
      part.add(sample);
      highest = Math.max(highest, sample.speed());
      lowest = Math.min(lowest, sample.speed());
    }
    add(stops, part);
    return stops;
  }

  private static void add(List<BrakeStop> stops, List<Sample> part) {
    int first = 0;
    for (int i = 0; i < part.size(); i++) {
      // the last of equal highest speeds: the car rolls at it before it brakes
      first = part.get(i).speed() >= part.get(first).speed() ? i : first;
    }
    List<Point> points = new ArrayList<>();
    double distance = 0;
    int last = first;
    double start = part.isEmpty() ? 0 : part.get(first).distance();
    for (int i = first; i < part.size(); i++) {
      Sample sample = part.get(i);
      if (i > first) {
        Sample before = part.get(i - 1);
        distance =
            Double.isNaN(sample.distance())
                ? distance
                    + (before.speed() + sample.speed()) / 7.2 * (sample.time() - before.time())
                : Math.max(distance, sample.distance() - start);
      }
      if (points.isEmpty() || sample.speed() < points.get(points.size() - 1).speedKmh()) {
        points.add(new Point(sample.speed(), distance));
        last = i;
      }
    }
    boolean falls =
        points.size() >= FEWEST_POINTS
            && points.get(points.size() - 1).speedKmh()
                <= (1 - LEAST_FALL) * points.get(0).speedKmh();
    if (falls) {
      Sample begun = part.get(first);
      stops.add(
          new BrakeStop(begun.row(), begun.tyre(), points, part.get(last).time() - begun.time()));
    }
  }

  double fromKmh() {
    return points.get(0).speedKmh();
  }

  double toKmh() {
    return points.get(points.size() - 1).speedKmh();
  }

  /** Distance between the highest and the lowest speed, m. */
  double distanceM() {
    return points.get(points.size() - 1).distanceM();
  }

  /**
   * Mean fully developed deceleration in m/s2 by {@link FullyDevelopedDeceleration}; NaN where the
   * trace ends above a tenth of its first speed.
   */
  double mfdd() {
    try {
      return FullyDevelopedDeceleration.of(points);
    } catch (Refusal e) {
      return Double.NaN;
    }
  }
}
