package org.griplore.query.statistics;

import java.util.Arrays;
import java.util.Optional;

/**
 * Weighted linear regression with an intercept, its errors taken as related within clusters (the
 * results of one test) and unrelated between them.
 *
 * <p>Columns are centred and scaled, then solved by Householder QR, so that years and millimetres
 * beside each other cost no digits. Three standard errors are given; see {@link Errors}.
 */
public final class ClusteredRegression {
  /** A column whose distance from the span of those before it is below this share of its length. */
  private static final double DEPENDENT = 1e-11;

  /** Which standard errors. */
  public enum Errors {
    /** Independent errors of variance s²/weight; t with N - k degrees of freedom. */
    CLASSICAL,
    /**
     * Sandwich times G/(G - 1) · (N - 1)/(N - k), t with G - 1 degrees of freedom (Liang and Zeger
     * 1986, Biometrika 73:13): too small for few clusters, or few that carry the contrast.
     */
    CLUSTERED,
    /**
     * Bias-reduced sandwich (CR2) with Satterthwaite degrees of freedom (Bell and McCaffrey 2002,
     * Survey Methodology 28:169; Pustejovsky and Tipton 2018, J Business and Economic Statistics
     * 36:672): the one to use.
     */
    REDUCED_BIAS
  }

  /**
   * A coefficient, or a sum of coefficients.
   *
   * @param value estimate
   * @param se standard error
   * @param df degrees of freedom of its t
   */
  public record Estimate(double value, double se, double df) {
    /** Two-sided probability of a value as far from 0 by chance; empty when the error is 0. */
    public Optional<Double> p() {
      return se > 0 ? Optional.of(Tails.studentTwoSided(value / se, df)) : Optional.empty();
    }

    /** The t interval. */
    public Interval interval(double level) {
      return Interval.around(value, Tails.student(level, df) * se);
    }
  }

  private final CentredDesign design;
  private final double[] solution;
  private final double[] residuals;
  private final int[] cluster;
  private final int clusters;
  private final double squares;
  private final double totalSquares;

  private ClusteredRegression(CentredDesign design, double[] y, int[] cluster, int clusters) {
    this.design = design;
    this.cluster = cluster;
    this.clusters = clusters;
    double[] weighted = design.weighted(y);
    this.solution = design.qr().solve(weighted);
    this.residuals = design.qr().residuals(weighted);
    Sums sum = new Sums();
    double largest = 0;
    for (int i = 0; i < weighted.length; i++) {
      sum.add(residuals[i] * residuals[i]);
      largest = Math.max(largest, Math.abs(weighted[i]));
    }
    double rounding = 8 * Math.ulp(largest);
    boolean exact = sum.total() <= rounding * rounding * weighted.length;
    if (exact) {
      Arrays.fill(residuals, 0);
    }
    this.squares = exact ? 0 : sum.total();
    this.totalSquares = design.totalSquares(y);
  }

  /**
   * The regression of y on the columns of x and an intercept.
   *
   * @param y responses
   * @param x a row a response, a column a moderator
   * @param weights above 0, such as 1/variance; null for all alike
   * @param cluster a number from 0 for each response; null where each stands alone
   * @return empty when there are no more responses than coefficients, fewer than two clusters, or a
   *     column is constant or follows from those before it: the data cannot tell
   * @throws IllegalArgumentException when lengths differ or a number is not finite
   */
  public static Optional<ClusteredRegression> of(
      double[] y, double[][] x, double[] weights, int[] cluster) {
    Checks.atLeast(y.length, 1, "responses");
    Checks.sameLength("responses and rows", y.length, x.length);
    Checks.finite("response", y);
    for (double[] row : x) {
      Checks.sameLength("moderators in a row", row.length, x[0].length);
      Checks.finite("moderator", row);
    }
    double[] w = weights == null ? new double[y.length] : weights;
    if (weights == null) {
      Arrays.fill(w, 1);
    }
    Checks.sameLength("responses and weights", y.length, w.length);
    Checks.positive("weight", w);
    int[] numbered = numbered(cluster, y.length);
    int clusters = Arrays.stream(numbered).max().orElseThrow() + 1;
    int columns = x[0].length + 1;
    if (y.length <= columns || clusters < 2) {
      return Optional.empty();
    }
    return CentredDesign.of(x, w, DEPENDENT)
        .map(design -> new ClusteredRegression(design, y, numbered, clusters));
  }

  /** Clusters numbered anew without gaps. */
  private static int[] numbered(int[] cluster, int count) {
    int[] numbers = new int[count];
    if (cluster == null) {
      for (int i = 0; i < count; i++) {
        numbers[i] = i;
      }
      return numbers;
    }
    Checks.sameLength("responses and clusters", count, cluster.length);
    int[] distinct = Arrays.stream(cluster).distinct().sorted().toArray();
    for (int i = 0; i < count; i++) {
      numbers[i] = Arrays.binarySearch(distinct, cluster[i]);
    }
    return numbers;
  }

  /** The intercept; empty as {@link #estimate}. */
  public Optional<Estimate> intercept(Errors errors) {
    double[] contrast = new double[design.columns()];
    contrast[0] = 1;
    return estimate(contrast, errors);
  }

  /** The slope of a moderator, numbered from 0; empty as {@link #estimate}. */
  public Optional<Estimate> slope(int moderator, Errors errors) {
    double[] contrast = new double[design.columns()];
    contrast[moderator + 1] = 1;
    return estimate(contrast, errors);
  }

  /**
   * A weighted sum of the coefficients, the intercept first: the expected response at given
   * moderators is (1, x...).
   *
   * @return empty when one cluster alone decides it, so that nothing repeats it (not for CLASSICAL)
   */
  public Optional<Estimate> estimate(double[] contrast, Errors errors) {
    double[] centred = design.contrast(contrast);
    double value = design.value(centred, solution);
    double[] direction = design.qr().solveTransposed(centred);
    double n = residuals.length;
    double k = design.columns();
    if (errors == Errors.CLASSICAL) {
      double norm = 0;
      for (double d : direction) {
        norm += d * d;
      }
      return Optional.of(new Estimate(value, Math.sqrt(norm * squares / (n - k)), n - k));
    }
    Optional<Estimate> reduced =
        Cr2.estimate(value, design.qr(), direction, residuals, cluster, clusters);
    if (errors == Errors.REDUCED_BIAS || reduced.isEmpty()) {
      return reduced;
    }
    double[] sums = new double[clusters];
    for (int i = 0; i < residuals.length; i++) {
      sums[cluster[i]] += design.qr().leverage(i, direction) * residuals[i];
    }
    double sum = 0;
    for (double s : sums) {
      sum += s * s;
    }
    double factor = clusters / (clusters - 1.0) * (n - 1) / (n - k);
    return Optional.of(new Estimate(value, Math.sqrt(factor * sum), clusters - 1.0));
  }

  /** Residual standard deviation, of a response with weight 1. */
  public double residualSd() {
    return Math.sqrt(squares / (residuals.length - design.columns()));
  }

  /** Share of the (weighted) spread explained; empty when the responses do not vary. */
  public Optional<Double> explained() {
    return totalSquares == 0 ? Optional.empty() : Optional.of(1 - squares / totalSquares);
  }

  /** Number of clusters. */
  public int clusters() {
    return clusters;
  }

  /** Number of responses. */
  public int count() {
    return residuals.length;
  }
}
