package org.griplore.store.scenario;

import java.util.List;
import java.util.Map;
import org.griplore.store.vocabulary.SeasonClass;

/** The kind of comparison: which tyres, which disciplines, how often each is run, at what time. */
enum Theme {
  SUMMER(
      SeasonClass.SUMMER,
      List.of(3, 4, 5, 6),
      17,
      Map.ofEntries(
          Map.entry("wet-braking", 0.97),
          Map.entry("dry-braking", 0.9),
          Map.entry("wet-handling", 0.85),
          Map.entry("dry-handling", 0.6),
          Map.entry("wet-circle", 0.5),
          Map.entry("straight-aquaplaning", 0.7),
          Map.entry("curved-aquaplaning", 0.5),
          Map.entry("exterior-noise", 0.65),
          Map.entry("interior-noise", 0.4),
          Map.entry("rolling-resistance", 0.85),
          Map.entry("wear", 0.2),
          Map.entry("comfort", 0.5),
          Map.entry("steering-response", 0.45),
          Map.entry("wet-feel", 0.35),
          Map.entry("dry-feel", 0.35),
          Map.entry("mass", 0.25),
          Map.entry("price", 0.45))),
  ALL_SEASON(
      SeasonClass.ALL_SEASON,
      List.of(9, 10, 11),
      12,
      Map.ofEntries(
          Map.entry("wet-braking", 1.0),
          Map.entry("dry-braking", 0.9),
          Map.entry("snow-braking", 0.9),
          Map.entry("snow-handling", 0.6),
          Map.entry("snow-traction", 0.6),
          Map.entry("wet-handling", 0.7),
          Map.entry("straight-aquaplaning", 0.5),
          Map.entry("exterior-noise", 0.5),
          Map.entry("rolling-resistance", 0.8),
          Map.entry("wear", 0.3),
          Map.entry("comfort", 0.4),
          Map.entry("price", 0.5))),
  WINTER(
      SeasonClass.WINTER,
      List.of(1, 2, 3),
      6,
      Map.ofEntries(
          Map.entry("snow-braking", 1.0),
          Map.entry("snow-handling", 0.85),
          Map.entry("snow-traction", 0.75),
          Map.entry("ice-braking", 0.55),
          Map.entry("wet-braking", 0.9),
          Map.entry("dry-braking", 0.8),
          Map.entry("wet-handling", 0.55),
          Map.entry("straight-aquaplaning", 0.5),
          Map.entry("interior-noise", 0.3),
          Map.entry("exterior-noise", 0.4),
          Map.entry("rolling-resistance", 0.65),
          Map.entry("comfort", 0.35),
          Map.entry("price", 0.35)));

  private final SeasonClass season;
  private final List<Integer> months;
  private final double meanAirC;
  private final Map<String, Double> shares;

  Theme(SeasonClass season, List<Integer> months, double meanAirC, Map<String, Double> shares) {
    this.season = season;
    this.months = months;
    this.meanAirC = meanAirC;
    this.shares = shares;
  }

  SeasonClass season() {
    return season;
  }

  /** Months in which such tests are run. */
  List<Integer> months() {
    return months;
  }

  /** Mean air temperature of the wet and dry work, degrees Celsius. */
  double meanAirC() {
    return meanAirC;
  }

  /** Spread of that temperature between tests. */
  double airSd() {
    return this == WINTER ? 2.5 : 4.5;
  }

  /** Share of such tests that run a discipline; 0 where they never do. */
  double share(String discipline) {
    return shares.getOrDefault(discipline, 0.0);
  }

  /** Whether part of the work is on snow. */
  boolean onSnow() {
    return this != SUMMER;
  }
}
