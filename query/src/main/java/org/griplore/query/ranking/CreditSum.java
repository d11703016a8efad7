package org.griplore.query.ranking;

import java.util.List;

/**
 * The chance that credits from several tests add up to at least so much when all entries are alike,
 * ties as they are: each test gives one, a share or nothing with the probabilities of its {@link
 * TestCredit}. Exact: tests without shared credit are a {@link PoissonBinomial}, the others are
 * convolved on the lattice of their common denominator.
 *
 * <p>Where that denominator is too fine for the number of tests, every share, what was seen and
 * what chance can give alike, is rounded to a coarser lattice; the probability is then exact for
 * the rounded credits.
 */
public final class CreditSum {
  /** Cells of a lattice: its steps times the tests on it. */
  private static final int MOST_CELLS = 60_000;

  /** Has 2 to 8 as divisors. */
  private static final int FINE = 840;

  private static final int COARSE = 12;

  private CreditSum() {}

  /**
   * The probability of at least what was seen.
   *
   * @param tests the tests
   * @param seen the credit seen in each, one of those that the test can give
   */
  public static double atLeast(List<TestCredit> tests, double[] seen) {
    int shared = (int) tests.stream().filter(TestCredit::isShared).count();
    double[] chances = new double[tests.size() - shared];
    int unit = unit(tests, shared);
    double[] lattice = new double[unit * shared + 1];
    lattice[0] = 1;
    int reach = 0;
    int plain = 0;
    int whole = 0;
    int units = 0;
    for (int i = 0; i < tests.size(); i++) {
      TestCredit test = tests.get(i);
      if (test.isShared()) {
        reach = add(lattice, reach, test, unit);
        units += (int) Math.round(unit * seen[i]);
      } else {
        chances[plain++] = (double) test.whole() / test.field();
        whole += (int) Math.round(seen[i]);
      }
    }
    return shared == 0
        ? PoissonBinomial.atLeast(chances, whole)
        : tail(PoissonBinomial.of(chances), lattice, unit, whole * unit + units);
  }

  private static int unit(List<TestCredit> tests, int shared) {
    int most = Math.max(COARSE, Math.min(FINE, MOST_CELLS / Math.max(1, shared)));
    long unit = 1;
    for (TestCredit test : tests) {
      for (int sharers : test.sharers()) {
        unit = unit / gcd(unit, sharers) * sharers;
        if (unit * shared > MOST_CELLS) {
          return most;
        }
      }
    }
    return (int) unit;
  }

  private static long gcd(long a, long b) {
    return b == 0 ? a : gcd(b, a % b);
  }

  /** One more test, in place from above; gives how far the sums can now reach. */
  private static int add(double[] lattice, int reach, TestCredit test, int unit) {
    double one = (double) test.whole() / test.field();
    int ties = test.open().length;
    double none = 1 - one;
    double[] chance = new double[ties];
    int[] step = new int[ties];
    for (int k = 0; k < ties; k++) {
      chance[k] = (double) test.sharers()[k] / test.field();
      step[k] = (int) Math.round((double) unit * test.open()[k] / test.sharers()[k]);
      none -= chance[k];
    }
    none = Math.max(0, none);
    for (int at = reach + unit; at >= 0; at--) {
      double sum = at <= reach ? none * lattice[at] : 0;
      if (at >= unit && one > 0) {
        sum += one * lattice[at - unit];
      }
      for (int k = 0; k < ties; k++) {
        if (at >= step[k]) {
          sum += chance[k] * (at - step[k] <= reach ? lattice[at - step[k]] : 0);
        }
      }
      lattice[at] = sum;
    }
    return reach + unit;
  }

  private static double tail(PoissonBinomial plain, double[] lattice, int unit, int seen) {
    double[] above = new double[lattice.length + 1];
    for (int at = lattice.length - 1; at >= 0; at--) {
      above[at] = above[at + 1] + lattice[at];
    }
    double sum = 0;
    for (int k = 0; k <= plain.events(); k++) {
      int rest = Math.max(0, seen - k * unit);
      sum += rest < above.length ? plain.exactly(k) * above[rest] : 0;
    }
    return Math.min(1, sum);
  }
}
