package org.griplore.query.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.griplore.query.SimulatedEvidence;
import org.griplore.query.discipline.Network;
import org.griplore.query.discipline.Networks;
import org.griplore.query.evidence.Evidence;
import org.griplore.query.evidence.Filter;
import org.griplore.query.evidence.Likeness;
import org.griplore.query.network.VarianceMethod;
import org.griplore.query.option.Choices;
import org.griplore.query.option.Option;
import org.griplore.query.statistics.Interval;
import org.griplore.store.scenario.Scenario;
import org.griplore.store.scenario.ScenarioModel;
import org.junit.jupiter.api.Test;

/** Tables of archives simulated from a stated, invented truth. */
class TableTruthTest {
  private static final List<String> DISCIPLINES =
      List.of("wet-braking", "dry-braking", "rolling-resistance", "exterior-noise");

  private static final class Count {
    int covered;
    int all;
  }

  private static Likeness likeness(String size) {
    List<Option> options =
        List.of(Option.once("size", "SIZE", "size", null), Option.once("mass", "KG", "mass", null));
    return Likeness.of(Choices.of("table", "", options, Map.of("size", List.of(size))));
  }

  /**
   * Over seeded archives, 95 % intervals of measured, expected and mixed differences each cover the
   * true difference between 92 and 98 % of the time.
   */
  @Test
  void intervalsCoverTheTruthWhateverTheBasis() {
    Scenario scenario = Scenario.stated().plain();
    Map<String, ScenarioModel> truth = new HashMap<>();
    scenario.models().forEach(model -> truth.put(model.fullName(), model));
    Map<String, Count> counts = new TreeMap<>();
    for (long seed = 1; seed <= 60; seed++) {
      Evidence evidence = SimulatedEvidence.of(scenario, seed);
      Filter filter = new Filter(Choices.of("table", "", Filter.OPTIONS, Map.of()), evidence);
      for (String discipline : DISCIPLINES) {
        Network all =
            new Networks().of(evidence, discipline, filter, VarianceMethod.REML).orElseThrow();
        Network like =
            all.within(entry -> likeness("205/55 R16").takes(evidence, entry)).orElse(null);
        List<Integer> models = new ArrayList<>();
        for (int i = 0; i < evidence.models().size(); i += 3) {
          models.add(i);
        }
        Footing footing = new Footing(all, like, models, null);
        for (int row = 1; row < models.size(); row++) {
          if (footing.basis(row) == FigureBasis.NONE
              || footing.basis(row - 1) == FigureBasis.NONE) {
            continue;
          }
          double[] weights = new double[models.size()];
          weights[row] = 1;
          weights[row - 1] = -1;
          Interval interval = footing.combination(weights).interval(0.95).orElseThrow();
          double difference =
              scenario.effect(truth.get(name(evidence, models.get(row))), discipline)
                  - scenario.effect(truth.get(name(evidence, models.get(row - 1))), discipline);
          Count count =
              counts.computeIfAbsent(
                  footing.basis(row) == footing.basis(row - 1) ? footing.basis(row).key() : "mixed",
                  none -> new Count());
          count.all++;
          count.covered += interval.contains(difference) ? 1 : 0;
        }
      }
    }
    assertThat(counts).containsOnlyKeys("measured", "expected", "mixed");
    counts.forEach(
        (basis, count) -> {
          assertThat(count.all).as(basis).isGreaterThan(300);
          assertThat((double) count.covered / count.all)
              .as("%s: %d of %d", basis, count.covered, count.all)
              .isBetween(0.92, 0.98);
        });
  }

  private static String name(Evidence evidence, int model) {
    return evidence.models().get(model).name();
  }

  /** When every test is like, the footing is the network itself. */
  @Test
  void whereEveryTestIsLikeNothingChanges() {
    Evidence evidence = SimulatedEvidence.of(Scenario.stated().plain(), 5);
    Filter filter = new Filter(Choices.of("table", "", Filter.OPTIONS, Map.of()), evidence);
    Network all =
        new Networks().of(evidence, "wet-braking", filter, VarianceMethod.REML).orElseThrow();
    Network again = all.within(entry -> true).orElseThrow();
    List<Integer> models = List.of(3, 4, 10, 11);
    Footing whole = new Footing(all, all, models, null);
    Footing alike = new Footing(all, again, models, null);
    double[] weights = {0.5, 0.5, -0.25, -0.75};
    assertThat(alike.combination(weights).value())
        .isCloseTo(whole.combination(weights).value(), within(1e-10));
    assertThat(alike.combination(weights).se().orElseThrow())
        .isCloseTo(
            all.combination(new int[] {3, 4, 10, 11}, weights).orElseThrow().se().orElseThrow(),
            within(1e-8));
  }
}
