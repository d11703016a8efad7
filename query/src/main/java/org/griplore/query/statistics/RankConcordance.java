package org.griplore.query.statistics;

import java.util.SplittableRandom;

/**
 * How far several tests agree on the order of the same models: Friedman's statistic and Kendall's
 * W, corrected for ties (Friedman 1937, J American Statistical Association 32:675; Kendall and
 * Babington Smith 1939, Annals of Mathematical Statistics 10:275).
 *
 * @param tests number of orders, m
 * @param models number of things ordered, n
 * @param rankSums sums of the midranks
 * @param squares S, squared deviations of the rank sums from their mean
 * @param ties T, the sum of t³ - t over groups of t equal values within a test
 * @param ranks the midranks, a row a test
 */
public record RankConcordance(
    int tests, int models, double[] rankSums, double squares, double ties, double[][] ranks) {
  /** Shuffles behind a chance. */
  private static final int SHUFFLES = 9_999;

  /**
   * From values.
   *
   * @param values a row a test, a column a model, none missing; only their order within a row
   *     counts
   * @throws IllegalArgumentException for fewer than two tests or models, rows of different length,
   *     a value that is not finite, or when all values tie in every test
   */
  public static RankConcordance of(double[][] values) {
    Checks.atLeast(values.length, 2, "tests");
    int models = values[0].length;
    Checks.atLeast(models, 2, "models");
    double[][] ranks = new double[values.length][];
    double ties = 0;
    for (int test = 0; test < values.length; test++) {
      double[] row = values[test];
      Checks.sameLength("models in a test", row.length, models);
      ranks[test] = RankCorrelation.midranks(row);
      for (int i = 0; i < models; i++) {
        double equal = 0;
        for (double other : row) {
          equal += other == row[i] ? 1 : 0;
        }
        ties += equal * equal - 1; // t members with t² - 1 each give t³ - t
      }
    }
    double full = (double) values.length * models * ((double) models * models - 1);
    if (ties >= full) {
      throw new IllegalArgumentException("all models tie in every test");
    }
    double[] sums = sums(ranks);
    return new RankConcordance(
        values.length, models, sums, squares(sums, values.length), ties, ranks);
  }

  private static double[] sums(double[][] ranks) {
    double[] sums = new double[ranks[0].length];
    for (double[] row : ranks) {
      for (int i = 0; i < sums.length; i++) {
        sums[i] += row[i];
      }
    }
    return sums;
  }

  private static double squares(double[] sums, int tests) {
    double mean = tests * (sums.length + 1) / 2.0;
    double squares = 0;
    for (double sum : sums) {
      squares += (sum - mean) * (sum - mean);
    }
    return squares;
  }

  /** Kendall's W from 0 (no agreement) to 1: 12 S / (m²(n³ - n) - m T). */
  public double w() {
    double m = tests;
    double n = models;
    return Math.min(1, 12 * squares / (m * m * (n * n * n - n) - m * ties));
  }

  /** Friedman's statistic, m (n - 1) W, about chi-squared with n - 1 degrees of freedom. */
  public double friedman() {
    return tests * (models - 1.0) * w();
  }

  /** P(Friedman's statistic as large by chance), by chi-squared. */
  public double friedmanP() {
    return Tails.chiSquaredAbove(friedman(), models - 1.0);
  }

  /**
   * P(agreement as large by chance) by F with n - 1 and (n - 1)(m - 1) degrees of freedom, better
   * than chi-squared for few tests (Iman and Davenport 1980, Communications in Statistics A 9:571).
   */
  public double fisherP() {
    double w = w();
    return w >= 1
        ? 0
        : Tails.fisherAbove(
            (tests - 1) * w / (1 - w), models - 1.0, (models - 1.0) * (tests - 1.0));
  }

  /**
   * P(agreement as large by chance) by shuffling the ranks of each test, ties as they are, the
   * ranks themselves counted in, so that it is never zero (Phipson and Smyth 2010, Statistical
   * Applications in Genetics and Molecular Biology 9:39). It holds for two tests of three models as
   * well as for many, where the approximations do not.
   */
  public double shuffledP(SplittableRandom random) {
    double[][] shuffled = new double[tests][];
    for (int test = 0; test < tests; test++) {
      shuffled[test] = ranks[test].clone();
    }
    int asLarge = 1;
    for (int shuffle = 0; shuffle < SHUFFLES; shuffle++) {
      for (double[] row : shuffled) {
        shuffle(row, random);
      }
      asLarge += squares(sums(shuffled), tests) >= squares - 1e-9 ? 1 : 0;
    }
    return asLarge / (SHUFFLES + 1.0);
  }

  private static void shuffle(double[] row, SplittableRandom random) {
    for (int i = row.length - 1; i > 0; i--) {
      int other = random.nextInt(i + 1);
      double held = row[i];
      row[i] = row[other];
      row[other] = held;
    }
  }
}
