package org.griplore.query.ranking;

import java.util.Arrays;

/**
 * How many of several independent events with chances of their own happen (the Poisson-binomial
 * distribution): how often, by chance alone, a model would be among the first k of tests with
 * fields of different size.
 *
 * <p>Events of equal chance make a binomial, and the binomials are convolved. Only products and
 * sums of chances are formed, so nothing cancels: every probability, however far out, is right to
 * some n roundings relative to its own size and never negative. What is below 1e-306 counts as 0.
 *
 * <p>Chen and Liu 1997, Statistica Sinica 7:875 (direct computation and its alternatives).
 */
public final class PoissonBinomial {
  private static final double NOTHING = 1e-306;

  private final double[] probabilities;
  private final double mean;
  private final double variance;

  private PoissonBinomial(double[] probabilities, double[] hit, double[] miss) {
    this.probabilities = probabilities;
    double expected = 0;
    double spread = 0;
    for (int event = 0; event < hit.length; event++) {
      expected += hit[event];
      spread += hit[event] * miss[event];
    }
    this.mean = expected;
    this.variance = spread;
  }

  /**
   * The distribution for these chances.
   *
   * @param chances each from 0 to 1; may be empty
   * @throws IllegalArgumentException when one is not
   */
  public static PoissonBinomial of(double[] chances) {
    double[] miss = complements(chances);
    return new PoissonBinomial(add(chances, miss, chances.length), chances, miss);
  }

  /**
   * The distribution of the number of places among the first {@code top} in tests with these
   * fields, when all entries are alike: each test counts with the chance min(top, field) / field.
   *
   * @throws IllegalArgumentException when a field is empty or {@code top} is below 1
   */
  public static PoissonBinomial ofFields(int[] fields, int top) {
    double[] hit = new double[fields.length];
    double[] miss = new double[fields.length];
    for (int i = 0; i < fields.length; i++) {
      hit[i] = TopShare.chance(fields[i], top);
      miss[i] = (double) (fields[i] - Math.min(top, fields[i])) / fields[i];
    }
    return new PoissonBinomial(add(hit, miss, fields.length), hit, miss);
  }

  /**
   * The probability of at least {@code count} events, without the whole distribution: follows only
   * the events counted below {@code count}, or the misses where those decide, whichever keeps the
   * tail free of cancellation.
   *
   * @throws IllegalArgumentException when a chance is not from 0 to 1
   */
  public static double atLeast(double[] chances, int count) {
    double[] miss = complements(chances);
    if (count <= 0) {
      return 1;
    }
    if (count > chances.length) {
      return 0;
    }
    double mean = 0;
    for (double chance : chances) {
      mean += chance;
    }
    if (count > mean) {
      return Math.min(1, sum(add(miss, chances, chances.length - count)));
    }
    return Math.max(0, 1 - sum(add(chances, miss, count - 1)));
  }

  /** The probability of exactly {@code count} events. */
  public double exactly(int count) {
    return count < 0 || count >= probabilities.length ? 0 : probabilities[count];
  }

  /** The probability of at least {@code count} events. */
  public double atLeast(int count) {
    if (count <= 0) {
      return 1;
    }
    return count > mean ? upper(count) : Math.max(0, 1 - lower(count - 1));
  }

  /** The probability of at most {@code count} events. */
  public double atMost(int count) {
    if (count >= events()) {
      return 1;
    }
    return count < mean ? lower(count) : Math.max(0, 1 - upper(count + 1));
  }

  /** P(more than count) + P(exactly count) / 2, the less conservative tail of a discrete count. */
  public double midAtLeast(int count) {
    return atLeast(count + 1) + exactly(count) / 2;
  }

  /** How many events there are. */
  public int events() {
    return probabilities.length - 1;
  }

  /** The expected number of events, the sum of the chances. */
  public double mean() {
    return mean;
  }

  /** The sum of p(1 - p). */
  public double variance() {
    return variance;
  }

  private double upper(int from) {
    double tail = 0;
    for (int k = probabilities.length - 1; k >= from; k--) {
      tail += probabilities[k];
    }
    return Math.min(1, tail);
  }

  private double lower(int to) {
    double tail = 0;
    for (int k = 0; k <= to; k++) {
      tail += probabilities[k];
    }
    return Math.min(1, tail);
  }

  private static double sum(double[] probabilities) {
    double sum = 0;
    for (double probability : probabilities) {
      sum += probability;
    }
    return sum;
  }

  private static double[] complements(double[] chances) {
    double[] miss = new double[chances.length];
    for (int i = 0; i < chances.length; i++) {
      if (!(chances[i] >= 0 && chances[i] <= 1)) {
        throw new IllegalArgumentException("a chance is from 0 to 1: " + chances[i]);
      }
      miss[i] = 1 - chances[i];
    }
    return miss;
  }

  /**
   * Probabilities of 0 to {@code most} hits. Events of equal chance are binomial and come at once;
   * the rest is convolution, chance after chance in ascending order.
   */
  private static double[] add(double[] hit, double[] miss, int most) {
    double[] sorted = hit.clone();
    Arrays.sort(sorted);
    double[] now = {1};
    for (int from = 0; from < sorted.length; ) {
      int to = from;
      while (to < sorted.length && sorted[to] == sorted[from]) {
        to++;
      }
      double[] equal = binomial(to - from, sorted[from], missOf(sorted[from], hit, miss));
      now = convolve(now, equal, Math.min(most, now.length + equal.length - 2));
      from = to;
    }
    return Arrays.copyOf(now, most + 1);
  }

  private static double missOf(double chance, double[] hit, double[] miss) {
    int event = 0;
    while (hit[event] != chance) {
      event++;
    }
    return miss[event];
  }

  /**
   * From the most likely count outwards by the ratio of neighbours, then over the sum of all: no
   * factorial is formed and nothing cancels.
   */
  private static double[] binomial(int events, double hit, double miss) {
    double[] terms = new double[events + 1];
    if (miss == 0) {
      terms[events] = 1;
      return terms;
    }
    int middle = (int) Math.min(events, Math.floor((events + 1.0) * hit));
    terms[middle] = 1;
    double sum = 1;
    for (int k = middle + 1; k <= events; k++) {
      double term = terms[k - 1] * ((events - k + 1.0) * hit) / (k * miss);
      if (term < NOTHING) {
        break;
      }
      terms[k] = term;
      sum += term;
    }
    for (int k = middle - 1; k >= 0; k--) {
      double term = terms[k + 1] * ((k + 1.0) * miss) / ((events - k) * hit);
      if (term < NOTHING) {
        break;
      }
      terms[k] = term;
      sum += term;
    }
    for (int k = 0; k <= events; k++) {
      terms[k] /= sum;
    }
    return terms;
  }

  /** The first {@code most} + 1 terms of a sum's distribution; products below NOTHING are left. */
  private static double[] convolve(double[] first, double[] second, int most) {
    double[] longer = first.length >= second.length ? first : second;
    double[] shorter = longer == first ? second : first;
    double[] sum = new double[most + 1];
    for (int j = 0; j < Math.min(shorter.length, most + 1); j++) {
      double factor = shorter[j];
      if (factor == 0) {
        continue;
      }
      double least = NOTHING / factor;
      int from = 0;
      int to = Math.min(longer.length, most + 1 - j);
      while (from < to && longer[from] < least) {
        from++;
      }
      while (to > from && longer[to - 1] < least) {
        to--;
      }
      for (int i = from; i < to; i++) {
        sum[i + j] += longer[i] * factor;
      }
    }
    return sum;
  }
}
