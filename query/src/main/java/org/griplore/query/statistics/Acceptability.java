package org.griplore.query.statistics;

import java.util.Arrays;
import java.util.Optional;
import java.util.SplittableRandom;
import org.griplore.query.ranking.Places;
import org.griplore.store.vocabulary.Direction;

/**
 * How often each model takes each place when the weights of the disciplines are drawn at random
 * (stochastic multicriteria acceptability analysis; Lahdelma and Salminen 2001, Operations Research
 * 49:444): how much of the space of opinions supports a placing.
 *
 * <p>Totals are weighted sums of scores, so scores of all disciplines must be on one scale, more
 * being better. Models with equal totals share the better place.
 */
public final class Acceptability {
  private final long[][] counts;
  private final double[][] central;
  private final int draws;

  private Acceptability(long[][] counts, double[][] central, int draws) {
    this.counts = counts;
    this.central = central;
    this.draws = draws;
  }

  /**
   * Where a score is missing (NaN), a draw's weights are taken over the disciplines every model has
   * ({@link #COMMON}), or for each model over those it has ({@link #OWN}), which supposes that it
   * would have done in the rest as it did on average in what it has.
   */
  public enum Missing {
    COMMON,
    OWN
  }

  /**
   * How weights are drawn: from the Dirichlet distribution with these parameters, one a discipline.
   * All 1 is uniform over the simplex; a point of view w held firmly is w times a large number.
   *
   * @param parameters above 0
   */
  public record Weights(double[] parameters) {
    /** Checks the parameters. */
    public Weights {
      Checks.positive("weight", parameters);
    }

    /** All weightings alike. */
    public static Weights uniform(int disciplines) {
      double[] ones = new double[disciplines];
      Arrays.fill(ones, 1);
      return new Weights(ones);
    }

    /**
     * Around a point of view.
     *
     * @param central weights of any scale, above 0
     * @param concentration sum of the parameters: the sd of a weight w is √(w(1 - w) /
     *     (concentration + 1))
     */
    public static Weights around(double[] central, double concentration) {
      Checks.positive("weight", central);
      Checks.positive("concentration", new double[] {concentration});
      double sum = Sums.of(central);
      double[] parameters = new double[central.length];
      for (int i = 0; i < parameters.length; i++) {
        parameters[i] = central[i] / sum * concentration;
      }
      return new Weights(parameters);
    }
  }

  /**
   * Draws weights and ranks.
   *
   * @param scores a row a model, a column a discipline, more is better, NaN where missing
   * @param weights one a discipline
   * @param missing what to do where a score is missing
   * @param draws number of draws
   * @param seed the same seed gives the same answer
   * @throws IllegalArgumentException for no model, rows of different length, a model without any
   *     score, no discipline that all models have under COMMON, or no draws
   */
  public static Acceptability of(
      double[][] scores, Weights weights, Missing missing, int draws, long seed) {
    Checks.atLeast(scores.length, 1, "models");
    Checks.atLeast(draws, 1, "draws");
    int disciplines = weights.parameters.length;
    double[][] used = usable(scores, disciplines, missing);
    long[][] counts = new long[scores.length][scores.length];
    double[][] central = new double[scores.length][disciplines];
    WeightDraw draw = new WeightDraw(weights.parameters, new SplittableRandom(seed));
    double[] weight = new double[disciplines];
    double[] totals = new double[scores.length];
    int[] places = new int[scores.length];
    for (int i = 0; i < draws; i++) {
      draw.into(weight);
      for (int model = 0; model < totals.length; model++) {
        totals[model] = total(used[model], weight);
      }
      Places.rank(totals, totals.length, Direction.HIGH, places);
      for (int model = 0; model < totals.length; model++) {
        counts[model][places[model] - 1]++;
        if (places[model] == 1) {
          for (int d = 0; d < disciplines; d++) {
            central[model][d] += weight[d];
          }
        }
      }
    }
    return new Acceptability(counts, central, draws);
  }

  private static double total(double[] scores, double[] weight) {
    double sum = 0;
    double weights = 0;
    for (int d = 0; d < weight.length; d++) {
      if (!Double.isNaN(scores[d])) {
        sum += weight[d] * scores[d];
        weights += weight[d];
      }
    }
    return sum / weights;
  }

  private static double[][] usable(double[][] scores, int disciplines, Missing missing) {
    double[][] used = new double[scores.length][];
    boolean[] lacking = new boolean[disciplines];
    for (int model = 0; model < scores.length; model++) {
      Checks.sameLength("disciplines", scores[model].length, disciplines);
      used[model] = scores[model].clone();
      for (int d = 0; d < disciplines; d++) {
        lacking[d] |= Double.isNaN(used[model][d]);
        if (Double.isInfinite(used[model][d])) {
          throw new IllegalArgumentException("score %d of model %d".formatted(d + 1, model + 1));
        }
      }
    }
    for (int model = 0; model < scores.length; model++) {
      int left = 0;
      for (int d = 0; d < disciplines; d++) {
        if (missing == Missing.COMMON && lacking[d]) {
          used[model][d] = Double.NaN;
        }
        left += Double.isNaN(used[model][d]) ? 0 : 1;
      }
      if (left == 0) {
        throw new IllegalArgumentException(
            missing == Missing.COMMON
                ? "no discipline has a score of every model"
                : "model %d has no score".formatted(model + 1));
      }
    }
    return used;
  }

  /** The share of weightings that give the model this place, from 1. */
  public double place(int model, int place) {
    return (double) counts[model][place - 1] / draws;
  }

  /** The share of weightings that put the model among the first so many. */
  public double within(int model, int top) {
    long sum = 0;
    for (int place = 0; place < Math.min(top, counts.length); place++) {
      sum += counts[model][place];
    }
    return (double) sum / draws;
  }

  /** Standard error of a share from the number of draws: √(p(1 - p)/draws), at most 1/(2√draws). */
  public double error(double share) {
    return Math.sqrt(Math.max(0, share * (1 - share)) / draws);
  }

  /** The mean of the weightings that put the model first; empty when none did. */
  public Optional<double[]> centralWeights(int model) {
    if (counts[model][0] == 0) {
      return Optional.empty();
    }
    double[] mean = central[model].clone();
    for (int d = 0; d < mean.length; d++) {
      mean[d] /= counts[model][0];
    }
    return Optional.of(mean);
  }

  /** Number of draws. */
  public int draws() {
    return draws;
  }
}
