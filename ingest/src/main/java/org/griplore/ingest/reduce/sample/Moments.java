package org.griplore.ingest.reduce.sample;

/**
 * Mean and standard deviation (n - 1) by two passes with a correction for rounding (Chan, Golub and
 * LeVeque 1983, The American Statistician 37:242).
 *
 * @param count how many figures
 * @param mean their mean
 * @param squares sum of squared deviations from it
 */
public record Moments(int count, double mean, double squares) {
  public static Moments of(double[] values) {
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    double first = sum / values.length;
    double rest = 0;
    for (double value : values) {
      rest += value - first;
    }
    double mean = first + rest / values.length;
    double squares = 0;
    double drift = 0;
    for (double value : values) {
      squares += (value - mean) * (value - mean);
      drift += value - mean;
    }
    return new Moments(values.length, mean, squares - drift * drift / values.length);
  }

  /** Standard deviation (n - 1); only for two figures or more. */
  public double deviation() {
    return Math.sqrt(Math.max(0, squares) / (count - 1));
  }
}
