package org.griplore.query.network;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import org.griplore.query.statistics.RankIntervals;
import org.griplore.query.statistics.SharedVariance;

/**
 * A fitted network of one discipline. Immutable; every comparison is looked up from the kept
 * inverse. No method answers NaN: what cannot be known is empty or a {@link NotCompared}.
 */
public final class NetworkFit {

  /** What a fit starts from. */
  record Basis(
      Arms arms,
      FitOptions options,
      TestRows rows,
      Components components,
      Laplacian laplacian,
      ArmsOfModel armsOfModel,
      ErrorKnowledge errors,
      int df) {}

  private final Basis basis;
  private final GlsPoint point;
  private final Optional<Heterogeneity> heterogeneity;
  private final double tauSquared;
  private final double scale;
  private final EffectCovariance covariance;
  private final double[] effects;
  private final double[] testEffects;
  private final int evaluations;

  private final FitIntervals intervals;

  private NetworkFit(
      Basis basis,
      GlsPoint point,
      Optional<Heterogeneity> heterogeneity,
      double tauSquared,
      double scale,
      double[] byPosition,
      int evaluations) {
    this.basis = basis;
    this.point = point;
    this.heterogeneity = heterogeneity;
    this.tauSquared = tauSquared;
    this.scale = scale;
    this.evaluations = evaluations;
    this.covariance =
        new EffectCovariance(
            basis.laplacian.order, basis.components, point.factor, point.inverse, scale);
    this.effects = Centred.effects(basis.laplacian.order, basis.components, byPosition);
    this.testEffects = point.testEffects(effects);
    this.intervals = FitIntervals.of(basis, tauSquared, point.quadratic, scale);
  }

  /** The same fit with other intervals. */
  private NetworkFit(NetworkFit other, FitIntervals intervals) {
    this.basis = other.basis;
    this.point = other.point;
    this.heterogeneity = other.heterogeneity;
    this.tauSquared = other.tauSquared;
    this.scale = other.scale;
    this.evaluations = other.evaluations;
    this.covariance = other.covariance;
    this.effects = other.effects;
    this.testEffects = other.testEffects;
    this.intervals = intervals;
  }

  static NetworkFit known(Basis basis, HeterogeneityEstimator.Estimate estimate, double[] effects) {
    return new NetworkFit(
        basis,
        estimate.point(),
        Optional.of(Heterogeneity.of(estimate.q(), basis.df)),
        estimate.tauSquared(),
        estimate.scale(),
        effects,
        estimate.evaluations());
  }

  static NetworkFit lumped(Basis basis, GlsPoint point) {
    double residual = basis.df > 0 ? point.quadratic / basis.df : 1;
    return new NetworkFit(basis, point, Optional.empty(), 0, residual, point.effects, 1);
  }

  /** The choices of this fit. */
  public FitOptions options() {
    return basis.options;
  }

  /** What was known of run-level variances. */
  public ErrorKnowledge errors() {
    return basis.errors;
  }

  /** Number of tests with at least two models. */
  public int tests() {
    return basis.rows.tests;
  }

  /** Number of models, those in no component included. */
  public int models() {
    return basis.arms.models();
  }

  /** Number of arms in those tests. */
  public int arms() {
    return basis.rows.arms;
  }

  /** Number of tests left out because they held a single model. */
  public int singleArmTests() {
    return basis.rows.singleArmTests;
  }

  /** Number of arms whose stated variance of zero was taken as unknown. */
  public int zeroVariances() {
    return basis.arms.zeroVariances();
  }

  /** Degrees of freedom left for the heterogeneity: arms less tests less models plus components. */
  public int residualDf() {
    return basis.df;
  }

  /**
   * Heterogeneity variance per arm; a contrast of two models inside a test carries twice this. Zero
   * by definition with {@link VarianceMethod#NONE}; empty when error and heterogeneity are one lump
   * or no degrees of freedom are left to tell.
   */
  public OptionalDouble tauSquared() {
    boolean told =
        basis.errors != ErrorKnowledge.UNKNOWN
            && (basis.df > 0 || basis.options.method() == VarianceMethod.NONE);
    return told ? OptionalDouble.of(tauSquared) : OptionalDouble.empty();
  }

