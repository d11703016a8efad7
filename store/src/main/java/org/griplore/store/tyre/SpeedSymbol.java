package org.griplore.store.tyre;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Speed symbols in the order of their speed: H stands between U and V, out of the alphabet. L to Y
 * as in the published tables of UN Regulation No. 30; B to K from memory, check the official text.
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

  /** The highest speed in km/h. */
  public int kmh() {
    return kmh;
  }

  /** The symbol of a letter; an empty result for letters that are none (A, I, O, X, Z). */
  public static Optional<SpeedSymbol> of(String letter) {
    String upper = letter.strip().toUpperCase(Locale.ROOT);
    for (SpeedSymbol symbol : values()) {
      if (symbol.name().equals(upper)) {
        return Optional.of(symbol);
      }
    }
    return Optional.empty();
  }

  /**
   * The share of the load-index load that may be carried at a speed: V full to 210 km/h and 91 % at
   * 240, W full to 240 and 85 % at 270, linear between; Y full to 270 and 85 % at 300 (Y from
   * memory, check the official text). Empty above the symbol's speed.
   *
   * @param speedKmh speed in km/h
   */
  public OptionalDouble loadShareAt(double speedKmh) {
    if (!(speedKmh <= kmh)) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(
        switch (this) {
          case V -> falling(speedKmh, 210, 0.91);
          case W -> falling(speedKmh, 240, 0.85);
          case Y -> falling(speedKmh, 270, 0.85);
          default -> 1;
        });
  }

  private double falling(double speedKmh, int fullTo, double shareAtTop) {
    double over = Math.max(0, speedKmh - fullTo);
    return 1 - (1 - shareAtTop) * over / (kmh - fullTo);
  }
}
