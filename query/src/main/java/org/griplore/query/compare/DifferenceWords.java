package org.griplore.query.compare;

import java.util.Locale;
import org.griplore.query.answer.Wording;
import org.griplore.query.discipline.Difference;

/** Differences in words: a loss is told as a loss, and each interval by its name. */
final class DifferenceWords {
  /** What an interval that carries the heterogeneity of tests holds for. */
  static final String ANOTHER = "another car, size and day";

  /** What an interval of runs alone holds for. */
  static final String THIS = "this day's sets and car";

  private DifferenceWords() {}

  /** Like {@code 3.1 % better}, {@code 2.0 dB(A) worse} or {@code no different}. */
  static String amount(Difference difference) {
    String size = String.format(Locale.ROOT, "%.1f", Math.abs(difference.difference()));
    return size.matches("[0.]+")
        ? "no different"
        : (size + " " + difference.unit()).strip()
            + (difference.difference() > 0 ? " better" : " worse");
  }

  /** Both intervals by their names, in brackets after a space. */
  static String intervals(Difference difference) {
    String another =
        difference.low() == null
            ? "no interval for " + ANOTHER + ": nothing tells how far tests differ"
            : "95 % interval for " + ANOTHER + ": " + span(difference.low(), difference.high());
    String runs =
        difference.runsLow() == null
            ? ""
            : "; for " + THIS + ": " + span(difference.runsLow(), difference.runsHigh());
    return " (" + another + runs + ")";
  }

  /** Whether it is told from zero: {@code better}, {@code worse} or {@code open}. */
  static String verdict(Difference difference) {
    if (difference.low() != null && difference.low() > 0) {
      return "better";
    }
    return difference.high() != null && difference.high() < 0 ? "worse" : "open";
  }

  private static String span(double low, double high) {
    return Wording.signed(low, 1) + " to " + Wording.signed(high, 1);
  }
}
