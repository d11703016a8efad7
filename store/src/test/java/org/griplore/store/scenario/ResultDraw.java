package org.griplore.store.scenario;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.griplore.store.vocabulary.Direction;
import org.griplore.store.vocabulary.Scale;

/**
 * Runs one test: level, heterogeneity and run errors on top of the true effects, then the places.
 */
final class ResultDraw {
  /** How often a tyre has no result in a discipline that the others have. */
  private static final double DROP_OUT = 0.02;

  private final Scenario scenario;
  private final Theme theme;
  private final ScenarioVehicle vehicle;
  private final String size;
  private final double surfaceC;
  private final Optional<String> maker;
  private final Random random;

  ResultDraw(
      Scenario scenario,
      Theme theme,
      ScenarioVehicle vehicle,
      String size,
      double surfaceC,
      Optional<String> maker,
      Random random) {
    this.scenario = scenario;
    this.theme = theme;
    this.vehicle = vehicle;
    this.size = size;
    this.surfaceC = surfaceC;
    this.maker = maker;
    this.random = random;
  }

  /** The entries with results and places, best overall first. */
  List<SimulatedEntry> entries(List<ScenarioModel> field, List<String> disciplines) {
    Map<ScenarioModel, Map<String, SimulatedResult>> all = new LinkedHashMap<>();
    field.forEach(model -> all.put(model, new LinkedHashMap<>()));
    for (String key : disciplines) {
      DisciplineTruth d = scenario.discipline(key);
      double level = level(d);
      Map<ScenarioModel, SimulatedResult> column = new LinkedHashMap<>();
      for (ScenarioModel model : field) {
        SimulatedResult result = run(d, level, model);
        boolean mayDrop = !key.equals("wet-braking") && !key.equals("snow-braking");
        if (random.nextDouble() >= DROP_OUT || !mayDrop) {
          column.put(model, result);
        }
      }
      placed(column, d.better()).forEach((model, result) -> all.get(model).put(key, result));
    }
    Map<ScenarioModel, SimulatedResult> totals = new LinkedHashMap<>();
    Totals points = new Totals(scenario, theme, disciplines);
    points.of(all).forEach((model, total) -> totals.put(model, bare(total, 2)));
    placed(totals, Direction.HIGH).forEach((m, total) -> all.get(m).put("overall", total));
    List<SimulatedEntry> entries = new ArrayList<>();
    all.forEach((model, results) -> entries.add(new SimulatedEntry(model, results)));
    entries.sort(
        Comparator.comparingInt((SimulatedEntry e) -> e.results().get("overall").place())
            .thenComparing(e -> e.model().fullName()));
    return List.copyOf(entries);
  }

  /** The level of this test: its own draw, and what size, mass and temperature do to all tyres. */
  private double level(DisciplineTruth d) {
    double own = d.testSd() * random.nextGaussian();
    int rim = ScenarioVehicle.rim(size);
    int width = ScenarioVehicle.width(size);
    return own
        + switch (d.key()) {
          case "price" -> 0.13 * (rim - 16);
          case "mass" -> 0.055 * (rim - 16) + 0.004 * (width - 205);
          case "straight-aquaplaning", "curved-aquaplaning" -> -0.0015 * (width - 215);
          case "energy-use" -> 0.6 * StrictMath.log(vehicle.massKg() / 2050.0);
          case "wear" -> -0.4 * StrictMath.log(vehicle.massKg() / 1500.0);
          case "wet-braking" -> -0.003 * (surfaceC - DisciplineTruth.REFERENCE_C);
          default -> 0;
        };
  }

  private SimulatedResult run(DisciplineTruth d, double level, ScenarioModel model) {
    double effect = scenario.effect(model, d.key(), surfaceC);
    effect += d.heterogeneitySd() * random.nextGaussian();
    if (maker.isPresent() && maker.get().equals(model.maker())) {
      effect += scenario.makerBias() * d.heterogeneitySd();
    }
    int runs = d.runs();
    double sum = 0;
    double squares = 0;
    for (int i = 0; i < runs; i++) {
      double error = d.repeatability() * random.nextGaussian();
      sum += error;
      squares += error * error;
    }
    double value = d.value(level, runs == 0 ? effect : effect + sum / runs);
    OptionalDouble spread = OptionalDouble.empty();
    if (runs > 1) {
      double sd = StrictMath.sqrt(Math.max(0, squares - sum * sum / runs) / (runs - 1));
      spread = OptionalDouble.of(d.scale() == Scale.RATIO ? value * sd : sd);
    }
    return new SimulatedResult(value, rounded(value, d.digits()), runs, spread, 0);
  }

  private static SimulatedResult bare(double value, int digits) {
    return new SimulatedResult(value, rounded(value, digits), 0, OptionalDouble.empty(), 0);
  }

  private static Map<ScenarioModel, SimulatedResult> placed(
      Map<ScenarioModel, SimulatedResult> column, Direction better) {
    Map<ScenarioModel, SimulatedResult> placed = new HashMap<>();
    column.forEach(
        (model, r) -> {
          long ahead =
              column.values().stream()
                  .filter(o -> better.sign() * (o.printed() - r.printed()) > 0)
                  .count();
          placed.put(
              model,
              new SimulatedResult(
                  r.value(), r.printed(), r.runs(), r.spread(), 1 + Math.toIntExact(ahead)));
        });
    return placed;
  }

  /** Half up, to decimals as printed. */
  static double rounded(double value, int digits) {
    return BigDecimal.valueOf(value).setScale(digits, RoundingMode.HALF_UP).doubleValue();
  }
}
