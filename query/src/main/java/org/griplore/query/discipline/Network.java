package org.griplore.query.discipline;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.IntPredicate;
import org.griplore.query.evidence.Exclusions;
import org.griplore.query.network.Arms;
import org.griplore.query.network.Estimate;
import org.griplore.query.network.EvidenceSplit;
import org.griplore.query.network.ModelComparison;
import org.griplore.query.network.ModelStanding;
import org.griplore.query.network.NetworkFit;
import org.griplore.query.network.NotCompared;

/**
 * The network of one discipline under one filter: which results went in, what was left out, and the
 * fit. Models and tests are given and told by their positions in the evidence; the fit numbers only
 * those it holds, so it stays valid when others join the archive.
 */
public final class Network {
  private final DisciplineArms arms;
  private final Exclusions excluded;
  private final int[] models;
  private final int[] tests;
  private final NetworkFit fit;
  private List<ModelStanding> standings;
  private StepsOfArchive steps;
  private HangsOn hangsOn;
  private Consistency consistency;
  private List<ComponentRanks> ranks;

  Network(DisciplineArms arms, Numbered numbered, NetworkFit fit) {
    this.arms = arms;
    this.models = numbered.models;
    this.tests = numbered.tests;
    this.fit = fit;
    this.excluded = new Exclusions();
    arms.excluded().list().forEach(left -> excluded.add(left.reason(), left.count()));
    if (fit.singleArmTests() > 0) {
      excluded.add("tests with one such result only", fit.singleArmTests());
    }
  }

  private Network(Network whole, DisciplineArms arms, NetworkFit fit) {
    this.arms = arms;
    this.models = whole.models;
    this.tests = whole.tests;
    this.fit = fit;
    this.excluded = whole.excluded;
  }

  /**
   * What some of the entries say by themselves, with error and heterogeneity as all of them show;
   * empty when no test has two of them. What was left out is told of the whole.
   */
  public Optional<Network> within(IntPredicate entries) {
    DisciplineArms some = arms.within(entries);
    if (!some.hasPair()) {
      return Optional.empty();
    }
    Set<Long> taken = new HashSet<>();
    for (int i = 0; i < some.size(); i++) {
      taken.add((long) Arrays.binarySearch(tests, some.test()[i]) << 32 | own(some.model()[i]));
    }
    return Optional.of(
        new Network(
            this, some, fit.within((test, model) -> taken.contains((long) test << 32 | model))));
  }

  /** Arms with models and tests numbered without gaps, in the order of the evidence. */
  static final class Numbered {
    final int[] models;
    final int[] tests;
    final Arms arms;

    Numbered(DisciplineArms from) {
      models = Arrays.stream(from.model()).sorted().distinct().toArray();
      tests = Arrays.stream(from.test()).sorted().distinct().toArray();
      RunVariances drawn = RunVariances.of(from.variance(), from.runs());
      arms =
          new Arms(
              tests.length,
              models.length,
              Arrays.stream(from.test()).map(t -> Arrays.binarySearch(tests, t)).toArray(),
              Arrays.stream(from.model()).map(m -> Arrays.binarySearch(models, m)).toArray(),
              from.y(),
              drawn.variance(),
              drawn.df());
    }
  }

  /** The scale of its figures. */
  public ComparisonScale measure() {
    return arms.measure();
  }

  /** The results that went in. */
  public DisciplineArms arms() {
    return arms;
  }

  /** Entries whose results went in. */
  public List<Integer> entries() {
    return Arrays.stream(arms.entry()).boxed().toList();
  }

  /** What was left out, with reasons. */
  public Exclusions excluded() {
    return excluded;
  }

  /** Number of models with results. */
  public int models() {
    return models.length;
  }

  /** Number of tests with at least two models. */
  public int tests() {
    return fit.tests();
  }

  /** Number of groups that no test connects. */
  public int components() {
    return fit.components();
  }

  /** Part of a model; empty when it was never tested against another. */
  public OptionalInt component(int model) {
    int own = own(model);
    return own < 0 ? OptionalInt.empty() : fit.component(own);
  }

  /** Heterogeneity variance per arm; empty when it cannot be told from the error. */
  public OptionalDouble tauSquared() {
    return fit.tauSquared();
  }

