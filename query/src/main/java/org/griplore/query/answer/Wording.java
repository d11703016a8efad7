package org.griplore.query.answer;

import java.util.Locale;

/** Figures as sentences tell them: a true minus sign, zero without a sign. */
public final class Wording {
  private Wording() {}

  /** A difference with its sign, like {@code +1.2} or {@code −0.3}. */
  public static String signed(double value, int decimals) {
    String digits = String.format(Locale.ROOT, "%+." + decimals + "f", value);
    return digits.matches("[+-][0.]+") ? digits.substring(1) : digits.replace('-', '\u2212');
  }

  /** A difference to one decimal with its unit, like {@code −0.3 %}; the unit may be empty. */
  public static String difference(double value, String unit) {
    return (signed(value, 1) + " " + unit).strip();
  }

  /**
   * A 95 % interval of a difference in brackets, a space before them, to follow the difference.
   *
   * @param low null where there is no interval; then nothing is said
   * @param high null with low
   */
  public static String interval(Double low, Double high, int decimals) {
    return low == null
        ? ""
        : " (95 % interval " + signed(low, decimals) + " to " + signed(high, decimals) + ")";
  }

  /** A number of things, like {@code 1 test} or {@code 3 tests}. */
  public static String counted(long number, String thing) {
    return number + " " + thing + (number == 1 ? "" : "s");
  }
}
