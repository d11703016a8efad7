package org.griplore.store.tyre;

/** The structure code between aspect ratio and rim diameter. */
public enum Structure {
  RADIAL("R", true, false),
  /** Radial for more than 240 km/h; with a service description that alone says the speed. */
  RADIAL_ZR("ZR", true, false),
  /** Run-flat radial: {@code RF} in this place and nowhere else. */
  RUN_FLAT("RF", true, true),
  /** Run-flat radial for more than 240 km/h. */
  RUN_FLAT_ZR("ZRF", true, true),
  /** Diagonal ply; also written as a hyphen. */
  DIAGONAL("D", false, false),
  BIAS_BELTED("B", false, false);

  private final String symbol;
  private final boolean radial;
  private final boolean runFlat;

  Structure(String symbol, boolean radial, boolean runFlat) {
    this.symbol = symbol;
    this.radial = radial;
    this.runFlat = runFlat;
  }

  /** As written in a size. */
  public String symbol() {
    return symbol;
  }

  /** Whether the plies run radially. */
  public boolean radial() {
    return radial;
  }

  /** Whether the code itself says run-flat. */
  public boolean runFlat() {
    return runFlat;
  }

  /** Whether the code carries a Z. */
  public boolean z() {
    return this == RADIAL_ZR || this == RUN_FLAT_ZR;
  }

  static Structure ofSymbol(String symbol) {
    for (Structure structure : values()) {
      if (structure.symbol.equals(symbol)) {
        return structure;
      }
    }
    return DIAGONAL;
  }
}
