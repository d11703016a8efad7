package org.griplore.store.tyre;

import java.util.Optional;

/**
 * The speed symbol of a tyre, slowest first. H stands between U and V, out of the alphabet.
 *
 * <p>L to Y: several published tables. B to K, and the load at high speed: from memory, check the
 * official text (UN Regulation No. 30).
 */
public enum SpeedSymbol {
  B(50),
  C(60),
  D(65),
  E(70),
  F(80),
  G(90),
  J(100),
  K(110),
  L(120),
  M(130),
  N(140),
  P(150),
  Q(160),
  R(170),
  S(180),
  T(190),
  U(200),
  H(210),
  V(240),
  W(270),
  Y(300);

  private final int kmh;

  SpeedSymbol(int kmh) {
    this.kmh = kmh;
  }

  /** The greatest speed, km/h. */
  public int kmh() {
    return kmh;
  }

  /** The symbol written as this letter. */
  public static Optional<SpeedSymbol> of(String letter) {
    for (SpeedSymbol symbol : values()) {
      if (symbol.name().equals(letter)) {
        return Optional.of(symbol);
      }
    }
    return Optional.empty();
  }

  /**
   * The share of the full load allowed at a speed: V falls from 1 at 210 km/h to 0.91 at 240, W
   * from 1 at 240 to 0.85 at 270, Y from 1 at 270 to 0.85 at 300, each along a straight line; other
   * symbols carry the full load up to their speed.
   *
   * @param speedKmh from 0 to the symbol's speed
   * @throws IllegalArgumentException above it
   */
  public double loadShareAt(double speedKmh) {
    if (speedKmh < 0 || speedKmh > kmh) {
      throw new IllegalArgumentException("speed from 0 to " + kmh + " km/h: " + speedKmh);
    }
    return switch (this) {
      case V -> falling(speedKmh, 0.91);
      case W, Y -> falling(speedKmh, 0.85);
      default -> 1;
    };
  }

  private double falling(double speedKmh, double last) {
    double from = kmh - 30;
    return speedKmh <= from ? 1 : 1 - (1 - last) * (speedKmh - from) / 30;
  }
}
