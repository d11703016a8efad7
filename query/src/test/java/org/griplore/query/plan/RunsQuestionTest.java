package org.griplore.query.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.griplore.query.SimulatedEvidence;
import org.griplore.query.TestArchive;
import org.griplore.query.evidence.Citations;
import org.griplore.query.evidence.Evidence;
import org.griplore.query.evidence.Exclusions;
import org.griplore.query.evidence.Filter;
import org.griplore.query.option.Choices;
import org.griplore.store.scenario.Scenario;
import org.griplore.store.vocabulary.Refusal;
import org.griplore.store.vocabulary.SourceKind;
import org.griplore.store.vocabulary.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RunsQuestionTest {
  @TempDir Path folder;

  private TestArchive archive() {
    return new TestArchive(folder)
        .add(
            TestArchive.told("t1", "2020", SourceKind.OWN, null)
                .with("A", "rolling-resistance", 8.0, Unit.NEWTON_PER_KILONEWTON, null)
                .with("B", "rolling-resistance", 7.0, Unit.NEWTON_PER_KILONEWTON, null));
  }

  private static RunsRow one(TestArchive archive, Map<String, List<String>> options) {
    return (RunsRow) archive.ask("runs", options).rows().get(0);
  }

  /**
   * Two samples, 5 % two-sided, a difference of one or half a standard deviation: 16.7, 22.0, 63.8
   * and 85.0 of each by a general statistical package (the reference of RunsNeededTest), rounded
   * up.
   */
  @ParameterizedTest
  @CsvSource({"1,0.8,17", "1,0.9,23", "0.5,0.8,64", "0.5,0.9,86"})
  void theHandbooksNumbers(String difference, String power, int runs) {
    try (TestArchive archive = archive()) {
      RunsRow row =
          one(
              archive,
              Map.of(
                  "discipline", List.of("exterior-noise"),
                  "difference", List.of(difference),
                  "power", List.of(power),
                  "cv", List.of("1")));
      assertThat(row.runs()).isEqualTo(runs);
      assertThat(row.reached()).isGreaterThanOrEqualTo(row.power());
      assertThat(row.unit()).isEqualTo("dB(A)");
    }
  }

  @Test
  void theArchivesOwnScatterIsThatOfItsRuns() {
    Evidence evidence = SimulatedEvidence.of(Scenario.stated(), 7);
    Filter filter = new Filter(Choices.of("runs", "", Filter.OPTIONS, Map.of()), evidence);
    for (String discipline : List.of("wet-braking", "exterior-noise")) {
      RunScatter scatter =
          RunScatter.measured(
                  evidence, discipline, filter, new Exclusions(), new Citations(evidence))
              .orElseThrow();
      double truth = Scenario.stated().discipline(discipline).repeatability();
      assertThat(scatter.value()).isCloseTo(truth, within(0.06 * truth));
      assertThat(truth).isBetween(scatter.low(), scatter.high());
    }
  }

  /** 0.075 N/kN over the mean of 7.5 N/kN is a coefficient of variation of 1 %. */
  @Test
  void theCataloguesStandardDeviationIsSetOverTheArchivesMean() {
    try (TestArchive archive = archive()) {
      RunsRow row = one(archive, Map.of("discipline", List.of("rolling-resistance")));
      assertThat(row.cv()).isCloseTo(1, within(1e-12));
      assertThat(row.cvSource()).startsWith("the catalogue: ");
    }
  }

  @Test
  void whatCannotBeAnsweredIsSaid() {
    try (TestArchive archive = archive()) {
      assertThat(archive.ask("runs", Map.of("discipline", List.of("wear"))).summary())
          .isEqualTo("Nothing is known of the scatter of runs in wear; state it with --cv.");
      for (Map<String, List<String>> wrong :
          List.of(
              Map.of("difference", List.of("0")),
              Map.of("difference", List.of("-1")),
              Map.of("cv", List.of("nought")),
              Map.of("power", List.of("1")),
              Map.of("power", List.of("0.05")),
              Map.of("difference", List.of("0.001"), "cv", List.of("50")),
              Map.of("discipline", List.of("overall")))) {
        assertThatThrownBy(() -> archive.ask("runs", wrong)).isInstanceOf(Refusal.class);
      }
    }
  }

  @Test
  void theReferenceStandsAfterAtMostThreeCandidates() {
    assertThat(RunOrder.of(1)).containsExactly("R", "T1", "R");
    assertThat(RunOrder.of(3)).containsExactly("R", "T1", "T2", "T3", "R");
    assertThat(RunOrder.of(4)).containsExactly("R", "T1", "T2", "R", "T3", "T4", "R");
    assertThat(RunOrder.of(7))
        .containsExactly("R", "T1", "T2", "R", "T3", "T4", "R", "T5", "T6", "T7", "R");
  }
}
