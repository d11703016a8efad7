package org.griplore.store.scenario;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.griplore.store.vocabulary.Scale;

/**
 * The tester's total: in each discipline the best gets 9.5 points and the others lose one point for
 * each unit of distance (2.5 line standard deviations); the mean is weighted by importance.
 */
final class Totals {
  private static final double BEST = 9.5;
  private final Scenario scenario;
  private final Theme theme;
  private final List<String> disciplines;

  Totals(Scenario scenario, Theme theme, List<String> disciplines) {
    this.scenario = scenario;
    this.theme = theme;
    this.disciplines = disciplines;
  }

  /** Totals from 1 to 10 of a field; disciplines without a result are left out of a tyre's mean. */
  Map<ScenarioModel, Double> of(Map<ScenarioModel, Map<String, SimulatedResult>> field) {
    Map<ScenarioModel, Double> totals = new LinkedHashMap<>();
    for (ScenarioModel model : field.keySet()) {
      double sum = 0;
      double weights = 0;
      for (String key : disciplines) {
        SimulatedResult result = field.get(model).get(key);
        if (result == null) {
          continue;
        }
        DisciplineTruth d = scenario.discipline(key);
        double best =
            field.values().stream()
                .filter(r -> r.containsKey(key))
                .mapToDouble(r -> d.shown(r.get(key).printed()))
                .max()
                .orElseThrow();
        double points = BEST - (best - d.shown(result.printed())) / unit(d);
        sum += weight(key) * Math.max(1, points);
        weights += weight(key);
      }
      totals.put(model, sum / weights);
    }
    return totals;
  }

  private static double unit(DisciplineTruth d) {
    double unit = 2.5 * d.lineSd();
    return d.scale() == Scale.RATIO ? unit : Math.max(1, unit);
  }

  private double weight(String discipline) {
    return switch (discipline) {
      case "wet-braking" -> 3;
      case "snow-braking" -> theme == Theme.WINTER ? 3 : 2;
      case "dry-braking", "wet-handling", "snow-handling" -> 2;
      case "price", "mass" -> 0.5;
      default -> 1;
    };
  }
}
