package org.griplore.query.ranking;

/**
 * The exact interval of a share (Clopper and Pearson 1934, Biometrika 26:404): never covers less
 * than its level, at the price of being wide for few tests.
 *
 * @param low lower end
 * @param high upper end
 */
public record ClopperPearsonInterval(double low, double high) {
  /**
   * The interval of {@code successes} out of {@code trials}, from the quantiles of Beta(x, n - x +
   * 1) and Beta(x + 1, n - x).
   *
   * @param level confidence level between 0 and 1
   * @throws IllegalArgumentException when there are no trials, or more successes than trials
   */
  public static ClopperPearsonInterval of(int successes, int trials, double level) {
    ShareLevel.check(successes, trials, level);
    int failures = trials - successes;
    double low = successes == 0 ? 0 : ShareLevel.beta(successes, failures + 1.0, (1 - level) / 2);
    double high = failures == 0 ? 1 : ShareLevel.beta(successes + 1.0, failures, (1 + level) / 2);
    return new ClopperPearsonInterval(low, high);
  }
}
