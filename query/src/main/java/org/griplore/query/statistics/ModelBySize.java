package org.griplore.query.statistics;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;

/**
 * Heterogeneity in two parts: what a model is more or less in a size than over all sizes, which
 * stays with it in each test of that size, and what is left from test to test:
 *
 * <p>y = test + model + u(model, size) + e, var u = σ², var e = τ² + the known variance of the
 * runs.
 *
 * <p>Both variances by restricted maximum likelihood (average information; Gilmour, Thompson and
 * Cullis 1995, Biometrics 51:1440). Whether σ² is more than zero is tested by the likelihood ratio,
 * half of whose distribution is at zero (Self and Liang 1987, J American Statistical Association
 * 82:605). Differences have t intervals with Satterthwaite's degrees of freedom, in which the
 * uncertainty of both variances is.
 */
public final class ModelBySize {
  private static final int STEPS = 60;
  private static final double DONE = 1e-9;

  /** Share of a variance by which it is moved to find how errors change with it. */
  private static final double NUDGE = 1e-3;

  private final ModelBySizeDesign design;
  private final ModelBySizePoint at;
  private final double rest;
  private final double p;
  private final double[][] covarianceOfVariances;
  private ModelBySizePoint[] moved;
  private double[] nudge;

  /**
   * A difference of two models.
   *
   * @param value first less second
   * @param se its standard error
   * @param df degrees of freedom of its t
   */
  public record Contrast(double value, double se, double df) {
    /** The t interval. */
    public Interval interval(double level) {
      return Interval.around(value, Tails.student(level, df) * se);
    }
  }

  private ModelBySize(ModelBySizeDesign design, double ofSize, double rest, double p) {
    this.design = design;
    this.rest = rest;
    this.p = p;
    this.at = new ModelBySizePoint(design, ofSize, rest);
    this.covarianceOfVariances = inverse(averageInformation(design, at));
  }

  /**
   * Fits it.
   *
   * @param test a number from 0 for the test of each result; tests with one result say nothing and
   *     may be left in
   * @param model its model
   * @param size its size
   * @param y results, plus is better
   * @param known variance of each by its own runs; 0 where not known
   * @return empty where the data cannot tell the two apart: no model has two tests in one size and
   *     others in another, or there are no degrees of freedom left for both
   * @throws IllegalArgumentException when lengths differ or a number is not finite
   */
  public static Optional<ModelBySize> of(
      int[] test, int[] model, int[] size, double[] y, double[] known) {
    Checks.sameLength("results and tests", y.length, test.length);
    Checks.sameLength("results and models", y.length, model.length);
    Checks.sameLength("results and sizes", y.length, size.length);
    Checks.sameLength("results and variances", y.length, known.length);
    Checks.finite("result", y);
    Checks.finite("variance", known);
    if (y.length == 0) {
      return Optional.empty();
    }
    ModelBySizeDesign design = new ModelBySizeDesign(test, model, size, y, known);
    if (!canTell(design)) {
      return Optional.empty();
    }
    double[] found = search(design);
    return found == null
        ? Optional.empty()
        : Optional.of(new ModelBySize(design, found[0], found[1], found[2]));
  }

  /** Some groups have two tests, some models two groups, and residuals are left for both. */
  private static boolean canTell(ModelBySizeDesign design) {
    int repeated = 0;
    Set<Integer> models = new HashSet<>();
    for (int[] members : design.members()) {
      repeated += members.length - 1;
      models.add(design.modelColumn(members[0]));
    }
    return repeated >= 2
        && design.groups() - models.size() >= 2
        && design.count() - design.columns() >= 3;
  }

  /** The two variances and the probability of the first by chance; null where nothing scatters. */
  private static double[] search(ModelBySizeDesign design) {
    double start = residualVariance(design);
    if (!(start > 0)) {
      return null;
    }
    double[] without = climb(design, 0, start, false);
    double[] with = climb(design, without[1] / 3, without[1] * 2 / 3, true);
    double gain = without[2] - with[2];
    return gain > 0
        ? new double[] {with[0], with[1], Tails.chiSquaredAbove(gain, 1) / 2}
        : new double[] {0, without[1], 1};
  }

  private static double residualVariance(ModelBySizeDesign design) {
    ModelBySizePoint flat = new ModelBySizePoint(design, 0, scale(design));
    double squares = 0;
    for (double residual : flat.weightedResidual()) {
      squares += residual * residual;
    }
    double mean = scale(design);
    return squares * mean * mean / (design.count() - design.columns());
  }

  private static double scale(ModelBySizeDesign design) {
    double sum = 1e-300;
    double mean = 0;
    for (double y : design.y()) {
      mean += y / design.count();
    }
    for (double y : design.y()) {
      sum += (y - mean) * (y - mean) / design.count();
    }
    return sum;
  }

  /** Average-information steps, held above zero and halved until the likelihood rises. */
  private static double[] climb(
      ModelBySizeDesign design, double ofSize, double rest, boolean both) {
    double least = 1e-8 * (ofSize + rest);
    ModelBySizePoint here = new ModelBySizePoint(design, ofSize, rest);
    for (int step = 0; step < STEPS; step++) {
      double[] slope = slope(here);
      double[][] information = averageInformation(design, here);
      double[] by =
          both ? solve(information, slope) : new double[] {0, slope[1] / information[1][1]};
      double length = 1;
      ModelBySizePoint next = here;
      double nextOfSize = ofSize;
      double nextRest = rest;
      do {
        nextOfSize = both ? Math.max(least, ofSize + length * by[0]) : 0;
        nextRest = Math.max(least, rest + length * by[1]);
        next = new ModelBySizePoint(design, nextOfSize, nextRest);
        length /= 2;
      } while (next.deviance() > here.deviance() + 1e-10 && length > 1e-4);
      double gain = here.deviance() - next.deviance();
      if (gain < 0) {
        break;
      }
      ofSize = nextOfSize;
      rest = nextRest;
      here = next;
      if (gain < DONE) {
        break;
      }
    }
    return new double[] {ofSize, rest, here.deviance()};
  }

