package org.griplore.query.statistics;

import java.util.Arrays;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * The noncentral t distribution: T = (Z + δ) / S, Z standard normal, S² chi-squared over its
 * degrees of freedom ν.
 *
 * <p>P(T &gt; t) = ∫ Φ(δ - t s) f(s) ds over the density of S, by Gauss-Legendre panels that are
 * fine where f or Φ turns. The integrand is positive, so a small tail keeps its digits; dividing by
 * ∫ f spares the normalising constant. Right to about 1e-13 for the degrees of freedom and
 * noncentralities of test planning (ν to 1e6, |δ| to 1e3).
 */
public final class NoncentralT {
  private static final int NODES = 20;
  private static final int PANELS = 3;

  /** Beyond so many sds the density of S is below 1e-40 of its peak. */
  private static final double REACH = 14;

  /** Below so many degrees of freedom f is no polynomial near 0; panels halve towards it. */
  private static final double ROUGH = 8;

  private static final int HALVINGS = 30;
  private static final double[] TURNS = {-14, -8, -5, -3, -1.5, 0, 1.5, 3, 5, 8, 14};

  private static final double[] POINT = new double[NODES];
  private static final double[] WEIGHT = new double[NODES];

  static {
    GaussIntegrator legendre = new GaussIntegratorFactory().legendre(NODES);
    for (int i = 0; i < NODES; i++) {
      POINT[i] = legendre.getPoint(i);
      WEIGHT[i] = legendre.getWeight(i);
    }
  }

  private final double df;
  private final double noncentrality;

  /**
   * A distribution.
   *
   * @param df degrees of freedom, 1 or more, not necessarily whole
   * @param noncentrality δ, finite
   * @throws IllegalArgumentException otherwise
   */
  public NoncentralT(double df, double noncentrality) {
    if (!(df >= 1 && Double.isFinite(df)) || !Double.isFinite(noncentrality)) {
      throw new IllegalArgumentException(
          "degrees of freedom %s, noncentrality %s".formatted(df, noncentrality));
    }
    this.df = df;
    this.noncentrality = noncentrality;
  }

  /** P(T &gt; t). */
  public double above(double t) {
    return tail(t, noncentrality);
  }

  /** P(T ≤ t), which is P(-T ≥ -t) with the noncentrality of other sign. */
  public double below(double t) {
    return tail(-t, -noncentrality);
  }

  private double tail(double t, double delta) {
    double mode = Math.sqrt((df - 1) / df);
    double width = 1 / Math.sqrt(2 * df);
    double low = Math.max(0, mode - REACH * width);
    double high = mode + REACH * width;
    int rough = df < ROUGH ? HALVINGS : 0;
    double[] breaks = new double[2 * TURNS.length + rough];
    for (int i = 0; i < TURNS.length; i++) {
      breaks[2 * i] = mode + TURNS[i] * width;
      breaks[2 * i + 1] = t == 0 ? mode : (delta + TURNS[i]) / t;
    }
    for (int i = 0; i < rough; i++) {
      breaks[2 * TURNS.length + i] = Math.scalb(1.0, -i);
    }
    for (int i = 0; i < breaks.length; i++) {
      breaks[i] = Math.max(low, Math.min(high, breaks[i]));
    }
    Arrays.sort(breaks);
    double top = logDensity(mode);
    Sums tail = new Sums();
    Sums all = new Sums();
    for (int i = 1; i < breaks.length; i++) {
      double step = (breaks[i] - breaks[i - 1]) / PANELS;
      for (int panel = 0; panel < PANELS && step > 0; panel++) {
        double middle = breaks[i - 1] + (panel + 0.5) * step;
        for (int node = 0; node < NODES; node++) {
          double s = middle + POINT[node] * step / 2;
          double density = WEIGHT[node] * step * Math.exp(logDensity(s) - top);
          tail.add(density * Tails.normalAbove(t * s - delta));
          all.add(density);
        }
      }
    }
    return Math.min(1, tail.total() / all.total());
  }

  /** Log density of S without its constant. */
  private double logDensity(double s) {
    return (df == 1 ? 0 : (df - 1) * Math.log(s)) - df * s * s / 2;
  }
}
