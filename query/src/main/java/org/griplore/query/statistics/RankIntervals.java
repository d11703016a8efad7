package org.griplore.query.statistics;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * Intervals of ranks that hold for all items of a list at once. Two items count as told apart when
 * their difference is larger than q of its standard errors, q the {@code level} quantile of the
 * largest such ratio over all pairs, drawn from the joint distribution of the estimates; the rank
 * of an item lies between one more than the number of those told to be better and the list's length
 * less those told to be worse (Mogstad, Romano, Shaikh and Wilhelm 2024, Review of Economic Studies
 * 91:476). Pairs told apart leave the family, and the rest is looked at again until nothing changes
 * (Romano and Wolf 2005, Econometrica 73:1237).
 */
public final class RankIntervals {
  /** Draws times pairs that are looked at. */
  private static final long WORK = 200_000_000L;

  private static final int MOST_DRAWS = 2_000;
  private static final int FEWEST_DRAWS = 200;

  /** One over the standard deviation of a difference without error. */
  private static final float CERTAIN = 1e30f;

  /** Up to so many pairs each is looked at again after some were told apart. */
  private static final int STEPWISE = 20_000;

  private final int[] low;
  private final int[] high;
  private final double firstIsFirst;

  private RankIntervals(int[] low, int[] high, double firstIsFirst) {
    this.low = low;
    this.high = high;
    this.firstIsFirst = firstIsFirst;
  }

  /** Draws errors of the estimates, each less a common constant that may be anything. */
  @FunctionalInterface
  public interface ErrorDraw {
    /** Fills {@code errors} with one draw whose differences have the stated standard deviations. */
    void next(SplittableRandom random, double[] errors);
  }

  /** Standard deviation of the difference of two estimates. */
  @FunctionalInterface
  public interface PairSpread {
    /** Of the estimates at two positions. */
    double of(int i, int j);
  }

  /**
   * @param values the estimates, plus is better
   * @param spread standard deviation of each difference
   * @param errors draws of all errors together, by the same standard deviations
   * @param df degrees of freedom of the common scale of the errors; infinite when it is known
   * @param level such as 0.95
   * @param random what draws come from
   */
  public static RankIntervals of(
      double[] values,
      PairSpread spread,
      ErrorDraw errors,
      double df,
      double level,
      SplittableRandom random) {
    Checks.finite("estimate", values);
    Checks.level(level);
    int n = values.length;
    long pairs = (long) n * (n - 1) / 2;
    if (pairs == 0) {
      int[] one = new int[n];
      Arrays.fill(one, 1);
      return new RankIntervals(one, one.clone(), 1);
    }
    int draws = (int) Math.max(FEWEST_DRAWS, Math.min(MOST_DRAWS, WORK / pairs));
    Sample sample = new Sample(values, spread, errors, df, draws, random);
    boolean[][] apart = new boolean[n][n];
    boolean changed = true;
    while (changed) {
      changed = sample.tell(apart, sample.quantile(apart, level)) && pairs <= STEPWISE;
    }
    int[] low = new int[n];
    int[] high = new int[n];
    Arrays.fill(low, 1);
    Arrays.fill(high, n);
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        if (apart[Math.max(i, j)][Math.min(i, j)]) {
          if (values[j] > values[i]) {
            low[i]++;
          } else {
            high[i]--;
          }
        }
      }
    }
    return new RankIntervals(low, high, sample.firstIsFirst());
  }

  /** The best rank that an item may have, 1 the best. */
  public int low(int item) {
    return low[item];
  }

  /** The worst rank that an item may have. */
  public int high(int item) {
    return high[item];
  }

  /** The chance that the item with the best estimate is truly the best, 0 to 1. */
  public double firstIsFirst() {
    return firstIsFirst;
  }

  /** Errors drawn once, a row a draw, each in units of the common scale. */
  private static final class Sample {
    private final double[] values;
    private final float[][] inverse;
    private final double[][] drawn;

    Sample(
        double[] values,
        PairSpread spread,
        ErrorDraw errors,
        double df,
        int draws,
        SplittableRandom random) {
      this.values = values;
      int n = values.length;
      inverse = new float[n][];
      IntStream.range(0, n)
          .parallel()
          .forEach(
              i -> {
                inverse[i] = new float[i];
                for (int j = 0; j < i; j++) {
                  double sd = spread.of(i, j);
                  inverse[i][j] = sd > 0 ? (float) Math.min(1 / sd, CERTAIN) : CERTAIN;
                }
              });
      drawn = new double[draws][n];
      SplittableRandom[] streams = new SplittableRandom[draws];
      for (int d = 0; d < draws; d++) {
        streams[d] = random.split();
      }
      IntStream.range(0, draws)
          .parallel()
          .forEach(
              d -> {
                errors.next(streams[d], drawn[d]);
                double scale = scale(df, streams[d]);
                for (int i = 0; i < n; i++) {
                  drawn[d][i] /= scale;
                }
              });
    }

    /** Root of a chi-squared over its degrees of freedom, by its quantile at a random chance. */
    private static double scale(double df, SplittableRandom random) {
      if (Double.isInfinite(df)) {
        return 1;
      }
      double chance = Math.min(1 - 1e-12, Math.max(1e-12, random.nextDouble()));
      return Math.sqrt(Tails.chiSquaredBelow(chance, df) / df);
    }

    /** The quantile of the largest ratio over the pairs not yet told apart. */
    double quantile(boolean[][] apart, double level) {
      double[] largest =
          IntStream.range(0, drawn.length)
              .parallel()
              .mapToDouble(d -> largest(drawn[d], apart))
              .toArray();
      Arrays.sort(largest);
      int at = (int) Math.ceil(level * (largest.length + 1)) - 1;
      return largest[Math.min(largest.length - 1, at)];
    }

    private double largest(double[] errors, boolean[][] apart) {
      float most = 0;
      float[] e = new float[errors.length];
      for (int i = 0; i < e.length; i++) {
        e[i] = (float) errors[i];
      }
      for (int i = 1; i < e.length; i++) {
        float own = e[i];
        float[] row = inverse[i];
        boolean[] told = apart[i];
        for (int j = 0; j < i; j++) {
          float ratio = Math.abs(own - e[j]) * row[j];
          if (ratio > most && !told[j]) {
            most = ratio;
          }
        }
      }
      return most;
    }

    /** Marks pairs whose difference is larger than the quantile; whether any was new. */
    boolean tell(boolean[][] apart, double quantile) {
      boolean any = false;
      for (int i = 1; i < values.length; i++) {
        for (int j = 0; j < i; j++) {
          if (!apart[i][j] && Math.abs(values[i] - values[j]) * inverse[i][j] > quantile) {
            apart[i][j] = true;
            any = true;
          }
        }
      }
      return any;
    }

    double firstIsFirst() {
      int first = 0;
      for (int i = 1; i < values.length; i++) {
        first = values[i] > values[first] ? i : first;
      }
      int its = first;
      long times =
          Arrays.stream(drawn)
              .parallel()
              .filter(
                  errors -> {
                    for (int i = 0; i < values.length; i++) {
                      if (i != its && values[i] + errors[i] > values[its] + errors[its]) {
                        return false;
                      }
                    }
                    return true;
                  })
              .count();
      return (double) times / drawn.length;
    }
  }
}