  /** Slope of the restricted log likelihood in the two variances. */
  private static double[] slope(ModelBySizePoint point) {
    double[] traces = point.traces();
    double[] squares = point.squares();
    return new double[] {(squares[0] - traces[0]) / 2, (squares[1] - traces[1]) / 2};
  }

  private static double[][] averageInformation(ModelBySizeDesign design, ModelBySizePoint point) {
    double[] py = point.weightedResidual();
    double[] own = new double[design.groups()];
    for (int i = 0; i < py.length; i++) {
      own[design.group()[i]] += py[i];
    }
    double[] ofSize = new double[py.length];
    for (int i = 0; i < py.length; i++) {
      ofSize[i] = own[design.group()[i]];
    }
    double[] projectedSize = point.project(ofSize);
    double[] projectedRest = point.project(py);
    double[][] information = new double[2][2];
    for (int i = 0; i < py.length; i++) {
      information[0][0] += ofSize[i] * projectedSize[i] / 2;
      information[0][1] += ofSize[i] * projectedRest[i] / 2;
      information[1][1] += py[i] * projectedRest[i] / 2;
    }
    information[1][0] = information[0][1];
    return information;
  }

  private static double[] solve(double[][] m, double[] v) {
    double[][] inverse = inverse(m);
    return new double[] {
      inverse[0][0] * v[0] + inverse[0][1] * v[1], inverse[1][0] * v[0] + inverse[1][1] * v[1]
    };
  }

  private static double[][] inverse(double[][] m) {
    double determinant = m[0][0] * m[1][1] - m[0][1] * m[1][0];
    return new double[][] {
      {m[1][1] / determinant, -m[0][1] / determinant},
      {-m[1][0] / determinant, m[0][0] / determinant}
    };
  }

  /** σ², the variance that stays with a model in a size. */
  public double ofSize() {
    return at.ofSize();
  }

  /** τ², the variance left from test to test, beside that of the runs. */
  public double rest() {
    return rest;
  }

  /** The share of heterogeneity that stays with a model in a size. */
  public double share() {
    return at.ofSize() / (at.ofSize() + rest);
  }

  /** Probability of so large a σ² if there were none. */
  public double p() {
    return p;
  }

  /** The difference over all sizes; empty when nothing compares the two. */
  public Optional<Contrast> overAllSizes(int first, int second) {
    return contrast(first, second, null);
  }

  /** The difference in one size, tested in it or not; empty when nothing compares the two. */
  public Optional<Contrast> inSize(int first, int second, int size) {
    return contrast(first, second, size);
  }

  private Optional<Contrast> contrast(int first, int second, Integer size) {
    Integer one = design.model(first);
    Integer other = design.model(second);
    if (one == null || other == null || !design.areCompared(one, other)) {
      return Optional.empty();
    }
    double[] fixed = design.difference(one, other);
    double[] ofGroups = new double[design.groups()];
    int untested = 0;
    if (size != null) {
      Integer group = design.group(first, size);
      Integer against = design.group(second, size);
      untested = (group == null ? 1 : 0) + (against == null ? 1 : 0);
      if (group != null) {
        ofGroups[group] += 1;
      }
      if (against != null) {
        ofGroups[against] -= 1;
      }
    }
    double variance = variance(at, fixed, ofGroups, untested);
    double df = df(variance, fixed, ofGroups, untested);
    return Optional.of(new Contrast(at.estimate(fixed, ofGroups), Math.sqrt(variance), df));
  }

  private static double variance(
      ModelBySizePoint point, double[] fixed, double[] ofGroups, int untested) {
    return point.variance(fixed, ofGroups) + untested * point.ofSize();
  }

  /** Satterthwaite's, by how the variance changes when either variance component is moved. */
  private double df(double variance, double[] fixed, double[] ofGroups, int untested) {
    if (moved == null) {
      nudge = new double[] {NUDGE * (at.ofSize() + rest), NUDGE * rest};
      moved =
          new ModelBySizePoint[] {
            new ModelBySizePoint(design, at.ofSize() + nudge[0], rest),
            new ModelBySizePoint(design, at.ofSize(), rest + nudge[1])
          };
    }
    double[] slope = new double[2];
    for (int k = 0; k < 2; k++) {
      slope[k] = (variance(moved[k], fixed, ofGroups, untested) - variance) / nudge[k];
    }
    if (at.ofSize() == 0) {
      // at the edge its error is no spread about the estimate
      slope[0] = 0;
    }
    double spread =
        slope[0] * slope[0] * covarianceOfVariances[0][0]
            + 2 * slope[0] * slope[1] * covarianceOfVariances[0][1]
            + slope[1] * slope[1] * covarianceOfVariances[1][1];
    double most = design.count() - design.columns();
    return spread > 0 ? Math.max(1, Math.min(most, 2 * variance * variance / spread)) : most;
  }
}
