package org.griplore.query.network;

/**
 * Pooling of independent estimates of one quantity, each with a known variance (random-effects
 * meta-analysis). Weights are {@code 1 / (v + t)}, t the variance between estimates.
 *
 * <p>DL: {@code t = max(0, (Q - df) / (S1 - S2 / S1))} with S1 and S2 the sums of weights and
 * squared weights at t = 0 (DerSimonian and Laird 1986). REML: root of {@code y'PPy = tr P} by
 * Fisher scoring steps that never leave zero or above (Viechtbauer 2005, J Educ Behav Stat 30:261).
 * NONE: one common value.
 */
public final class Pooling {
  private static final int MOST_STEPS = 500;

  private final double[] y;
  private final double[] v;

  private Pooling(double[] y, double[] v) {
    this.y = y;
    this.v = v;
  }

  /**
   * @param estimates the estimates, plus is better
   * @param variances their variances, positive
   * @param method how the variance between estimates is found
   * @throws IllegalArgumentException when there are none, lengths differ, or a variance is not a
   *     positive number
   */
  public static Pooled pool(double[] estimates, double[] variances, VarianceMethod method) {
    if (estimates.length == 0 || estimates.length != variances.length) {
      throw new IllegalArgumentException(
          "There are "
              + estimates.length
              + " estimates and "
              + variances.length
              + " variances to pool, expected the same number of at least one.");
    }
    for (int i = 0; i < variances.length; i++) {
      if (!(variances[i] > 0)
          || Double.isInfinite(variances[i])
          || !Double.isFinite(estimates[i])) {
        throw new IllegalArgumentException(
            "Estimate "
                + i
                + " is "
                + estimates[i]
                + " with the variance "
                + variances[i]
                + ", expected a finite number and a positive variance.");
      }
    }
    return new Pooling(estimates.clone(), variances.clone()).pooled(method);
  }

  private Pooled pooled(VarianceMethod method) {
    int df = y.length - 1;
    Sums zero = new Sums(0);
    double q = zero.quadratic;
    double between = 0;
    double betweenVariance = Double.NaN;
    if (df > 0 && method == VarianceMethod.DL) {
      between = Math.max(0, (q - df) / zero.trace);
      betweenVariance =
          (2.0 * df + 4 * between * zero.trace + 2 * between * between * zero.traceSquared)
              / (zero.trace * zero.trace);
    } else if (df > 0 && method == VarianceMethod.REML) {
      between = reml(Math.max(0, (q - df) / zero.trace), zero);
      betweenVariance = 2 / new Sums(between).traceSquared;
    }
    return new Pooled(
        method,
        y.length,
        between,
        betweenVariance,
        new Sums(between),
        Heterogeneity.of(q, df),
        zero);
  }

  private double reml(double start, Sums zero) {
    double t = start;
    for (int step = 0; step < MOST_STEPS; step++) {
      Sums at = new Sums(t);
      double next = t + (at.squared - at.trace) / at.traceSquared;
      if (next <= 0) {
        if (zero.squared <= zero.trace) {
          return t == 0 ? 0 : settleLow(t, zero);
        }
        next = t / 2;
      }
      if (Math.abs(next - t) <= 1e-14 * t) {
        return next;
      }
      t = next;
    }
    Sums last = new Sums(t);
    if (Math.abs(last.squared - last.trace) > 1e-8 * last.trace) {
      throw new ArithmeticException(
          "The variance between estimates did not settle near " + t + ".");
    }
    return t;
  }

  /** Zero or the root below t, whichever the restricted likelihood prefers. */
  private double settleLow(double t, Sums zero) {
    double high = t;
    double low = 0;
    for (int i = 0; i < 200; i++) {
      double middle = (low + high) / 2;
      Sums at = new Sums(middle);
      if (at.squared > at.trace) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low > 0 && new Sums(low).logLikelihood() > zero.logLikelihood() ? low : 0;
  }

  /** Weighted sums at one variance between estimates. */
  final class Sums {
    final double between;
    final double weight;
    final double mean;

    /** y'Py. */
    final double quadratic;

    /** y'PPy. */
    final double squared;

    /** tr P and tr PP. */
    final double trace;

    final double traceSquared;

    Sums(double between) {
      this.between = between;
      double s1 = 0;
      double s2 = 0;
      double s3 = 0;
      double sy = 0;
      for (int i = 0; i < y.length; i++) {
        double w = 1 / (v[i] + between);
        s1 += w;
        s2 += w * w;
        s3 += w * w * w;
        sy += w * y[i];
      }
      weight = s1;
      mean = sy / s1;
      trace = s1 - s2 / s1;
      traceSquared = s2 - 2 * s3 / s1 + s2 * s2 / (s1 * s1);
      double q = 0;
      double qq = 0;
      for (int i = 0; i < y.length; i++) {
        double w = 1 / (v[i] + between);
        double e = y[i] - mean;
        q += w * e * e;
        qq += w * w * e * e;
      }
      quadratic = q;
      squared = qq;
    }

    double logLikelihood() {
      double sum = Math.log(weight) + quadratic;
      for (double variance : v) {
        sum += Math.log(variance + between);
      }
      return -sum / 2;
    }
  }
}