  /**
   * Variance of error and heterogeneity together per arm, where no run-level variance is known:
   * residual sum of squares over {@link #residualDf()}, which is REML and DL alike. Empty
   * otherwise.
   */
  public OptionalDouble residualVariance() {
    return basis.errors == ErrorKnowledge.UNKNOWN && basis.df > 0
        ? OptionalDouble.of(scale)
        : OptionalDouble.empty();
  }

  /** Q, I-squared and p; empty when no run-level variance is known. */
  public Optional<Heterogeneity> heterogeneity() {
    return heterogeneity;
  }

  /**
   * Q split into scatter within and inconsistency between designs; empty as {@link
   * #heterogeneity()}.
   */
  public Optional<DesignSplit> designSplit() {
    return heterogeneity.map(
        h ->
            DesignSplit.of(
                basis.rows, NetworkFitter.filled(basis.rows, basis.options.typicalVariance()), h));
  }

  /** Number of connected components. */
  public int components() {
    return basis.components.count();
  }

  /** Part of a model; empty when it was never tested against another. */
  public OptionalInt component(int model) {
    int component = basis.components.ofModel[model];
    return component == Components.NONE ? OptionalInt.empty() : OptionalInt.of(component);
  }

  /** Number of times the information matrix was factored. */
  public int evaluations() {
    return evaluations;
  }

  /**
   * The difference of two models, first minus second.
   *
   * @param first number of a model
   * @param second number of a model
   */
  public ModelComparison compare(int first, int second) {
    Optional<NotCompared> missing = whyNot(first, second);
    if (missing.isPresent()) {
      return missing.get();
    }
    int p = position(first);
    int q = position(second);
    Estimate estimate = estimate(effects[p] - effects[q], Math.sqrt(covariance.ofDifference(p, q)));
    return intervals.compared(estimate);
  }

  /**
   * A combination of model effects, such as the mean of one group less the mean of another.
   *
   * @param models numbers of the models
   * @param weights weight of each; they add up to zero inside every component
   * @return the combination; empty when a model is in no component or weights do not cancel in a
   *     component
   */
  public Optional<Estimate> combination(int[] models, double[] weights) {
    double[] sums = new double[components()];
    double[] sizes = new double[components()];
    int[] positions = new int[models.length];
    double value = 0;
    for (int k = 0; k < models.length; k++) {
      int component = basis.components.ofModel[models[k]];
      if (component == Components.NONE) {
        return Optional.empty();
      }
      positions[k] = position(models[k]);
      sums[component] += weights[k];
      sizes[component] += Math.abs(weights[k]);
      value += weights[k] * effects[positions[k]];
    }
    for (int component = 0; component < sums.length; component++) {
      if (Math.abs(sums[component]) > 1e-9 * sizes[component]) {
        return Optional.empty();
      }
    }
    return Optional.of(estimate(value, Math.sqrt(covariance.ofCombination(positions, weights))));
  }

  /** Which arms of a fit are taken. */
  @FunctionalInterface
  public interface ArmChoice {
    /** Whether the arm of this model in this test is taken. */
    boolean takes(int test, int model);
  }

  /**
   * The same equations over some of the arms, each with the variance that this fit gives it: error
   * and heterogeneity are not estimated again, so a difference by fewer tests is never surer than
   * by all. Its intervals are normal ones; where this fit's are by t, so should be those made from
   * it.
   */
  public NetworkFit within(ArmChoice choice) {
    TestRows rows = basis.rows;
    int[] test = new int[rows.arms];
    int[] model = new int[rows.arms];
    double[] y = new double[rows.arms];
    double[] variance = new double[rows.arms];
    int n = 0;
    for (int t = 0; t < rows.tests; t++) {
      for (int i = rows.start[t]; i < rows.start[t + 1]; i++) {
        if (choice.takes(rows.testNumber[t], rows.model[i])) {
          test[n] = rows.testNumber[t];
          model[n] = rows.model[i];
          y[n] = rows.y[i];
          variance[n++] = scale / point.weights[i];
        }
      }
    }
    Arms some =
        new Arms(
            basis.arms.tests(),
            basis.arms.models(),
            Arrays.copyOf(test, n),
            Arrays.copyOf(model, n),
            Arrays.copyOf(y, n),
            Arrays.copyOf(variance, n));
    NetworkFit fit = NetworkFitter.fit(some, FitOptions.of(VarianceMethod.NONE));
    return new NetworkFit(fit, intervals.in(fit.basis));
  }

