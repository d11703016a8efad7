package org.griplore.ingest.recognise;

import java.util.Map;

/**
 * What figures of a discipline look like in its canonical unit on cars: wide ranges from common
 * practice, used only to judge whether a unit that is not stated can be the canonical one.
 *
 * @param low in the canonical unit
 * @param high in the canonical unit
 */
public record PlausibleRange(double low, double high) {
  private static final Map<String, PlausibleRange> BY_DISCIPLINE =
      Map.ofEntries(
          Map.entry("wet-braking", new PlausibleRange(12, 120)),
          Map.entry("dry-braking", new PlausibleRange(12, 100)),
          Map.entry("snow-braking", new PlausibleRange(8, 150)),
          Map.entry("ice-braking", new PlausibleRange(5, 200)),
          Map.entry("wet-handling", new PlausibleRange(15, 300)),
          Map.entry("dry-handling", new PlausibleRange(15, 300)),
          Map.entry("snow-handling", new PlausibleRange(15, 400)),
          Map.entry("wet-circle", new PlausibleRange(2, 12)),
          Map.entry("straight-aquaplaning", new PlausibleRange(40, 140)),
          Map.entry("curved-aquaplaning", new PlausibleRange(0.5, 9)),
          Map.entry("exterior-noise", new PlausibleRange(55, 90)),
          Map.entry("interior-noise", new PlausibleRange(45, 90)),
          Map.entry("rolling-resistance", new PlausibleRange(3, 20)),
          Map.entry("snow-traction", new PlausibleRange(200, 10_000)),
          Map.entry("wear", new PlausibleRange(3000, 200_000)),
          Map.entry("energy-use", new PlausibleRange(4, 60)),
          Map.entry("comfort", new PlausibleRange(1, 10)),
          Map.entry("steering-response", new PlausibleRange(1, 10)),
          Map.entry("wet-feel", new PlausibleRange(1, 10)),
          Map.entry("dry-feel", new PlausibleRange(1, 10)),
          Map.entry("mass", new PlausibleRange(3, 40)),
          Map.entry("price", new PlausibleRange(10, 3000)));

  private static final PlausibleRange ANY =
      new PlausibleRange(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);

  /** The range of a discipline; everything for one that is not listed. */
  public static PlausibleRange of(String discipline) {
    return BY_DISCIPLINE.getOrDefault(discipline, ANY);
  }

  /** Whether a value is inside. */
  public boolean holds(double value) {
    return value >= low && value <= high;
  }
}
