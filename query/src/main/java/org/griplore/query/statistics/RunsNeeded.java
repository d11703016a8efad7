package org.griplore.query.statistics;

import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.special.Erf;

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

  private static final double NOTHING = 1e-18;
  private static final double ACCURACY = 1e-14;
  private static final int STEPS = 200;

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
    // The wrong tail needs Z below -noncentrality, whatever the spread turns out to be.
    double wrong = Tails.normalAbove(noncentrality) < NOTHING ? 0 : t.below(-critical);
    return Math.min(1, t.above(critical) + wrong);
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
    double guess = guess(difference, spread, power);
    if (!(guess < MOST)) {
      throw new IllegalArgumentException("more than %d runs needed".formatted(MOST));
    }
    int runs = (int) Math.max(2, guess);
    if (power(runs, difference, spread) < power) {
      do {
        runs++;
      } while (power(runs, difference, spread) < power);
    } else {
      while (runs > 2 && power(runs - 1, difference, spread) >= power) {
        runs--;
      }
    }
    return runs;
  }

  /** By the normal distribution, with what the t adds for few runs: right to one or two runs. */
  private double guess(double difference, double spread, double power) {
    double z = Tails.normal(1 - significance);
    double ratio = (z + Math.sqrt(2) * Erf.erfInv(2 * power - 1)) * spread / difference;
    return design.samples() * ratio * ratio + z * z / (2 * design.samples());
  }

  /**
   * The difference that so many runs show with this power.
   *
   * @throws IllegalArgumentException as {@link #power} and {@link #runs}
   */
  public double detectable(int runs, double spread, double power) {
    checkPower(power);
    double high = spread;
    while (power(runs, high, spread) < power) {
      high *= 2;
    }
    return new BracketingNthOrderBrentSolver(ACCURACY, ACCURACY * high, 5)
        .solve(STEPS, difference -> power(runs, difference, spread) - power, 0, high);
  }

  private void checkPower(double power) {
    if (!(power > significance && power < 1)) {
      throw new IllegalArgumentException("a power is above the significance and below 1: " + power);
    }
  }
}
