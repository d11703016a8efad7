package org.griplore.ingest.reduce.sample;

import org.griplore.ingest.reduce.run.RunPosition;

/**
 * Least squares y = a + b x.
 *
 * @param count how many points
 * @param meanX mean of x
 * @param meanY mean of y
 * @param sumXx sum of squared deviations of x
 * @param slope b
 * @param residual residual sum of squares
 */
public record StraightLine(
    int count, double meanX, double meanY, double sumXx, double slope, double residual) {

  /**
   * Through points of at least two different x.
   *
   * @throws org.griplore.store.vocabulary.Refusal when all x are the same
   */
  public static StraightLine fit(double[] x, double[] y) {
    double meanX = Moments.of(x).mean();
    double meanY = Moments.of(y).mean();
    double sumXx = 0;
    double sumXy = 0;
    for (int i = 0; i < x.length; i++) {
      sumXx += (x[i] - meanX) * (x[i] - meanX);
      sumXy += (x[i] - meanX) * (y[i] - meanY);
    }
    if (!(sumXx > 0)) {
      throw RunPosition.refusal(
          "straight line", x.length + " points at one abscissa", "two different abscissae");
    }
    double slope = sumXy / sumXx;
    double residual = 0;
    for (int i = 0; i < x.length; i++) {
      double off = y[i] - meanY - slope * (x[i] - meanX);
      residual += off * off;
    }
    return new StraightLine(x.length, meanX, meanY, sumXx, slope, residual);
  }

  /** a, the value at x = 0. */
  public double intercept() {
    return at(0);
  }

  /** The line's value. */
  public double at(double x) {
    return meanY + slope * (x - meanX);
  }

  /** Residual standard deviation, n - 2 degrees of freedom; null for two points. */
  public Double deviation() {
    return count < 3 ? null : (Double) Math.sqrt(residual / (count - 2));
  }

  /** Standard error of the slope; null for two points. */
  public Double slopeError() {
    return count < 3 ? null : (Double) (deviation() / Math.sqrt(sumXx));
  }

  /** Standard error of the line's value; null for two points. */
  public Double errorAt(double x) {
    return count < 3
        ? null
        : (Double) (deviation() * Math.sqrt(1.0 / count + (x - meanX) * (x - meanX) / sumXx));
  }

  /** Two-sided p of the slope against none; null for two points. */
  public Double slopeP() {
    if (count < 3) {
      return null;
    }
    if (slope == 0) {
      return 1.0;
    }
    return StudentTail.twoSided(Math.abs(slope) / slopeError(), count - 2);
  }
}
