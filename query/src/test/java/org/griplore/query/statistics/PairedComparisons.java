package org.griplore.query.statistics;

import java.util.Arrays;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;

/**
 * Strengths from paired comparisons without ties, with an advantage of the first named (the home
 * side, the tyre run first, the sponsor's own): the Bradley-Terry model as a logistic regression
 * (Bradley and Terry 1952, Biometrika 39:324; Agresti 2002, Categorical Data Analysis, section
 * 10.6).
 *
 * @param strengths log worths, that of the last model 0
 * @param ses their standard errors, that of the last 0
 * @param advantage log odds that the first named gains; 0 when not asked for
 * @param advantageSe its standard error; 0 when not asked for
 * @param deviance twice the log likelihood lost against a model with a chance for each pair
 */
public record PairedComparisons(
    double[] strengths, double[] ses, double advantage, double advantageSe, double deviance) {
  private static final int STEPS = 100;
  private static final double FAR = 15;

  /**
   * How often each pair met, in this order of naming.
   *
   * @param first numbers of the first named
   * @param second numbers of the second named
   * @param firstWins how often the first was better
   * @param secondWins how often the second was
   */
  public record Pairs(int[] first, int[] second, double[] firstWins, double[] secondWins) {
    /** Checks the lengths. */
    public Pairs {
      Checks.sameLength("pairs", first.length, second.length);
      Checks.sameLength("pairs and wins", first.length, firstWins.length);
      Checks.sameLength("pairs and wins", first.length, secondWins.length);
    }
  }

  /**
   * Fits strengths by Newton steps.
   *
   * @param models how many, numbered from 0
   * @param withAdvantage whether the first named may have an advantage
   * @throws IllegalArgumentException for fewer than two models, or when a strength has no finite
   *     estimate (models that never met, or always or never won)
   */
  public static PairedComparisons fit(int models, Pairs pairs, boolean withAdvantage) {
    Checks.atLeast(models, 2, "models");
    int size = models - 1 + (withAdvantage ? 1 : 0);
    double[] at = new double[models + 1];
    DMatrixRMaj information = new DMatrixRMaj(size, size);
    for (int step = 0; step < STEPS; step++) {
      DMatrixRMaj slope = new DMatrixRMaj(size, 1);
      information.zero();
      for (int pair = 0; pair < pairs.first.length; pair++) {
        double games = pairs.firstWins[pair] + pairs.secondWins[pair];
        double chance = chance(pairs, pair, at, models);
        int[] index = {pairs.first[pair], pairs.second[pair], withAdvantage ? size - 1 : -1};
        double[] sign = {1, -1, 1};
        for (int a = 0; a < 3; a++) {
          if (absent(index[a], a, models)) {
            continue;
          }
          slope.add(index[a], 0, sign[a] * (pairs.firstWins[pair] - games * chance));
          for (int b = 0; b < 3; b++) {
            if (!absent(index[b], b, models)) {
              information.add(
                  index[a], index[b], sign[a] * sign[b] * games * chance * (1 - chance));
            }
          }
        }
      }
      boolean solvable = CommonOps_DDRM.invert(information);
      DMatrixRMaj move = new DMatrixRMaj(size, 1);
      CommonOps_DDRM.mult(information, slope, move);
      for (int i = 0; i < size; i++) {
        at[withAdvantage && i == size - 1 ? models : i] += move.get(i);
      }
      if (!solvable || Arrays.stream(at).anyMatch(value -> !(Math.abs(value) < FAR))) {
        throw new IllegalArgumentException("a strength has no finite estimate");
      }
      if (CommonOps_DDRM.elementMaxAbs(move) < 1e-12) {
        return result(models, pairs, at, information, withAdvantage);
      }
    }
    throw new IllegalArgumentException("a strength has no finite estimate");
  }

  private static boolean absent(int index, int role, int models) {
    return index < 0 || role < 2 && index == models - 1;
  }

  private static double chance(Pairs pairs, int pair, double[] at, int models) {
    double log = at[pairs.first[pair]] - at[pairs.second[pair]] + at[models];
    return 1 / (1 + Math.exp(-log));
  }

  private static PairedComparisons result(
      int models, Pairs pairs, double[] at, DMatrixRMaj covariance, boolean withAdvantage) {
    double[] ses = new double[models];
    for (int i = 0; i < models - 1; i++) {
      ses[i] = Math.sqrt(covariance.get(i, i));
    }
    double advantageSe = withAdvantage ? Math.sqrt(covariance.get(models - 1, models - 1)) : 0;
    double deviance = 0;
    for (int pair = 0; pair < pairs.first.length; pair++) {
      double games = pairs.firstWins[pair] + pairs.secondWins[pair];
      double chance = chance(pairs, pair, at, models);
      deviance += lost(pairs.firstWins[pair], games * chance);
      deviance += lost(pairs.secondWins[pair], games * (1 - chance));
    }
    return new PairedComparisons(
        Arrays.copyOf(at, models), ses, at[models], advantageSe, 2 * deviance);
  }

  private static double lost(double wins, double expected) {
    return wins == 0 ? 0 : wins * Math.log(wins / expected);
  }
}
