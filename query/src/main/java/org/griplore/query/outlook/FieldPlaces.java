package org.griplore.query.outlook;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.griplore.query.statistics.Tails;

/**
 * Places that a field of jointly normal results will take.
 *
 * @param expected expected place of each: one and the chances of being beaten by each other, exact
 * @param top share of drawn tests in which each is among the first
 */
record FieldPlaces(double[] expected, double[] top) {
  /** The error of a share is then at most 0.36 points. */
  static final int DRAWS = 20_000;

  static FieldPlaces of(Levels results, int first, long seed) {
    int k = results.mean().length;
    double[] expected = new double[k];
    for (int i = 0; i < k; i++) {
      expected[i] = 1;
      for (int j = 0; j < k; j++) {
        if (j != i) {
          expected[i] += beaten(results, i, j);
        }
      }
    }
    double[] within = new double[k];
    double[][] draws = draws(results, seed);
    for (double[] draw : draws) {
      count(draw, first, within);
    }
    return new FieldPlaces(expected, Arrays.stream(within).map(n -> n / draws.length).toArray());
  }

  /** The chance that i is beaten by j. */
  private static double beaten(Levels results, int i, int j) {
    double[][] c = results.covariance();
    double sd = Math.sqrt(Math.max(0, c[i][i] + c[j][j] - 2 * c[i][j]));
    double lead = results.mean()[i] - results.mean()[j];
    return sd > 0 ? Tails.normalAbove(lead / sd) : lead > 0 ? 0 : lead < 0 ? 1 : 0.5;
  }

  /**
   * Where the places that were taken lie among those of drawn tests: for each of a field the share
   * of drawn places that are better, an equal one counting half.
   */
  static double[] middles(Levels results, int[] places, long seed, int count) {
    double[][] draws = draws(results, seed, count);
    double[] middles = new double[places.length];
    for (double[] draw : draws) {
      for (int i = 0; i < middles.length; i++) {
        int place = 1;
        for (double other : draw) {
          place += other > draw[i] ? 1 : 0;
        }
        middles[i] += (place < places[i] ? 1 : place == places[i] ? 0.5 : 0) / count;
      }
    }
    return middles;
  }

  /** Counts the first of a drawn test. */
  static void count(double[] draw, int first, double[] within) {
    for (int i = 0; i < draw.length; i++) {
      int ahead = 0;
      for (double other : draw) {
        ahead += other > draw[i] ? 1 : 0;
      }
      within[i] += ahead < first ? 1 : 0;
    }
  }

  /**
   * Results of drawn tests, a row a test. The covariance is that of differences, so it lacks a
   * direction; the level given back in it moves all alike and changes no place.
   */
  static double[][] draws(Levels results, long seed) {
    return draws(results, seed, DRAWS);
  }

  /** So many draws, as {@link #draws(Levels, long)}. */
  static double[][] draws(Levels results, long seed, int count) {
    int k = results.mean().length;
    double[][] whole = new double[k][];
    double level = 0;
    for (int i = 0; i < k; i++) {
      level += results.covariance()[i][i] / k;
    }
    for (int i = 0; i < k; i++) {
      whole[i] = results.covariance()[i].clone();
      for (int j = 0; j < k; j++) {
        whole[i][j] += level;
      }
    }
    double[][] factor = ErrorContrasts.cholesky(whole);
    SplittableRandom random = new SplittableRandom(seed);
    double[][] draws = new double[count][k];
    double[] z = new double[k];
    for (double[] draw : draws) {
      for (int i = 0; i < k; i++) {
        z[i] = random.nextGaussian();
      }
      for (int i = 0; i < k; i++) {
        draw[i] = results.mean()[i];
        for (int j = 0; j <= i; j++) {
          draw[i] += factor[i][j] * z[j];
        }
      }
    }
    return draws;
  }
}
