package org.griplore.query.ranking;

/**
 * The equal-tailed interval of a share from Jeffreys' prior, Beta(x + ½, n - x + ½), with the ends
 * set to 0 for none and to 1 for all (Brown, Cai and DasGupta 2001, Statistical Science 16:101).
 * Reads as a probability of the share, where the Wilson interval reads as coverage over
 * repetitions.
 *
 * @param low lower end
 * @param high upper end
 */
public record JeffreysInterval(double low, double high) {
  /**
   * The interval of {@code successes} out of {@code trials}.
   *
   * @param level probability between 0 and 1
   * @throws IllegalArgumentException when there are no trials, or more successes than trials
   */
  public static JeffreysInterval of(int successes, int trials, double level) {
    ShareLevel.check(successes, trials, level);
    double alpha = successes + 0.5;
    double beta = trials - successes + 0.5;
    double low = successes == 0 ? 0 : ShareLevel.beta(alpha, beta, (1 - level) / 2);
    double high = successes == trials ? 1 : ShareLevel.beta(alpha, beta, (1 + level) / 2);
    return new JeffreysInterval(low, high);
  }
}
