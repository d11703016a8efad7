package org.griplore.store.vocabulary;

import java.util.Optional;

/**
 * The units testers write, each with its exact factor to the SI unit of its dimension. Yard and
 * pound by the international yard and pound agreement of 1959 (0.9144 m; 0.453 592 37 kg, exact);
 * standard gravity 9.806 65 m/s2 (3rd CGPM, 1901, exact).
 */
public enum Unit {
  METRE("m", Dimension.LENGTH, 1),
  KILOMETRE("km", Dimension.LENGTH, 1000),
  FOOT("ft", Dimension.LENGTH, 0.3048),
  YARD("yd", Dimension.LENGTH, 0.9144),
  MILE("mi", Dimension.LENGTH, 1609.344),
  MILLIMETRE("mm", Dimension.LENGTH, 0.001),
  INCH("in", Dimension.LENGTH, 0.0254),
  SECOND("s", Dimension.TIME, 1),
  MINUTE("min", Dimension.TIME, 60),
  METRE_PER_SECOND("m/s", Dimension.SPEED, 1),
  KILOMETRE_PER_HOUR("km/h", Dimension.SPEED, 1 / 3.6),
  MILE_PER_HOUR("mph", Dimension.SPEED, 0.44704),
  METRE_PER_SECOND_SQUARED("m/s2", Dimension.ACCELERATION, 1),
  STANDARD_GRAVITY("g", Dimension.ACCELERATION, 9.80665),
  DECIBEL_A("dB(A)", Dimension.LEVEL, 1),
  NEWTON("N", Dimension.FORCE, 1),
  KILONEWTON("kN", Dimension.FORCE, 1000),
  POUND_FORCE("lbf", Dimension.FORCE, 0.45359237 * 9.80665),
  NEWTON_PER_KILONEWTON("N/kN", Dimension.FORCE_RATIO, 1),
  /** Numerically equal to N/kN: kilogram-force per tonne-force. */
  KILOGRAM_PER_TONNE("kg/t", Dimension.FORCE_RATIO, 1),
  /** The dimensionless coefficient is a thousandth of N/kN. */
  COEFFICIENT("coefficient", Dimension.FORCE_RATIO, 1000),
  KILOGRAM("kg", Dimension.MASS, 1),
  GRAM("gram", Dimension.MASS, 0.001),
  POUND("lb", Dimension.MASS, 0.45359237),
  KILOWATT_HOUR_PER_100_KM("kWh/100 km", Dimension.ENERGY_PER_DISTANCE, 1),
  WATT_HOUR_PER_KILOMETRE("Wh/km", Dimension.ENERGY_PER_DISTANCE, 0.1),
  KILOWATT_HOUR_PER_100_MILES("kWh/100 mi", Dimension.ENERGY_PER_DISTANCE, 1 / 1.609344),
  CELSIUS("\u00b0C", Dimension.TEMPERATURE, 1),
  FAHRENHEIT("\u00b0F", Dimension.TEMPERATURE, 5.0 / 9.0),
  CURRENCY("currency", Dimension.CURRENCY, 1),
  EURO("EUR", Dimension.CURRENCY, 1),
  POUND_STERLING("GBP", Dimension.CURRENCY, 1),
  KRONA("SEK", Dimension.CURRENCY, 1),
  US_DOLLAR("USD", Dimension.CURRENCY, 1),
  SWISS_FRANC("CHF", Dimension.CURRENCY, 1),
  /** Points of a scale from 1 to 10, more is better. */
  POINTS_10("points", Dimension.POINTS, 1),
  /** Points of a scale up to 100, more is better; compared within a table only. */
  POINTS_100("points of 100", Dimension.POINTS, 0.1),
  /** A school mark: 1 is best, and less is better. */
  SCHOOL_MARK("mark (1 best)", Dimension.MARK, 1),
  /** Per cent of the table's best performance: 100 is the best, more is better. */
  PERCENT_OF_BEST("% of best", Dimension.RELATIVE, 1),
  /** Per cent of a reference tyre's performance: more is better. */
  PERCENT_OF_REFERENCE("% of reference", Dimension.RELATIVE, 1),
  NUMBER("", Dimension.NUMBER, 1);

  private final String symbol;
  private final Dimension dimension;
  private final double factor;

  Unit(String symbol, Dimension dimension, double factor) {
    this.symbol = symbol;
    this.dimension = dimension;
    this.factor = factor;
  }

  /** As written in files and answers. */
  public String symbol() {
    return symbol;
  }

  /** The physical kind. */
  public Dimension dimension() {
    return dimension;
  }

  /**
   * A value of this unit in another of the same dimension. Only a factor is applied, except between
   * degrees Celsius and Fahrenheit. Currencies do not convert.
   *
   * @throws IllegalArgumentException when the dimensions differ, or for two different currencies
   */
  public double convert(double value, Unit to) {
    if (this == to) {
      return value;
    }
    if (dimension != to.dimension || !convertible(to)) {
      throw new IllegalArgumentException("no conversion from " + symbol + " to " + to.symbol);
    }
    if (dimension == Dimension.TEMPERATURE) {
      return to == CELSIUS ? (value - 32) * factor : value / to.factor + 32;
    }
    return value * factor / to.factor;
  }

  private boolean convertible(Unit to) {
    return switch (dimension) {
      case CURRENCY -> to == CURRENCY;
      case POINTS, RELATIVE, MARK, NUMBER -> false;
      default -> true;
    };
  }

  /** Whether a value of this unit can be told in another. */
  public boolean convertsTo(Unit to) {
    return this == to || dimension == to.dimension && convertible(to);
  }

  /** The unit whose symbol is exactly this. */
  public static Optional<Unit> ofSymbol(String symbol) {
    for (Unit unit : values()) {
      if (unit.symbol.equals(symbol)) {
        return Optional.of(unit);
      }
    }
    return Optional.empty();
  }
}
