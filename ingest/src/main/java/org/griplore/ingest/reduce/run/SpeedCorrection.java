package org.griplore.ingest.reduce.run;

/**
 * What a braking distance says once the speeds it was driven from and to are taken into account.
 * Assumes a constant deceleration, s = (v1^2 - v2^2) / (2 a), and so holds for the braking phase
 * alone: a distance from the first touch of the pedal holds a build-up that grows with v, not with
 * v^2. Meant for small deviations of speed (SAE J299 describes such a correction; the square law
 * itself from memory, check the official text). All speeds in km/h, distances in m.
 */
public final class SpeedCorrection {
  /** km/h in one m/s. */
  public static final double KMH = 3.6;

  /**
   * How far a run's v1^2 - v2^2 may be from the nominal one before the correction is remarked on: 4
   * %, which is 2 % of the initial speed (the initial speed is to be at least 98 % of the nominal
   * one: Directive 71/320/EEC annex II 1.1.2, read in source).
   */
  public static final double SMALL_DEVIATION = 0.04;

  private SpeedCorrection() {}

  /**
   * Mean deceleration over a distance between two speeds, AD = |Sf^2 - Si^2| / (2 d), in m/s2 (UN
   * Regulation No. 117 annex 5; formula from memory, check the official text).
   *
   * @throws org.griplore.store.vocabulary.Refusal for a distance that is not positive or speeds
   *     that do not differ
   */
  public static double deceleration(double fromKmh, double toKmh, double distanceM) {
    return deceleration(fromKmh, toKmh, distanceM, "braking run");
  }

  public static double deceleration(double fromKmh, double toKmh, double distanceM, String where) {
    RunPosition.notNegative(fromKmh, "speed", where);
    RunPosition.notNegative(toKmh, "speed", where);
    RunPosition.positive(distanceM, "distance", where);
    if (fromKmh == toKmh) {
      throw RunPosition.refusal(where, "from and to speed both " + fromKmh, "two different speeds");
    }
    return Math.abs(squares(fromKmh, toKmh)) / (2 * distanceM);
  }

  /** Distance that a constant deceleration in m/s2 takes between two speeds. */
  public static double distance(Window window, double deceleration) {
    return window.squares() / (2 * RunPosition.positive(deceleration, "deceleration", "distance"));
  }

  /** A full stop's distance from the nominal speed: s (v_nominal / v)^2. */
  public static double fullStop(double distanceM, double fromKmh, double nominalKmh) {
    return toNominal(distanceM, fromKmh, 0, new Window(nominalKmh, 0));
  }

  /** A run's distance in the nominal window: s (n1^2 - n2^2) / (v1^2 - v2^2). */
  public static double toNominal(double distanceM, double fromKmh, double toKmh, Window nominal) {
    return distance(nominal, deceleration(fromKmh, toKmh, distanceM));
  }

  /** How far the run's v1^2 - v2^2 is from the nominal one, as a fraction of it. */
  public static double deviation(double fromKmh, double toKmh, Window nominal) {
    return squares(fromKmh, toKmh) / nominal.squares() - 1;
  }

  /**
   * Speed that a car still has where a better one stands, both braked from the same speed: v0
   * sqrt(1 - s_best / s).
   *
   * @throws org.griplore.store.vocabulary.Refusal when the better distance is not the shorter one
   */
  public static double residualSpeed(double fromKmh, double bestM, double distanceM) {
    RunPosition.positive(bestM, "distance", "residual speed");
    RunPosition.positive(fromKmh, "speed", "residual speed");
    if (!(distanceM >= bestM) || !Double.isFinite(distanceM)) {
      throw RunPosition.refusal(
          "residual speed", distanceM + " m", "a distance not shorter than " + bestM + " m");
    }
    return fromKmh * Math.sqrt(1 - bestM / distanceM);
  }

  /** v1^2 - v2^2 in m2/s2. */
  public static double squares(double fromKmh, double toKmh) {
    return (fromKmh * fromKmh - toKmh * toKmh) / (KMH * KMH);
  }
}
