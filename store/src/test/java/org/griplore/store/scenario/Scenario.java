package org.griplore.store.scenario;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/**
 * The truth behind the invented archive. True effects are exact; {@link #simulate} draws an archive
 * of test reports from them.
 *
 * <p>A model's true effect in a discipline is the level of its line plus the gains of its
 * generations plus the offset of its season class at 15 degrees Celsius. Line levels and gains are
 * independent normal draws, except that those of wet braking and rolling resistance are correlated
 * with {@link #TRADE_OFF}, and that a share of some disciplines follows another ({@link Loading}).
 */
public final class Scenario {
  /** Correlation of line levels, and of gains, between wet braking and rolling resistance. */
  public static final double TRADE_OFF = -0.6;

  /** The seed of the stated truth, which the demo archive is made from. */
  public static final long STATED = 20150504L;

  /** Discipline follower takes share times the effect of the leader on top of its own. */
  record Loading(String follower, String leader, double share) {}

  static final List<Loading> LOADINGS =
      List.of(
          new Loading("wet-handling", "wet-braking", 0.20),
          new Loading("wet-circle", "wet-braking", 0.35),
          new Loading("wet-feel", "wet-braking", 4.0),
          new Loading("energy-use", "rolling-resistance", 0.20));

  private final List<ScenarioModel> models;
  private final Map<String, DisciplineTruth> disciplines;
  private final Map<String, Map<String, Double>> withinSeason;
  private final double makerBias;

  private Scenario(
      List<ScenarioModel> models,
      Map<String, DisciplineTruth> disciplines,
      Map<String, Map<String, Double>> withinSeason,
      double makerBias) {
    this.models = models;
    this.disciplines = disciplines;
    this.withinSeason = withinSeason;
    this.makerBias = makerBias;
  }

  /** The stated truth of the demo archive. */
  public static Scenario stated() {
    return drawn(STATED);
  }

  /** Another truth with the same makers, lines, models and spreads; the seed fixes it. */
  public static Scenario drawn(long seed) {
    List<ScenarioModel> models = Lineup.models();
    Map<String, DisciplineTruth> disciplines = new LinkedHashMap<>();
    Catalogue.DISCIPLINES.forEach(d -> disciplines.put(d.key(), d));
    Map<String, Map<String, Double>> effects = new LinkedHashMap<>();
    Random random = new Random(seed);
    Map<String, Double> previous = Map.of();
    for (ScenarioModel model : models) {
      boolean first = model.generation() == 1;
      Map<String, Double> own = new LinkedHashMap<>(first ? Map.of() : previous);
      draws(random, first).forEach((discipline, draw) -> own.merge(discipline, draw, Double::sum));
      effects.put(model.fullName(), Map.copyOf(own));
      previous = own;
    }
    return new Scenario(models, Map.copyOf(disciplines), effects, 0.5);
  }

  /** The same truth without makers' favour and without temperature slopes. */
  public Scenario plain() {
    Map<String, DisciplineTruth> flat = new LinkedHashMap<>();
    disciplines.forEach((key, d) -> flat.put(key, d.withoutSlopes()));
    return new Scenario(models, Map.copyOf(flat), withinSeason, 0);
  }

  /** Line levels (first generation) or gains of one generation, loadings included. */
  private static Map<String, Double> draws(Random random, boolean first) {
    Map<String, Double> standard = new LinkedHashMap<>();
    Catalogue.DISCIPLINES.forEach(d -> standard.put(d.key(), random.nextGaussian()));
    double wet = standard.get("wet-braking");
    double free = StrictMath.sqrt(1 - TRADE_OFF * TRADE_OFF);
    standard.merge("rolling-resistance", 0.0, (z, zero) -> TRADE_OFF * wet + free * z);
    Map<String, Double> result = new LinkedHashMap<>();
    for (DisciplineTruth d : Catalogue.DISCIPLINES) {
      double z = standard.get(d.key());
      result.put(d.key(), first ? d.lineSd() * z : d.stepMean() + d.stepSd() * z);
    }
    Map<String, Double> leaders = Map.copyOf(result);
    for (Loading l : LOADINGS) {
      result.merge(l.follower(), l.share() * leaders.get(l.leader()), Double::sum);
    }
    return result;
  }

  /** All models, line by line, oldest generation first. */
  public List<ScenarioModel> models() {
    return models;
  }

  /** The truths of the disciplines in catalogue order. */
  public List<DisciplineTruth> disciplines() {
    return Catalogue.DISCIPLINES.stream().map(d -> disciplines.get(d.key())).toList();
  }

  /** The truth of one discipline. */
  public DisciplineTruth discipline(String key) {
    DisciplineTruth truth = disciplines.get(key);
    if (truth == null) {
      throw new IllegalArgumentException("the scenario has no discipline " + key);
    }
    return truth;
  }

  /**
   * By how many heterogeneity standard deviations a maker's own test favours the maker's models:
   * 0.5, or 0 in a {@link #plain} scenario.
   */
  public double makerBias() {
    return makerBias;
  }

  /** True effect against an average summer model at 15 degrees Celsius, positive when better. */
  public double effect(ScenarioModel model, String discipline) {
    return effect(model, discipline, DisciplineTruth.REFERENCE_C);
  }

  /** True effect at a surface temperature in degrees Celsius. */
  public double effect(ScenarioModel model, String discipline, double surfaceC) {
    return withinSeason.get(model.fullName()).get(discipline)
        + discipline(discipline).seasonOffset(model.season(), surfaceC);
  }

  /** The exact step from one model to another in a discipline: newer minus older. */
  public TrueStep step(String older, String newer, String discipline) {
    ScenarioModel from = model(older);
    ScenarioModel to = model(newer);
    double step = effect(to, discipline) - effect(from, discipline);
    return new TrueStep(
        to.fullLine(), older, newer, discipline, discipline(discipline).scale(), step);
  }

  /** All steps from predecessor to successor, in all disciplines. */
  public List<TrueStep> steps() {
    List<TrueStep> steps = new ArrayList<>();
    for (ScenarioModel model : models) {
      model
          .follows()
          .ifPresent(
              older ->
                  disciplines().forEach(d -> steps.add(step(older, model.fullName(), d.key()))));
    }
    return List.copyOf(steps);
  }

  /** The model of a full name (maker and name). */
  public ScenarioModel model(String fullName) {
    return models.stream()
        .filter(m -> m.fullName().equals(fullName))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no model " + fullName));
  }

  /**
   * A fresh archive of 60 test reports from 2015 to 2024 drawn from this truth, in order of date.
   * The seed fixes fields, sizes, disciplines, test levels, heterogeneity and run errors.
   */
  public List<SimulatedReport> simulate(long seed) {
    return new ArchiveSimulator(this, seed).reports();
  }
}