  /**
   * Variance of one result about what its test and model let expect: heterogeneity and the mean
   * variance of runs, or where those are not known the residual variance; 0 when nothing is known.
   */
  public double resultVariance() {
    double runs = Arrays.stream(arms.variance()).filter(Double::isFinite).average().orElse(0);
    OptionalDouble heterogeneity = tauSquared();
    return heterogeneity.isPresent()
        ? heterogeneity.getAsDouble() + runs
        : residualVariance().orElse(0);
  }

  /** Heterogeneity and error variance together per arm, where no run-level variance is known. */
  public OptionalDouble residualVariance() {
    return fit.residualVariance();
  }

  /** The difference of two models, first minus second. */
  public ModelComparison compare(int first, int second) {
    for (int model : new int[] {first, second}) {
      if (own(model) < 0) {
        return new NotCompared(model, NotCompared.Reason.NOT_TESTED);
      }
    }
    ModelComparison told = fit.compare(own(first), own(second));
    return told instanceof NotCompared not
        ? new NotCompared(models[not.model()], not.reason())
        : told;
  }

  /** Direct and indirect evidence on two models; empty when nothing connects them. */
  public Optional<EvidenceSplit> evidence(int first, int second) {
    return compare(first, second) instanceof NotCompared
        ? Optional.empty()
        : Optional.of(fit.evidence(own(first), own(second)));
  }

  /** Every compared model with its effect and P-score, component by component, the best first. */
  public synchronized List<ModelStanding> standings() {
    if (standings == null) {
      standings =
          fit.standings().stream()
              .map(
                  s ->
                      new ModelStanding(
                          models[s.model()], s.component(), s.effect(), s.score(), s.tests()))
              .toList();
    }
    return standings;
  }

  /** All generation steps of the archive that it can estimate. */
  public synchronized StepsOfArchive steps(org.griplore.query.evidence.Evidence evidence) {
    if (steps == null) {
      steps = StepsOfArchive.of(this, evidence.models());
    }
    return steps;
  }

  /**
   * Effect of a model less the mean effect of its component's models; empty when it has no
   * component.
   */
  public Optional<Estimate> effect(int model) {
    int own = own(model);
    return own < 0 ? Optional.empty() : fit.effect(own);
  }

  /** The result a test would give an average model of its component; empty when it has no pair. */
  public OptionalDouble testEffect(int test) {
    int own = Arrays.binarySearch(tests, test);
    return own < 0 ? OptionalDouble.empty() : fit.testEffect(own);
  }

  /**
   * A combination of model effects, such as the mean of one group less the mean of another.
   *
   * @param of positions of the models
   * @param weights weight of each; they add up to zero inside every component
   * @return the combination; empty when a model is in no component or weights do not cancel in a
   *     component
   */
  public Optional<Estimate> combination(int[] of, double[] weights) {
    int[] own = Arrays.stream(of).map(this::own).toArray();
    return Arrays.stream(own).anyMatch(m -> m < 0)
        ? Optional.empty()
        : fit.combination(own, weights);
  }

  /** Whether its tests tell the same. */
  public synchronized Consistency consistency() {
    if (consistency == null) {
      consistency = Consistency.of(fit);
    }
    return consistency;
  }

  /** What its estimates hang on; made when first asked for. */
  public synchronized HangsOn hangsOn(org.griplore.query.evidence.Evidence evidence) {
    if (hangsOn == null) {
      hangsOn = new HangsOn(this, fit, evidence);
    }
    return hangsOn;
  }

  /** Intervals of the ranks in each component, in the order of the components. */
  public synchronized List<ComponentRanks> ranks() {
    if (ranks == null) {
      ranks = ComponentRanks.of(standings(), fit, this::own);
    }
    return ranks;
  }

  /** Whether intervals are given at all: not where no residual degree of freedom is left. */
  public boolean givesIntervals() {
    return fit.intervals().isPresent();
  }

  /** The difference of two comparable models by the scatter of runs alone. */
  public Optional<Estimate> byRunsAlone(int first, int second) {
    return fit.byRunsAlone(own(first), own(second));
  }

  /** The effect of a model of a component by the scatter of runs alone. */
  public Optional<Estimate> effectByRunsAlone(int model) {
    return fit.effectByRunsAlone(own(model));
  }

  /** Number that the fit gives a model; negative when it has no result. */
  int own(int model) {
    return Arrays.binarySearch(models, model);
  }

  /** Position in the evidence of each model of the fit. */
  int[] modelPositions() {
    return models;
  }

  /** Position in the evidence of each test of the fit. */
  int[] testPositions() {
    return tests;
  }
}
