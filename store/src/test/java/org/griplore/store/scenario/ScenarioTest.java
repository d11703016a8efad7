package org.griplore.store.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ScenarioTest {
  private final Scenario stated = Scenario.stated();

  @Test
  void lineupIsAsStated() {
    List<ScenarioModel> models = stated.models();
    assertThat(models).hasSize(45);
    assertThat(models.stream().map(ScenarioModel::fullName).distinct()).hasSize(45);
    assertThat(models.stream().map(ScenarioModel::fullLine).distinct()).hasSize(14);
    assertThat(models.stream().map(ScenarioModel::maker).distinct()).hasSize(9);
    assertThat(models).allMatch(m -> m.launched() >= 2011 && m.launched() <= 2022);
    for (ScenarioModel m : models) {
      Optional<Integer> older = m.follows().map(f -> stated.model(f).launched());
      assertThat(older.orElse(0)).isLessThan(m.launched());
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {Scenario.STATED, 1, 2, 3})
  void archiveHasItsStatedShape(long seed) {
    List<SimulatedReport> reports = stated.simulate(seed);
    assertThat(reports).hasSize(60);
    assertThat(reports.stream().map(SimulatedReport::key).distinct()).hasSize(60);
    assertThat(reports.stream().filter(r -> r.entries().size() == 3)).hasSize(2);
    assertThat(reports).allMatch(r -> r.entries().size() >= 3 && r.entries().size() <= 14);
    assertThat(reports.stream().map(r -> r.date().year()).distinct()).hasSize(10);
    assertThat(reports.stream().flatMap(r -> r.disciplines().stream()).distinct())
        .hasSizeGreaterThanOrEqualTo(20);
    assertThat(reports).isEqualTo(stated.simulate(seed));
    for (SimulatedReport r : reports) {
      int latest = r.date().year();
      assertThat(r.entries()).allMatch(e -> e.model().launched() <= latest);
      assertThat(r.entries().get(0).results().get("overall").place()).isEqualTo(1);
    }
  }

  @Test
  void stepsAddUpAlongALine() {
    String discipline = "wet-braking";
    double long1 = stated.step("Velmora Aurelis 3", "Velmora Aurelis 6", discipline).step();
    double sum =
        stated.steps().stream()
            .filter(s -> s.line().equals("Velmora Aurelis") && s.discipline().equals(discipline))
            .mapToDouble(TrueStep::step)
            .sum();
    assertThat(sum).isCloseTo(long1, within(1e-12));
  }

  /** 31 steps in each of 200 truths: the standard error of the correlation is about 0.008. */
  @Test
  void gainsOfWetBrakingAndRollingResistanceAreTradedOffAsStated() {
    List<Double> wet = new ArrayList<>();
    List<Double> rolling = new ArrayList<>();
    for (long seed = 1; seed <= 200; seed++) {
      for (TrueStep s : Scenario.drawn(seed).steps()) {
        switch (s.discipline()) {
          case "wet-braking" -> wet.add(s.step());
          case "rolling-resistance" -> rolling.add(s.step());
          default -> {}
        }
      }
    }
    assertThat(correlation(wet, rolling)).isCloseTo(Scenario.TRADE_OFF, within(0.035));
    DisciplineTruth d = stated.discipline("wet-braking");
    assertThat(wet.stream().mapToDouble(Double::doubleValue).average().orElseThrow())
        .isCloseTo(d.stepMean(), within(4 * d.stepSd() / Math.sqrt(wet.size())));
  }

  /** Within tests, simulated differences scatter about the true step with the stated variance. */
  @ParameterizedTest(name = "{0}")
  @ValueSource(strings = {"wet-braking", "rolling-resistance", "exterior-noise"})
  void simulatedDifferencesAreUnbiasedWithTheStatedSpread(String discipline) {
    Scenario plain = stated.plain();
    DisciplineTruth d = plain.discipline(discipline);
    double sum = 0;
    double squares = 0;
    int n = 0;
    for (long seed = 1; seed <= 200; seed++) {
      for (SimulatedReport r : plain.simulate(seed)) {
        Map<String, SimulatedResult> first = r.entries().get(0).results();
        Map<String, SimulatedResult> last = r.entries().get(r.entries().size() - 1).results();
        // Ordered by name, not by result: a winner's errors are not centred on zero.
        boolean swap = r.entries().get(0).model().fullName().compareTo(lastName(r)) > 0;
        if (first.containsKey(discipline) && last.containsKey(discipline)) {
          double shown =
              d.shown(first.get(discipline).value()) - d.shown(last.get(discipline).value());
          double truth =
              plain.effect(r.entries().get(0).model(), discipline)
                  - plain.effect(r.entries().get(r.entries().size() - 1).model(), discipline);
          double error = swap ? truth - shown : shown - truth;
          sum += error;
          squares += error * error;
          n++;
        }
      }
    }
    double variance =
        2
            * (d.heterogeneitySd() * d.heterogeneitySd()
                + d.repeatability() * d.repeatability() / d.runs());
    assertThat(sum / n).isCloseTo(0, within(5 * Math.sqrt(variance / n)));
    // First and last are chosen by result, which widens the errors a little.
    assertThat(squares / n / variance).isBetween(0.9, 1.3);
  }

  @Test
  void plainScenarioHasNeitherFavourNorSlopes() {
    Scenario plain = stated.plain();
    assertThat(plain.makerBias()).isZero();
    ScenarioModel winter = stated.model("Ostran\u00e9 Givralle II");
    assertThat(plain.effect(winter, "wet-braking", 30))
        .isEqualTo(plain.effect(winter, "wet-braking", 0));
    assertThat(stated.effect(winter, "wet-braking", 30))
        .isCloseTo(stated.effect(winter, "wet-braking", 0) - 30 * 0.0065, within(1e-12));
  }

  private static String lastName(SimulatedReport r) {
    return r.entries().get(r.entries().size() - 1).model().fullName();
  }

  private static double correlation(List<Double> x, List<Double> y) {
    double mx = x.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
    double my = y.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
    double xy = 0;
    double xx = 0;
    double yy = 0;
    for (int i = 0; i < x.size(); i++) {
      xy += (x.get(i) - mx) * (y.get(i) - my);
      xx += (x.get(i) - mx) * (x.get(i) - mx);
      yy += (y.get(i) - my) * (y.get(i) - my);
    }
    return xy / Math.sqrt(xx * yy);
  }
}
