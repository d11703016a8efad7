package org.griplore.query.discipline;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.griplore.query.SimulatedEvidence;
import org.griplore.query.TestArchive;
import org.griplore.query.evidence.Evidence;
import org.griplore.query.evidence.Filter;
import org.griplore.query.network.EstimatedComparison;
import org.griplore.query.network.VarianceMethod;
import org.griplore.query.option.Choices;
import org.griplore.query.statistics.Interval;
import org.griplore.store.scenario.Scenario;
import org.griplore.store.scenario.TrueStep;
import org.griplore.store.vocabulary.SourceKind;
import org.griplore.store.vocabulary.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class NetworksTest {
  @TempDir Path folder;

  /** A new report, with models and tests that sort before all others, leaves other fits alone. */
  @Test
  void aReportThatJoinsFitsItsOwnDisciplinesAgainAndNoOthers() {
    try (TestArchive archive = new TestArchive(folder)) {
      archive.add(
          TestArchive.told("t1", "2020", SourceKind.OWN, null)
              .with("M", "wet-braking", 30.0, Unit.METRE, null)
              .with("N", "wet-braking", 33.0, Unit.METRE, null)
              .with("P", "dry-braking", 40.0, Unit.METRE, null)
              .with("Q", "dry-braking", 41.0, Unit.METRE, null));
      Networks networks = archive.context().networks();
      archive.ask("standings", Map.of("discipline", List.of("wet-braking")));
      archive.ask("standings", Map.of("discipline", List.of("dry-braking")));
      archive.ask("contrast", Map.of("model", List.of("N", "M")));
      assertThat(networks.fitted()).isEqualTo(2);
      archive.add(
          TestArchive.told("t0", "2010", SourceKind.OWN, null)
              .with("A", "dry-braking", 40.0, Unit.METRE, null)
              .with("P", "dry-braking", 44.0, Unit.METRE, null));
      String wet = archive.ask("standings", Map.of("discipline", List.of("wet-braking"))).summary();
      assertThat(networks.fitted()).isEqualTo(2);
      assertThat(wet).startsWith("M leads 2 models");
      String dry = archive.ask("standings", Map.of("discipline", List.of("dry-braking"))).summary();
      assertThat(networks.fitted()).isEqualTo(3);
      assertThat(dry).startsWith("A leads 3 models");
    }
  }

  @Test
  void fitsBeyondTheRoomAreMadeAgain() {
    Scenario scenario = Scenario.stated().plain();
    Evidence evidence = SimulatedEvidence.of(scenario, 1);
    Filter filter = open(evidence);
    Networks none = new Networks(0);
    none.of(evidence, "wet-braking", filter, VarianceMethod.REML);
    none.of(evidence, "wet-braking", filter, VarianceMethod.REML);
    assertThat(none.fitted()).isEqualTo(2);
  }

  private static Filter open(Evidence evidence) {
    return new Filter(Choices.of("standings", "", Filter.OPTIONS, Map.of()), evidence);
  }

  /**
   * Against the stated truth: over 200 seeded archives from one truth, 95 % intervals of generation
   * steps cover the true step between 92 and 98 % of the time.
   */
  @Test
  void intervalsOfStepsCoverTheTruth() {
    Scenario scenario = Scenario.stated().plain();
    List<String> disciplines =
        List.of("wet-braking", "dry-braking", "rolling-resistance", "exterior-noise");
    Networks networks = new Networks();
    int covered = 0;
    int all = 0;
    for (long seed = 1; seed <= 200; seed++) {
      Evidence evidence = SimulatedEvidence.of(scenario, seed);
      Filter filter = open(evidence);
      for (String discipline : disciplines) {
        Network network =
            networks.of(evidence, discipline, filter, VarianceMethod.REML).orElseThrow();
        for (ModelStep step : ModelStep.all(evidence.models())) {
          var compared = network.compare(step.newer(), step.older());
          if (compared instanceof EstimatedComparison difference
              && difference.interval(0.95).isPresent()) {
            Interval interval = difference.interval(0.95).get();
            TrueStep truth =
                scenario.step(
                    evidence.models().get(step.older()).name(),
                    evidence.models().get(step.newer()).name(),
                    discipline);
            covered += interval.contains(truth.step()) ? 1 : 0;
            all++;
          }
        }
      }
    }
    assertThat(all).isGreaterThan(15_000);
    assertThat((double) covered / all).as("%d of %d", covered, all).isBetween(0.92, 0.98);
  }
}
