package org.griplore.ingest.reduce.run;

import java.util.List;

/**
 * Mean fully developed deceleration: d_m = (v_b^2 - v_e^2) / (25.92 (s_e - s_b)) in m/s2, with v_b
 * = 0.8 v1 and v_e = 0.1 v1 in km/h, s_b and s_e the distances in m covered until then; 25.92 = 2 x
 * 3.6^2 (Directive 71/320/EEC annex II 1.1.2, symbols read in source; the same in UN Regulations
 * No. 13 and 13-H, paragraph from memory, check the official text).
 */
public final class FullyDevelopedDeceleration {
  private static final double BEGIN = 0.8;
  private static final double END = 0.1;

  private FullyDevelopedDeceleration() {}

  /**
   * A logged point of a stop.
   *
   * @param speedKmh speed, km/h
   * @param distanceM distance covered since braking began, m
   */
  public record Point(double speedKmh, double distanceM) {}

  /**
   * From the initial speed and the two distances.
   *
   * @throws org.griplore.store.vocabulary.Refusal unless 0 <= s_b < s_e
   */
  public static double of(double initialKmh, double beginM, double endM) {
    RunPosition.positive(initialKmh, "initial speed", "fully developed deceleration");
    RunPosition.notNegative(beginM, "distance", "fully developed deceleration");
    if (!(endM > beginM) || !Double.isFinite(endM)) {
      throw RunPosition.refusal(
          "fully developed deceleration",
          "distances " + beginM + " and " + endM + " m",
          "the distance at 0.1 v1 beyond the one at 0.8 v1");
    }
    double begin = BEGIN * initialKmh;
    double end = END * initialKmh;
    return (begin * begin - end * end)
        / (2 * SpeedCorrection.KMH * SpeedCorrection.KMH * (endM - beginM));
  }

  /**
   * From a trace. Between two points the deceleration is taken as constant, so that v^2 is linear
   * in the distance.
   *
   * @param points in the order driven: speed never rises, distance never falls; the first is the
   *     initial speed
   * @throws org.griplore.store.vocabulary.Refusal when the trace is out of order or ends above 0.1
   *     v1
   */
  public static double of(List<Point> points) {
    if (points.size() < 2) {
      throw RunPosition.refusal("braking trace", points.size() + " points", "at least two points");
    }
    double initial = points.get(0).speedKmh();
    RunPosition.positive(initial, "initial speed", "braking trace");
    return of(initial, distanceAt(points, BEGIN * initial), distanceAt(points, END * initial));
  }

  private static double distanceAt(List<Point> points, double speed) {
    for (int i = 1; i < points.size(); i++) {
      Point before = points.get(i - 1);
      Point after = points.get(i);
      String where = "braking trace, point " + (i + 1);
      RunPosition.notNegative(after.speedKmh(), "speed", where);
      RunPosition.notNegative(after.distanceM(), "distance", where);
      if (after.speedKmh() > before.speedKmh() || after.distanceM() < before.distanceM()) {
        throw RunPosition.refusal(where, after.toString(), "speed falling and distance growing");
      }
      if (after.speedKmh() <= speed) {
        double span = before.speedKmh() * before.speedKmh() - after.speedKmh() * after.speedKmh();
        double part = before.speedKmh() * before.speedKmh() - speed * speed;
        double share = span == 0 ? 0 : part / span;
        return before.distanceM() + share * (after.distanceM() - before.distanceM());
      }
    }
    throw RunPosition.refusal(
        "braking trace",
        "a last speed of " + points.get(points.size() - 1).speedKmh() + " km/h",
        "a trace down to " + speed + " km/h");
  }
}