  /** Direct and indirect evidence on the difference of two models, first minus second. */
  public EvidenceSplit evidence(int first, int second) {
    return new EvidenceSplitter(this).split(first, second);
  }

  /**
   * Every compared model with its effect and P-score, component by component, the best first. Takes
   * as many steps as a component has pairs of models.
   */
  public List<ModelStanding> standings() {
    return new StandingTable(this).rows();
  }

  /**
   * Intervals of the ranks of some models among themselves, simultaneous for all of them; empty
   * where no interval can be given.
   *
   * @param models of one component, at least one
   * @param level such as 0.95
   */
  public Optional<RankIntervals> ranks(int[] models, double level, SplittableRandom random) {
    return new FitRanks(this).of(models, level, random);
  }

  /**
   * The difference of two comparable models by the scatter of runs alone: how sure it is for the
   * very sets, cars and days that were tested, and for no other. Student's t with Satterthwaite's
   * degrees of freedom where the runs behind the variances are known. Empty where no run-level
   * variance is.
   */
  public Optional<Estimate> byRunsAlone(int first, int second) {
    return RunsAlone.of(this, RemovalTarget.difference(this, first, second));
  }

  /** The effect of a model of a component by the scatter of runs alone, as {@link #byRunsAlone}. */
  public Optional<Estimate> effectByRunsAlone(int model) {
    return RunsAlone.of(this, RemovalTarget.effect(this, model));
  }

  /** What each estimate hangs on; small sums over every test are made first. */
  public Influence influence() {
    return new Influence(this);
  }

  /**
   * Effect of a model less the mean effect of its component's models; empty for a model in no
   * component.
   */
  public Optional<Estimate> effect(int model) {
    if (basis.components.ofModel[model] == Components.NONE) {
      return Optional.empty();
    }
    int p = position(model);
    return Optional.of(estimate(effects[p], Math.sqrt(covariance.ofCentred(p))));
  }

  /**
   * Effect of a test: the result it would give an average model of its component. Empty for a test
   * of fewer than two models.
   */
  public OptionalDouble testEffect(int test) {
    int at = Arrays.binarySearch(basis.rows.testNumber, test);
    return at < 0 ? OptionalDouble.empty() : OptionalDouble.of(testEffects[at]);
  }

  Basis basis() {
    return basis;
  }

  double[] weights() {
    return point.weights;
  }

  EffectCovariance covariance() {
    return covariance;
  }

  /** Factor from variances in units of the fit to variances of the results. */
  double scale() {
    return scale;
  }

  int position(int model) {
    return basis.laplacian.order.position[model];
  }

  double effectAt(int position) {
    return effects[position];
  }

  /**
   * From standard errors to intervals and chances; empty where no interval can be given, as without
   * residual degrees of freedom.
   */
  public Optional<IntervalScale> intervals() {
    return Optional.ofNullable(intervals.scale());
  }

  /**
   * The same fit, its intervals by what other disciplines show as well: their generalised Q over
   * its degrees of freedom stands beside this one's and counts as so many degrees of freedom more.
   * The fit itself where it has no residual degrees of freedom, knows no run-level variance, or
   * takes intervals by convention.
   */
  public NetworkFit sharing(SharedVariance others) {
    return new NetworkFit(this, intervals.sharing(others));
  }

  /** An estimate with this standard error, or with none where no interval can be given. */
  Estimate estimate(double value, double se) {
    return intervals.scale() == null
        ? Estimate.alone(value)
        : new Estimate(value, OptionalDouble.of(se), intervals.scale());
  }

  GlsPoint point() {
    return point;
  }

  Optional<NotCompared> whyNot(int first, int second) {
    for (int model : new int[] {first, second}) {
      if (basis.components.ofModel[model] == Components.NONE) {
        return Optional.of(
            new NotCompared(
                model,
                basis.rows.seen[model]
                    ? NotCompared.Reason.ONLY_ALONE
                    : NotCompared.Reason.NOT_TESTED));
      }
    }
    return basis.components.ofModel[first] == basis.components.ofModel[second]
        ? Optional.empty()
        : Optional.of(new NotCompared(first, NotCompared.Reason.SEPARATE_PARTS));
  }
}
