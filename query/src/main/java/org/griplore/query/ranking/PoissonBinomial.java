package org.griplore.query.ranking;

/**
 * How many of several independent events with chances of their own happen (the Poisson-binomial
 * distribution), by convolution: exact but for rounding, and never negative, as only products and
 * sums of chances are formed.
 */
public final class PoissonBinomial {
  private final double[] probabilities;

  private PoissonBinomial(double[] probabilities) {
    this.probabilities = probabilities;
  }

  /**
   * The distribution for these chances.
   *
   * @param chances each from 0 to 1
   * @throws IllegalArgumentException when one is not
   */
  public static PoissonBinomial of(double[] chances) {
    double[] probabilities = new double[chances.length + 1];
    probabilities[0] = 1;
    for (int event = 0; event < chances.length; event++) {
      double chance = chances[event];
      if (!(chance >= 0 && chance <= 1)) {
        throw new IllegalArgumentException("a chance is from 0 to 1: " + chance);
      }
      for (int k = event + 1; k > 0; k--) {
        probabilities[k] = probabilities[k] * (1 - chance) + probabilities[k - 1] * chance;
      }
      probabilities[0] *= 1 - chance;
    }
    return new PoissonBinomial(probabilities);
  }

  /** The probability of exactly {@code count} events. */
  public double exactly(int count) {
    return count < 0 || count >= probabilities.length ? 0 : probabilities[count];
  }

  /** The probability of at least {@code count} events, summed from the smallest terms. */
  public double atLeast(int count) {
    if (count <= 0) {
      return 1;
    }
    double tail = 0;
    for (int k = probabilities.length - 1; k >= count; k--) {
      tail += probabilities[k];
    }
    return Math.min(1, tail);
  }

  /** The expected number of events. */
  public double mean() {
    double mean = 0;
    for (int k = 1; k < probabilities.length; k++) {
      mean += k * probabilities[k];
    }
    return mean;
  }
}
