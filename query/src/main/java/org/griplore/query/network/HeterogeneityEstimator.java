package org.griplore.query.network;

/**
 * The heterogeneity variance t (per arm; a contrast of two models in a test carries 2 t) where
 * run-level variances are known.
 *
 * <p>DL: {@code t = max(0, (Q - df) / tr P)} with Q and P at t = 0 (DerSimonian and Laird 1986;
 * Jackson, White and Riley 2012, Stat Med 31:3805, for many arms). REML: the root of {@code y'PPy =
 * tr P}, which is the restricted likelihood equation, sought as the zero of {@code g = log(y'PPy /
 * tr P)} in {@code u = log(t + typical variance)}. With equal arm variances g is a straight line of
 * slope -1 in u, so that the first step from the start lands close and secant steps finish.
 */
final class HeterogeneityEstimator {
  /** Above this work of a factor the start comes from {@link StochasticStart} instead of DL. */
  private static final double HEAVY = 5e7;

  /** Above this work a matrix is not refactored for a small last step. */
  private static final double VERY_HEAVY = 5e8;

  /**
   * The largest such step, relative to the variance. Covariances are then scaled to the new
   * variance, which leaves an error of the order of the step times the spread of arm variances.
   */
  private static final double LOOSE = 1e-4;

  /** A bracket this narrow, relative, is closed: rounding hides the root inside it. */
  private static final double ROUNDING = 1e-8;

  /** So many secant steps without an end mean a nearly flat equation, which is bisected then. */
  private static final int SECANT_STEPS = 20;

  private static final int MOST_STEPS = 120;

  private final Laplacian laplacian;
  private final Components components;
  private final double[] variance;
  private final int df;
  private final double typical;
  private final double tolerance;
  private final double heavy;
  private int evaluations;

  /**
   * @param tauSquared the estimate, never negative
   * @param point the fit at that variance or within the tolerance of the last step
   * @param scale factor from the covariances at that fit to those at the estimate
   * @param q generalised Q at no heterogeneity
   * @param evaluations how many factors were made
   */
  record Estimate(double tauSquared, GlsPoint point, double scale, double q, int evaluations) {
    static Estimate at(GlsPoint point, double q, int evaluations) {
      return new Estimate(point.tauSquared, point, 1, q, evaluations);
    }
  }

  HeterogeneityEstimator(Laplacian laplacian, Components components, double[] variance, int df) {
    this(laplacian, components, variance, df, HEAVY);
  }

  /** With another bound on the work of a factor above which the start is stochastic. */
  HeterogeneityEstimator(
      Laplacian laplacian, Components components, double[] variance, int df, double heavy) {
    this.laplacian = laplacian;
    this.components = components;
    this.heavy = heavy;
    this.variance = variance;
    this.df = df;
    double[] sorted = variance.clone();
    java.util.Arrays.sort(sorted);
    this.typical = sorted[sorted.length / 2];
    double work = laplacian.order.work;
    this.tolerance = work <= HEAVY ? 1e-12 : work <= VERY_HEAVY ? 1e-7 : LOOSE;
  }

  Estimate estimate(VarianceMethod method) {
    if (method == VarianceMethod.NONE || df <= 0) {
      GlsPoint zero = evaluate(0, false);
      return Estimate.at(zero, zero.quadratic, evaluations);
    }
    if (method == VarianceMethod.REML && laplacian.order.work > heavy) {
      StochasticStart start = new StochasticStart(laplacian, components, variance, typical);
      return reml(null, start.q(), start.tauSquared(), start.slope());
    }
    GlsPoint zero = evaluate(0, true);
    double dl = Math.max(0, (zero.quadratic - df) / zero.trace);
    if (method == VarianceMethod.DL) {
      GlsPoint point = dl == 0 ? zero : evaluate(dl, false);
      return Estimate.at(point, zero.quadratic, evaluations);
    }
    return reml(zero, zero.quadratic, dl, -1);
  }

  private Estimate reml(GlsPoint atZero, double q, double start, double firstSlope) {
    GlsPoint zero = atZero;
    if (start <= 0) {
      zero = zero == null ? evaluate(0, true) : zero;
      if (score(zero) <= 0) {
        return Estimate.at(zero, q, evaluations);
      }
    }
    double low = 0;
    double high = Double.POSITIVE_INFINITY;
    double t = start > 0 ? start : typical / 100;
    double lastU = Double.NaN;
    double lastG = Double.NaN;
    for (int step = 0; step < MOST_STEPS; step++) {
      GlsPoint point = evaluate(t, true);
      double u = Math.log(t + typical);
      double g = score(point);
      if (g > 0) {
        low = t;
      } else {
        high = t;
      }
      double slope = (g - lastG) / (u - lastU);
      if (!(slope < -0.05 && slope > -20)) {
        slope = firstSlope;
      }
      double move = Math.max(-3, Math.min(3, -g / slope));
      double next = t + (t + typical) * Math.expm1(move);
      boolean closed = high < Double.POSITIVE_INFINITY && high - low <= ROUNDING * high;
      boolean settled = Math.abs(next - t) <= allowed(step, firstSlope) * t + 1e-14 * typical;
      if (closed || (settled && next > 0)) {
        double end = closed ? t : next;
        return against(zero, ending(point, end, q));
      }
      boolean flat = step >= SECANT_STEPS;
      if (low == 0 && (next <= 0 || flat)) {
        zero = zero == null ? evaluate(0, true) : zero;
        if (score(zero) <= 0) {
          return Estimate.at(zero, q, evaluations);
        }
      }
      lastU = u;
      lastG = g;
      t = !flat && next > low && next < high ? next : between(low, high);
    }
    throw new ArithmeticException(
        "The heterogeneity variance did not settle between " + low + " and " + high + ".");
  }

  /**
   * The estimate at an end near a fitted point. Over all directions the logarithm of a variance
   * rises by {@code tr(L^-1 M'P0P0M) / rank} a unit of t.
   */
  private Estimate ending(GlsPoint point, double end, double q) {
    int rank = laplacian.size() - components.count();
    double scale = Math.exp((end - point.tauSquared) * point.modelTrace / rank);
    return new Estimate(end, point, scale, q, evaluations);
  }

  /** A loose end needs a slope that only a second step or the stochastic start knows. */
  private double allowed(int step, double firstSlope) {
    return step == 0 && firstSlope == -1 ? Math.min(tolerance, 1e-9) : tolerance;
  }

  /**
   * A root below which the likelihood falls and rises again gives way to zero if zero is likelier.
   */
  private static Estimate against(GlsPoint zero, Estimate root) {
    if (zero != null && score(zero) <= 0 && zero.logLikelihood() >= root.point.logLikelihood()) {
      return Estimate.at(zero, root.q, root.evaluations);
    }
    return root;
  }

  private double between(double low, double high) {
    double middle =
        Double.isInfinite(high)
            ? 2 * low + typical
            : Math.sqrt((low + typical) * (high + typical)) - typical;
    return middle > low && middle < high ? middle : (low + high) / 2;
  }

  private static double score(GlsPoint point) {
    return point.squared > 0 ? Math.log(point.squared / point.trace) : Double.NEGATIVE_INFINITY;
  }

  private GlsPoint evaluate(double t, boolean withTrace) {
    evaluations++;
    // from a stochastic start the first step is mostly the last, whose whole inverse is kept
    boolean whole = laplacian.order.work > heavy && laplacian.size() <= EffectCovariance.WHOLE;
    return GlsPoint.at(laplacian, variance, t, withTrace, whole);
  }
}
