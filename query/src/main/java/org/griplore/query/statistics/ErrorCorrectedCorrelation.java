package org.griplore.query.statistics;

import java.util.Arrays;
import java.util.Optional;
import java.util.SplittableRandom;

/**
 * Correlation between two disciplines over models when both are known only with error: the part of
 * the variances and of the covariance that the errors make up is taken off (method of moments;
 * Fuller 1987, Measurement Error Models, section 1.2; the idea is Spearman's, 1904, American J
 * Psychology 15:72). Uncorrected, error in either pulls the correlation towards 0, and shared error
 * pulls it towards the correlation of the errors.
 *
 * @param r corrected correlation, held within -1 and 1
 * @param uncorrected correlation of the estimates as they are
 * @param xReliability share of the spread of x that is not error, 0 to 1
 * @param yReliability the same of y
 * @param models how many models
 * @param interval percentile bootstrap over models; empty when more than one resample in ten has no
 *     corrected correlation, as then the data say too little
 */
public record ErrorCorrectedCorrelation(
    double r,
    double uncorrected,
    double xReliability,
    double yReliability,
    int models,
    Optional<Interval> interval) {
  /** Fewer models have no correlation worth correcting. */
  public static final int FEWEST = 4;

  private static final double MOST_LOST = 0.1;

  /**
   * Estimates and what is known of their errors.
   *
   * @param x estimates in one discipline
   * @param xVariance error variances of x, 0 or more
   * @param y estimates in the other
   * @param yVariance error variances of y
   * @param covariance error covariances of x and y of one model; null for none
   * @param xyShared what errors of different models have in common on average: mean covariance
   *     between models of x, of y, and of x with y; zeros where errors are independent
   */
  public record Estimates(
      double[] x,
      double[] xVariance,
      double[] y,
      double[] yVariance,
      double[] covariance,
      double[] xyShared) {
    /** Independent errors between models and between disciplines. */
    public static Estimates independent(double[] x, double[] xSe, double[] y, double[] ySe) {
      return new Estimates(x, squares(xSe), y, squares(ySe), null, new double[3]);
    }

    /** Checks the lengths and that variances are not below 0. */
    public Estimates {
      Checks.sameLength("x and y", x.length, y.length);
      Checks.sameLength("x and its variances", x.length, xVariance.length);
      Checks.sameLength("y and its variances", y.length, yVariance.length);
      Checks.sameLength("shared covariances", xyShared.length, 3);
      Checks.finite("x", x);
      Checks.finite("y", y);
      Checks.finite("variance of x", xVariance);
      Checks.finite("variance of y", yVariance);
      if (covariance == null) {
        covariance = new double[x.length];
      }
      Checks.sameLength("x and covariances", x.length, covariance.length);
      for (int i = 0; i < x.length; i++) {
        if (xVariance[i] < 0 || yVariance[i] < 0) {
          throw new IllegalArgumentException("variance %d is below 0".formatted(i + 1));
        }
      }
    }

    private static double[] squares(double[] ses) {
      return Arrays.stream(ses).map(se -> se * se).toArray();
    }
  }

  /**
   * The corrected correlation with a percentile bootstrap interval.
   *
   * @param resamples such as 2000
   * @param seed the same seed gives the same interval
   * @return empty for fewer than {@link #FEWEST} models, or when the models differ no more than
   *     their errors explain in one of the disciplines
   */
  public static Optional<ErrorCorrectedCorrelation> of(
      Estimates of, double level, int resamples, long seed) {
    Checks.level(level);
    int n = of.x.length;
    if (n < FEWEST) {
      return Optional.empty();
    }
    int[] all = new int[n];
    Arrays.setAll(all, i -> i);
    Moments moments = Moments.of(of, all, n - 1.0);
    if (!(moments.trueX() > 0 && moments.trueY() > 0)) {
      return Optional.empty();
    }
    return Optional.of(
        new ErrorCorrectedCorrelation(
            moments.corrected(),
            moments.xy / Math.sqrt(moments.xx * moments.yy),
            Math.min(1, moments.trueX() / moments.xx),
            Math.min(1, moments.trueY() / moments.yy),
            n,
            bootstrap(of, level, resamples, seed)));
  }

  private static Optional<Interval> bootstrap(
      Estimates of, double level, int resamples, long seed) {
    int n = of.x.length;
    SplittableRandom random = new SplittableRandom(seed);
    double[] found = new double[resamples];
    int kept = 0;
    int[] drawn = new int[n];
    // A resample repeats models, which takes 1/n off its spread: given back, so that the errors,
    // which
    // are taken off whole, keep their share.
    double divisor = (n - 1.0) * (n - 1.0) / n;
    for (int sample = 0; sample < resamples; sample++) {
      for (int i = 0; i < n; i++) {
        drawn[i] = random.nextInt(n);
      }
      Moments moments = Moments.of(of, drawn, divisor);
      if (moments.trueX() > 0 && moments.trueY() > 0) {
        found[kept++] = moments.corrected();
      }
    }
    if (kept == 0 || kept < (1 - MOST_LOST) * resamples) {
      return Optional.empty();
    }
    double[] sorted = Arrays.copyOf(found, kept);
    Arrays.sort(sorted);
    return Optional.of(
        new Interval(quantile(sorted, (1 - level) / 2), quantile(sorted, (1 + level) / 2)));
  }

  private static double quantile(double[] sorted, double share) {
    double at = share * (sorted.length - 1);
    int below = (int) at;
    int above = Math.min(below + 1, sorted.length - 1);
    return sorted[below] + (at - below) * (sorted[above] - sorted[below]);
  }

  /** Observed moments and the parts of them that are error. */
  private record Moments(
      double xx, double yy, double xy, double xError, double yError, double xyError) {
    static Moments of(Estimates of, int[] drawn, double divisor) {
      double meanX = 0;
      double meanY = 0;
      double xError = 0;
      double yError = 0;
      double xyError = 0;
      for (int i : drawn) {
        meanX += of.x[i];
        meanY += of.y[i];
        xError += of.xVariance[i];
        yError += of.yVariance[i];
        xyError += of.covariance[i];
      }
      int n = drawn.length;
      meanX /= n;
      meanY /= n;
      double xx = 0;
      double yy = 0;
      double xy = 0;
      for (int i : drawn) {
        xx += (of.x[i] - meanX) * (of.x[i] - meanX);
        yy += (of.y[i] - meanY) * (of.y[i] - meanY);
        xy += (of.x[i] - meanX) * (of.y[i] - meanY);
      }
      return new Moments(
          xx / divisor,
          yy / divisor,
          xy / divisor,
          xError / n - of.xyShared[0],
          yError / n - of.xyShared[1],
          xyError / n - of.xyShared[2]);
    }

    double trueX() {
      return xx - xError;
    }

    double trueY() {
      return yy - yError;
    }

    double corrected() {
      double r = (xy - xyError) / Math.sqrt(trueX() * trueY());
      return Math.max(-1, Math.min(1, r));
    }
  }
}
