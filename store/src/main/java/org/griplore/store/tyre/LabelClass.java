package org.griplore.store.tyre;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Label classes for rolling resistance and wet grip. Bounds: Regulation (EC) 1222/2009 annex I as
 * amended by (EU) 1235/2011, and Regulation (EU) 2020/740 annex I, parts A and B.
 */
public final class LabelClass {
  /** The upper bounds of A, B, C ... in N/kN; a bound of 0 marks an empty class. */
  private static final double[][] RESISTANCE_2012 = {
    {6.5, 7.7, 9.0, 0, 10.5, 12.0}, {5.5, 6.7, 8.0, 0, 9.2, 10.5}, {4.0, 5.0, 6.0, 7.0, 8.0}
  };

  private static final double[][] RESISTANCE_2021 = {
    {6.5, 7.7, 9.0, 10.5}, {5.5, 6.7, 8.0, 9.0}, {4.0, 5.0, 6.0, 7.0}
  };

  /** The lower bounds of A, B, C ... of the index G; a bound of 0 marks an empty class. */
  private static final double[][] GRIP_2012 = {
    {1.55, 1.40, 1.25, 0, 1.10}, {1.40, 1.25, 1.10, 0, 0.95}, {1.25, 1.10, 0.95, 0.80, 0.65}
  };

  private static final double[][] GRIP_2021 = {
    {1.55, 1.40, 1.25, 1.10}, {1.40, 1.25, 1.10, 0.95}, {1.25, 1.10, 0.95, 0.80}
  };

  /** The label's index is the test's less this (1235/2011 annex I part B 3; 2020/740 part B 2). */
  private static final double TEST_TO_LABEL = 0.03;

  private LabelClass() {}

  /**
   * The rolling-resistance class. The coefficient is rounded to 0.1 first, as the bounds are given.
   *
   * @param coefficient N/kN, aligned, positive
   */
  public static char ofRollingResistance(double coefficient, TyreClass tyreClass, LabelEra era) {
    double rounded = rounded(coefficient, 1);
    double[] bounds =
        (era == LabelEra.FROM_2012 ? RESISTANCE_2012 : RESISTANCE_2021)[tyreClass.ordinal()];
    for (int i = 0; i < bounds.length; i++) {
      if (rounded <= bounds[i]) {
        return letter(i);
      }
    }
    return letter(bounds.length);
  }

  /**
   * The wet-grip class of a test's index G(T): 0.03 is taken off, then it is rounded to 0.01.
   *
   * @param testIndex G(T) as the test gives it
   */
  public static char ofWetGripTest(double testIndex, TyreClass tyreClass, LabelEra era) {
    return ofWetGripLabel(testIndex - TEST_TO_LABEL, tyreClass, era);
  }

  /**
   * The wet-grip class of a label's index G, rounded to 0.01 first.
   *
   * @param labelIndex G = G(T) - 0.03
   */
  public static char ofWetGripLabel(double labelIndex, TyreClass tyreClass, LabelEra era) {
    double rounded = rounded(labelIndex, 2);
    double[] bounds = (era == LabelEra.FROM_2012 ? GRIP_2012 : GRIP_2021)[tyreClass.ordinal()];
    for (int i = 0; i < bounds.length; i++) {
      if (bounds[i] > 0 && rounded >= bounds[i]) {
        return letter(i);
      }
    }
    return letter(bounds.length);
  }

  /**
   * Half up on the decimal digits as written, so that 6.55 is 6.6 (ISO 80000-1 annex B, rule B).
   */
  private static double rounded(double value, int digits) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("no number: " + value);
    }
    // twelve digits: a sum like 1.58 - 0.03 is meant as 1.55
    return BigDecimal.valueOf(value)
        .setScale(12, RoundingMode.HALF_EVEN)
        .setScale(digits, RoundingMode.HALF_UP)
        .doubleValue();
  }

  private static char letter(int position) {
    return (char) ('A' + position);
  }
}
