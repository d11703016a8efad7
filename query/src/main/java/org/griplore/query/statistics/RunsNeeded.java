package org.griplore.query.statistics;

/**
 * How many runs it takes to see a difference: the power of the two-sided t test by the noncentral
 * t, both tails counted. A difference and a spread are in the same unit; for ratio disciplines both
 * are natural logs, where a coefficient of variation c is a spread of √ln(1 + c²), nearly c.
 *
 * @param design what is compared with what
 * @param significance two-sided chance of seeing a difference that is not there, such as 0.05
 */
public record RunsNeeded(Design design, double significance) {
  /** More runs than any day has; asked for more, the question is refused. */
  public static final int MOST = 1_000_000;

  /** What is compared with what. */
  public enum Design {
    /** Two tyres with n runs each: standard error s √(2/n), 2(n - 1) degrees of freedom. */
    TWO_SAMPLES,
    /** n differences, run by run, s their spread: standard error s/√n, n - 1 degrees of freedom. */
    PAIRED,
    /** One tyre against a known value: as paired, s the spread of its runs. */
    ONE_SAMPLE;

    private int samples() {
      return this == TWO_SAMPLES ? 2 : 1;
    }
  }

  /** Checks the significance. */
  public RunsNeeded {
    Checks.level(significance);
  }

  /**
   * The chance of seeing a difference of this size.
   *
   * @param runs per tyre, 2 or more; need not be whole
   * @param difference either sign
   * @param spread standard deviation, above 0
   * @throws IllegalArgumentException otherwise
   */
  public double power(double runs, double difference, double spread) {
    if (!(runs > 1) || !(spread > 0 && Double.isFinite(spread)) || !Double.isFinite(difference)) {
      throw new IllegalArgumentException(
          "%s runs, difference %s, spread %s".formatted(runs, difference, spread));
    }
    double df = Math.max(1, design.samples() * (runs - 1));
    double critical = Tails.student(1 - significance, df);
    double noncentrality = Math.sqrt(runs / design.samples()) * Math.abs(difference) / spread;
    NoncentralT t = new NoncentralT(df, noncentrality);
    return Math.min(1, t.above(critical) + t.below(-critical));
  }

  /**
   * The fewest runs per tyre with at least this power.
   *
   * @throws IllegalArgumentException for a difference of 0, a power not above the significance and
   *     below 1, or when more than {@link #MOST} runs would be needed
   */
  public int runs(double difference, double spread, double power) {
    checkPower(power);
    if (difference == 0) {
      throw new IllegalArgumentException("no number of runs shows a difference of 0");
    }
    int enough = 2;
    while (power(enough, difference, spread) < power) {
      if (enough >= MOST) {
        throw new IllegalArgumentException("more than %d runs needed".formatted(MOST));
      }
      enough = Math.min(MOST, 2 * enough);
    }
    int few = enough == 2 ? 2 : enough / 2;
    while (few < enough) {
      int middle = (few + enough) / 2;
      if (power(middle, difference, spread) < power) {
        few = middle + 1;
      } else {
        enough = middle;
      }
    }
    return enough;
  }

  /**
   * The difference that so many runs show with this power.
   *
   * @throws IllegalArgumentException as {@link #power} and {@link #runs}
   */
  public double detectable(int runs, double spread, double power) {
    checkPower(power);
    double low = 0;
    double high = spread;
    while (power(runs, high, spread) < power) {
      low = high;
      high *= 2;
    }
    while (high - low > 4 * Math.ulp(high)) {
      double middle = (low + high) / 2;
      if (power(runs, middle, spread) < power) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return high;
  }

  private void checkPower(double power) {
    if (!(power > significance && power < 1)) {
      throw new IllegalArgumentException("a power is above the significance and below 1: " + power);
    }
  }
}
