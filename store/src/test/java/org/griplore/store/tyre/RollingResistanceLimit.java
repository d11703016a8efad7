package org.griplore.store.tyre;

/**
 * Approval limits of the rolling resistance coefficient, Regulation (EC) 661/2009, annex II part B.
 */
public enum RollingResistanceLimit {
  STAGE_1(12.0, 10.5, 8.0),
  STAGE_2(10.5, 9.0, 6.5);

  /**
   * What a verified coefficient may exceed the upper bound of its label class by, N/kN: Regulation
   * (EC) 1222/2009, annex IV table 1; Regulation (EU) 2020/740, annex VI.
   */
  public static final double LABEL_TOLERANCE = 0.3;

  private final double c1;
  private final double c2;
  private final double c3;

  RollingResistanceLimit(double c1, double c2, double c3) {
    this.c1 = c1;
    this.c2 = c2;
    this.c3 = c3;
  }

  /** The highest coefficient allowed, N/kN (kg/t). */
  public double of(TyreClass tyreClass) {
    return switch (tyreClass) {
      case C1 -> c1;
      case C2 -> c2;
      case C3 -> c3;
    };
  }
}
