package org.griplore.query.statistics;

import static org.assertj.core.api.Assertions.assertThat;

/** How near a figure must come to one from outside. */
public final class Closeness {
  private Closeness() {}

  /** Relative to the expected size; absolute where that is 0. */
  public static void assertRelative(String what, double actual, double expected, double tolerance) {
    double error = Math.abs(actual - expected) / (expected == 0 ? 1 : Math.abs(expected));
    assertThat(error)
        .as("%s: %s against %s, relative error", what, actual, expected)
        .isLessThanOrEqualTo(tolerance);
  }

  /** Equal to a printed figure when rounded to its decimals. */
  public static void assertPrinted(String what, double actual, double printed, int decimals) {
    assertThat(Math.abs(actual - printed))
        .as("%s: %s against %s, printed to %d decimals", what, actual, printed, decimals)
        .isLessThanOrEqualTo(0.5 * Math.pow(10, -decimals) * (1 + 1e-9));
  }

  /** Right to so many significant digits, by the log relative error of the NIST data sets. */
  public static void assertDigits(String what, double actual, double certified, double digits) {
    double error =
        certified == 0 ? Math.abs(actual) : Math.abs(actual - certified) / Math.abs(certified);
    double right = error == 0 ? 15 : Math.min(15, -Math.log10(error));
    assertThat(right)
        .as("%s: %s against certified %s, digits right", what, actual, certified)
        .isGreaterThanOrEqualTo(digits);
  }
}
