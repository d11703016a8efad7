package org.griplore.store.vocabulary;

import java.util.Objects;

/**
 * How a figure came about, where that is stated for the figure itself. Every part but {@code kind}
 * may be null: what the test states holds then.
 *
 * @param kind measured, declared or claimed
 * @param fromKmh speed at the start of the measured window, km/h
 * @param toKmh speed at its end, km/h
 * @param surface what it was measured on
 * @param waterMm depth of the water, mm
 * @param surfaceC temperature of the surface, degrees Celsius
 * @param airC temperature of the air, degrees Celsius
 */
public record Circumstance(
    ResultKind kind,
    Double fromKmh,
    Double toKmh,
    Surface surface,
    Double waterMm,
    Double surfaceC,
    Double airC) {
  /** Measured, and nothing more is stated. */
  public static final Circumstance MEASURED = of(ResultKind.MEASURED);

  /** Checks that there is a kind and that numbers are finite. */
  public Circumstance {
    Objects.requireNonNull(kind);
    for (Double number : new Double[] {fromKmh, toKmh, waterMm, surfaceC, airC}) {
      if (number != null && !Double.isFinite(number)) {
        throw new IllegalArgumentException("a circumstance's figures are finite");
      }
    }
  }

  /** Of this kind, and nothing more is stated. */
  public static Circumstance of(ResultKind kind) {
    return new Circumstance(kind, null, null, null, null, null, null);
  }

  /** The same within a window of speeds, km/h. */
  public Circumstance within(Double from, Double to) {
    return new Circumstance(kind, from, to, surface, waterMm, surfaceC, airC);
  }
}
