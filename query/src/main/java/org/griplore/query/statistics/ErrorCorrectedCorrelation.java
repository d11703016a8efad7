package org.griplore.query.statistics;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Correlation between two disciplines over models when both are known only with error: the part of
 * the variances and of the covariance that the errors make up is taken off (method of moments;
 * Fuller 1987, Measurement Error Models, section 1.2; the idea is Spearman's, 1904, American J
 * Psychology 15:72). Uncorrected, error in either pulls the correlation towards 0, and shared error
 * pulls it towards the correlation of the errors.
 *
 * <p>The interval is Fisher's for the estimates as they are, tanh(atanh r ± z/√(n - 3)), with its
 * ends corrected as r is: divided by the root of the two reliabilities, held within -1 and 1. Where
 * the models differ no more than their errors explain there is no estimate, and the interval is all
 * from -1 to 1.
 *
 * @param r corrected correlation, held within -1 and 1; empty when the errors explain the spread of
 *     one of the disciplines
 * @param uncorrected correlation of the estimates as they are
 * @param xReliability share of the spread of x that is not error, 0 to 1
 * @param yReliability the same of y
 * @param models how many models
 * @param interval of the corrected correlation
 */
public record ErrorCorrectedCorrelation(
    OptionalDouble r,
    double uncorrected,
    double xReliability,
    double yReliability,
    int models,
    Interval interval) {
  /** Fewer models have no correlation worth correcting. */
  public static final int FEWEST = 4;

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
   * The corrected correlation with its interval.
   *
   * @return empty for fewer than {@link #FEWEST} models, or where one of the disciplines does not
   *     vary at all
   */
  public static Optional<ErrorCorrectedCorrelation> of(Estimates of, double level) {
    Checks.level(level);
    int n = of.x.length;
    if (n < FEWEST) {
      return Optional.empty();
    }
    Moments moments = Moments.of(of);
    if (!(moments.xx > 0 && moments.yy > 0)) {
      return Optional.empty();
    }
    double raw = moments.xy / Math.sqrt(moments.xx * moments.yy);
    raw = Math.max(-1, Math.min(1, raw));
    boolean told = moments.trueX() > 0 && moments.trueY() > 0;
    return Optional.of(
        new ErrorCorrectedCorrelation(
            told ? OptionalDouble.of(moments.corrected(raw)) : OptionalDouble.empty(),
            raw,
            Math.max(0, Math.min(1, moments.trueX() / moments.xx)),
            Math.max(0, Math.min(1, moments.trueY() / moments.yy)),
            n,
            told ? interval(moments, raw, n, level) : new Interval(-1, 1)));
  }

  private static Interval interval(Moments moments, double raw, int n, double level) {
    Interval as = FisherZ.interval(raw, 1 / Math.sqrt(n - 3.0), level).orElseThrow();
    return new Interval(moments.corrected(as.low()), moments.corrected(as.high()));
  }

  /** Observed moments and the parts of them that are error. */
  private record Moments(
      double xx, double yy, double xy, double xError, double yError, double xyError) {
    static Moments of(Estimates of) {
      double[] x = of.x;
      double[] y = of.y;
      int n = x.length;
      double meanX = mean(x);
      double meanY = mean(y);
      double xx = 0;
      double yy = 0;
      double xy = 0;
      for (int i = 0; i < n; i++) {
        xx += (x[i] - meanX) * (x[i] - meanX) / (n - 1.0);
        yy += (y[i] - meanY) * (y[i] - meanY) / (n - 1.0);
        xy += (x[i] - meanX) * (y[i] - meanY) / (n - 1.0);
      }
      return new Moments(
          xx,
          yy,
          xy,
          mean(of.xVariance) - of.xyShared[0],
          mean(of.yVariance) - of.xyShared[1],
          mean(of.covariance) - of.xyShared[2]);
    }

    private static double mean(double[] values) {
      return Arrays.stream(values).sum() / values.length;
    }

    double trueX() {
      return xx - xError;
    }

    double trueY() {
      return yy - yError;
    }

    /** A correlation of the estimates without what their errors do to it. */
    double corrected(double raw) {
      double covariance = raw * Math.sqrt(xx * yy) - xyError;
      return Math.max(-1, Math.min(1, covariance / Math.sqrt(trueX() * trueY())));
    }
  }
}
