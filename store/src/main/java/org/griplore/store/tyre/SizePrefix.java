package org.griplore.store.tyre;

/** What stands before the section width (for light trucks also after the rim). */
public enum SizePrefix {
  /** Metric by ISO 4000-1 and ETRTO: nothing stands there. */
  METRIC(""),
  /** Passenger car, United States. */
  PASSENGER("P"),
  LIGHT_TRUCK("LT"),
  /** Temporary spare. */
  TEMPORARY("T"),
  /** High load: above extra load at the same size. */
  HIGH_LOAD("HL");

  private final String symbol;

  SizePrefix(String symbol) {
    this.symbol = symbol;
  }

  /** As written in a size. */
  public String symbol() {
    return symbol;
  }

  /**
   * Whether tyres with this prefix are another kind of tyre than a car tyre of the same figures.
   */
  public boolean anotherKind() {
    return this == LIGHT_TRUCK || this == TEMPORARY;
  }

  static SizePrefix ofSymbol(String symbol) {
    for (SizePrefix prefix : values()) {
      if (prefix.symbol.equals(symbol)) {
        return prefix;
      }
    }
    throw new IllegalArgumentException("no size prefix " + symbol);
  }
}
