package org.griplore.query.statistics;

/**
 * How far true values differ, given estimates whose errors are known: y = μ + u + e, var u = τ²,
 * var e known.
 *
 * @param variance τ², not below 0
 * @param mean μ, weighted by 1/(τ² + var e)
 * @param meanSe its standard error, 1/√(sum of the weights)
 */
public record BetweenVariance(double variance, double mean, double meanSe) {
  private static final int GRID = 160;

  /**
   * By moments (DerSimonian and Laird 1986, Controlled Clinical Trials 7:177).
   *
   * @throws IllegalArgumentException for fewer than two estimates or a variance not above 0
   */
  public static BetweenVariance moments(double[] estimates, double[] variances) {
    check(estimates, variances);
    BetweenVariance common = at(0, estimates, variances);
    double q = 0;
    double w = 0;
    double w2 = 0;
    for (int i = 0; i < estimates.length; i++) {
      double weight = 1 / variances[i];
      double deviation = estimates[i] - common.mean;
      q += weight * deviation * deviation;
      w += weight;
      w2 += weight * weight;
    }
    double tau2 = (q - (estimates.length - 1)) / (w - w2 / w);
    return at(Math.max(0, tau2), estimates, variances);
  }

  /**
   * By restricted maximum likelihood (Viechtbauer 2005, J Educational and Behavioral Statistics
   * 30:261). The likelihood is looked over on a grid first, as it may have more than one peak, then
   * the root of its slope beside the best point is bisected.
   *
   * @throws IllegalArgumentException for fewer than two estimates or a variance not above 0
   */
  public static BetweenVariance reml(double[] estimates, double[] variances) {
    check(estimates, variances);
    double largest = 0;
    double smallest = Double.POSITIVE_INFINITY;
    for (double variance : variances) {
      largest = Math.max(largest, variance);
      smallest = Math.min(smallest, variance);
    }
    double bound = 10 * (Summary.of(estimates).variance() * estimates.length + largest);
    double step = Math.log(bound / (1e-6 * smallest)) / (GRID - 1);
    double[] grid = new double[GRID + 1];
    int best = 0;
    double bestFit = deviance(0, estimates, variances);
    for (int i = 1; i <= GRID; i++) {
      grid[i] = 1e-6 * smallest * Math.exp((i - 1) * step);
      double fit = deviance(grid[i], estimates, variances);
      if (fit < bestFit) {
        bestFit = fit;
        best = i;
      }
    }
    double low = grid[Math.max(0, best - 1)];
    double high = grid[Math.min(GRID, best + 1)];
    if (slope(low, estimates, variances) >= 0) {
      return at(low, estimates, variances);
    }
    while (high - low > 2 * Math.ulp(high)) {
      double middle = (low + high) / 2;
      if (slope(middle, estimates, variances) < 0) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return at((low + high) / 2, estimates, variances);
  }

  /** Mean and standard error under a given τ². */
  public static BetweenVariance at(double tau2, double[] estimates, double[] variances) {
    double w = 0;
    double wy = 0;
    for (int i = 0; i < estimates.length; i++) {
      double weight = 1 / (variances[i] + tau2);
      w += weight;
      wy += weight * estimates[i];
    }
    return new BetweenVariance(tau2, wy / w, Math.sqrt(1 / w));
  }

  private static void check(double[] estimates, double[] variances) {
    Checks.sameLength("estimates and variances", estimates.length, variances.length);
    Checks.atLeast(estimates.length, 2, "estimates");
    Checks.finite("estimate", estimates);
    Checks.positive("variance", variances);
  }

  private static double deviance(double tau2, double[] estimates, double[] variances) {
    BetweenVariance fit = at(tau2, estimates, variances);
    double sum = -2 * Math.log(fit.meanSe);
    for (int i = 0; i < estimates.length; i++) {
      double total = variances[i] + tau2;
      double deviation = estimates[i] - fit.mean;
      sum += Math.log(total) + deviation * deviation / total;
    }
    return sum;
  }

  private static double slope(double tau2, double[] estimates, double[] variances) {
    BetweenVariance fit = at(tau2, estimates, variances);
    double sum = 0;
    for (int i = 0; i < estimates.length; i++) {
      double weight = 1 / (variances[i] + tau2);
      double deviation = estimates[i] - fit.mean;
      sum += weight - weight * weight * (fit.meanSe * fit.meanSe + deviation * deviation);
    }
    return sum;
  }
}
