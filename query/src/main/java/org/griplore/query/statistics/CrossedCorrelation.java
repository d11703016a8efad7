package org.griplore.query.statistics;

import java.util.Arrays;
import java.util.Optional;

/**
 * The correlation of two disciplines inside tests when models return: both are centred on the mean
 * of their test, as in {@link WithinGroupCorrelation}, but results of one model in several tests
 * are not taken as separate evidence, for what the model is it is in each of them.
 *
 * <p>With zx and zy the centred values over their root mean squares, each result's share in the
 * error of r is u = zx zy - r (zx² + zy²)/2. Its sums over models and over tests make the variance:
 * that between models plus that between tests less that of single results (Cameron, Gelbach and
 * Miller 2011, J Business and Economic Statistics 29:238), never less than that between models or
 * than that of results without a model in common. On Fisher's scale, z = atanh r, the interval is
 * Student's with the degrees of freedom of the models: with w the root of a model's sums of squares
 * in both, (Σw²)²/Σw⁴ - 1 (Satterthwaite), so that a few models that are in every test do not count
 * as many.
 *
 * @param r correlation of the centred values
 * @param se standard error of atanh r
 * @param df degrees of freedom of its t
 * @param groups tests with two or more values
 * @param models models in those tests
 * @param count values in those tests
 */
public record CrossedCorrelation(
    double r, double se, double df, int groups, int models, int count) {
  /** Fewer models say nothing of how models differ. */
  public static final int FEWEST = 4;

  /**
   * From values in tests.
   *
   * @param group a number from 0 for the test of each value
   * @param model a number from 0 for the model of each value
   * @return empty where {@link WithinGroupCorrelation} is, for fewer than {@link #FEWEST} models,
   *     and for values on one line
   * @throws IllegalArgumentException when the lengths differ or a value is not finite
   */
  public static Optional<CrossedCorrelation> of(int[] group, int[] model, double[] x, double[] y) {
    Checks.sameLength("groups and models", group.length, model.length);
    Optional<WithinGroupCorrelation> within = WithinGroupCorrelation.of(group, x, y);
    if (within.isEmpty() || Math.abs(within.get().r()) == 1 || within.get().df() < 2) {
      return Optional.empty();
    }
    WithinGroupCorrelation plain = within.get();
    double[] zx = standardised(group, x);
    double[] zy = standardised(group, y);
    double r = plain.r();
    Moments moments = new Moments(group, model);
    for (int i = 0; i < x.length; i++) {
      moments.add(i, zx[i], zy[i], r);
    }
    int models = moments.models();
    if (models < FEWEST) {
      return Optional.empty();
    }
    double n = plain.count();
    double variance = moments.variance(models, plain.groups()) / (n * plain.df());
    double slope = 1 - r * r;
    double se = Math.max(Math.sqrt(variance) / slope, 1 / Math.sqrt(plain.df() - 1.0));
    double df = Math.min(Math.max(1, moments.effectiveModels() - 1), plain.df());
    return Optional.of(new CrossedCorrelation(r, se, df, plain.groups(), models, plain.count()));
  }

  /** Two-sided probability of a correlation as large by chance. */
  public double p() {
    return Tails.studentTwoSided(atanh(r) / se, df);
  }

  /** The interval, back from Fisher's scale. */
  public Interval interval(double level) {
    double half = Tails.student(level, df) * se;
    return new Interval(Math.tanh(atanh(r) - half), Math.tanh(atanh(r) + half));
  }

  private static double atanh(double r) {
    return 0.5 * (Math.log1p(r) - Math.log1p(-r));
  }

  /** Centred by group, with a mean square of one over the groups of two or more; others are 0. */
  private static double[] standardised(int[] group, double[] values) {
    int most = Arrays.stream(group).max().orElse(-1) + 1;
    int[] size = new int[most];
    double[] mean = new double[most];
    for (int i = 0; i < values.length; i++) {
      size[group[i]]++;
      mean[group[i]] += (values[i] - mean[group[i]]) / size[group[i]];
    }
    double[] centred = new double[values.length];
    double squares = 0;
    int count = 0;
    for (int i = 0; i < values.length; i++) {
      if (size[group[i]] > 1) {
        centred[i] = values[i] - mean[group[i]];
        squares += centred[i] * centred[i];
        count++;
      }
    }
    double root = Math.sqrt(squares / count);
    return Arrays.stream(centred).map(value -> value / root).toArray();
  }

  /** Sums of the shares in the error by model, by test and by result. */
  private static final class Moments {
    private final int[] group;
    private final int[] model;
    private final double[] byGroup;
    private final double[] byModel;
    private final double[] xx;
    private final double[] yy;
    private double single;

    Moments(int[] group, int[] model) {
      this.group = group;
      this.model = model;
      this.byGroup = new double[Arrays.stream(group).max().orElse(-1) + 1];
      int models = Arrays.stream(model).max().orElse(-1) + 1;
      this.byModel = new double[models];
      this.xx = new double[models];
      this.yy = new double[models];
    }

    void add(int i, double x, double y, double r) {
      double share = x * y - r / 2 * (x * x + y * y);
      byGroup[group[i]] += share;
      byModel[model[i]] += share;
      xx[model[i]] += x * x;
      yy[model[i]] += y * y;
      single += share * share;
    }

    int models() {
      int models = 0;
      for (int m = 0; m < xx.length; m++) {
        models += xx[m] > 0 || yy[m] > 0 ? 1 : 0;
      }
      return models;
    }

    double variance(int models, int groups) {
      double between = squares(byModel) * models / (models - 1.0);
      double tests = groups > 1 ? squares(byGroup) * groups / (groups - 1.0) : single;
      return Math.max(between, between + tests - single);
    }

    double effectiveModels() {
      double sum = 0;
      double squares = 0;
      for (int m = 0; m < xx.length; m++) {
        double scale = xx[m] * yy[m];
        sum += scale;
        squares += scale * scale;
      }
      return squares > 0 ? sum * sum / squares : 1;
    }

    private static double squares(double[] sums) {
      return Arrays.stream(sums).map(s -> s * s).sum();
    }
  }
}
