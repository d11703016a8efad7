package org.griplore.ingest.reduce;

import org.griplore.ingest.reduce.run.RunPosition;
import org.griplore.store.tyre.TyreClass;

/**
 * Rolling-resistance coefficients (N/kN) from drum benches brought to common conditions: ISO 28580
 * and UN Regulation No. 117 annex 6. Order: temperature, drum, then alignment of the machine.
 */
public final class RollingResistance {
  private static final double REFERENCE_C = 25;
  private static final int LOAD_INDEX_SPLIT = 121;

  private RollingResistance() {}

  /**
   * At 25 degrees Celsius: C [1 + K (t - 25)], K = 0.008 for C1, 0.010 for C2 and C3 up to load
   * index 121, 0.006 above (from memory, check the official text). Measured warm, a tyre rolls too
   * easily, and is corrected up.
   *
   * @param ambientC ambient temperature, degrees Celsius; see {@link #isWithinConditions}
   */
  public static double at25(double coefficient, double ambientC, TyreClass of, int loadIndex) {
    RunPosition.positive(coefficient, "coefficient", "rolling resistance");
    RunPosition.finite(ambientC, "ambient temperature", "rolling resistance");
    double perDegree = of == TyreClass.C1 ? 0.008 : loadIndex <= LOAD_INDEX_SPLIT ? 0.010 : 0.006;
    return coefficient * (1 + perDegree * (ambientC - REFERENCE_C));
  }

  /** Whether an ambient temperature is one of the method's, 20 to 30 (from memory, as above). */
  public static boolean isWithinConditions(double ambientC) {
    return ambientC >= 20 && ambientC <= 30;
  }

  /**
   * Factor from one drum to another, sqrt[(R1 / R2) (R2 + r) / (R1 + r)] with R the drums' radii
   * and r half the nominal design diameter of the tyre (from memory, check the official text).
   *
   * @param drumM diameter of the drum used, m
   * @param wantedM diameter of the drum wanted, m
   * @param tyreM nominal design diameter of the tyre, m
   */
  public static double drumFactor(double drumM, double wantedM, double tyreM) {
    double from = RunPosition.positive(drumM, "drum diameter", "rolling resistance") / 2;
    double to = RunPosition.positive(wantedM, "drum diameter", "rolling resistance") / 2;
    double tyre = RunPosition.positive(tyreM, "tyre diameter", "rolling resistance") / 2;
    return Math.sqrt(from / to * (to + tyre) / (from + tyre));
  }

  /**
   * A machine's alignment, RRC = A RRC_m + B (1222/2009 annex IVa 6, 2020/740 annex V, read in
   * source). The measured value is already at 25 degrees Celsius and on the wanted drum.
   *
   * @param slope A
   * @param offset B, N/kN
   */
  public record Alignment(double slope, double offset) {
    /** Checks the slope. */
    public Alignment {
      RunPosition.positive(slope, "slope", "machine alignment");
      RunPosition.finite(offset, "offset", "machine alignment");
    }

    /** The aligned value. */
    public double apply(double coefficient) {
      return slope * RunPosition.positive(coefficient, "coefficient", "machine alignment") + offset;
    }

    /**
     * Through a second machine: this one's aligned values are the second's measured ones. Candidate
     * laboratory then reference laboratory: (A1 A2) and (A1 B2 + B1).
     */
    public Alignment then(Alignment second) {
      return new Alignment(second.slope * slope, second.slope * offset + second.offset);
    }
  }

  /**
   * How often a machine of this repeatability has to measure: once up to 0.075 N/kN (C3: 0.06),
   * else 1 + (sigma / gamma)^2 rounded up, gamma = 0.043 (C3: 0.035) (2020/740 annex V 5, read in
   * source).
   *
   * @param deviation the machine's standard deviation, N/kN
   */
  public static int measurements(double deviation, TyreClass of) {
    RunPosition.notNegative(deviation, "standard deviation", "machine repeatability");
    boolean truck = of == TyreClass.C3;
    if (deviation <= (truck ? 0.06 : 0.075)) {
      return 1;
    }
    double ratio = deviation / (truck ? 0.035 : 0.043);
    return (int) Math.ceil(1 + ratio * ratio - 1e-9);
  }
}
