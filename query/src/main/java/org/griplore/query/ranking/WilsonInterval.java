package org.griplore.query.ranking;

/**
 * The score interval of a share (Wilson 1927; recommended by Newcombe 1998, Stat Med 17:857), which
 * stays within 0 and 1 and is of use for few tests.
 *
 * @param low lower end
 * @param high upper end
 */
public record WilsonInterval(double low, double high) {
  /**
   * The interval of {@code successes} out of {@code trials}:
   *
   * <p>(p + z²/2n ± z √(p(1-p)/n + z²/4n²)) / (1 + z²/n)
   *
   * <p>The ends are exactly 0 for none and 1 for all.
   *
   * @param level confidence level between 0 and 1
   * @throws IllegalArgumentException when there are no trials, or more successes than trials
   */
  public static WilsonInterval of(int successes, int trials, double level) {
    return of((double) successes, trials, level);
  }

  /** The same where tests can count in part: the sum of the credits stands for the successes. */
  public static WilsonInterval of(double successes, int trials, double level) {
    ShareLevel.check(successes, trials, level);
    double z = ShareLevel.normal(level);
    double n = trials;
    double p = successes / n;
    double z2 = z * z;
    double middle = (p + z2 / (2 * n)) / (1 + z2 / n);
    double half = z / (1 + z2 / n) * Math.sqrt(p * (1 - p) / n + z2 / (4 * n * n));
    double low = successes == 0 ? 0 : Math.max(0, middle - half);
    double high = successes == trials ? 1 : Math.min(1, middle + half);
    return new WilsonInterval(low, high);
  }
}
