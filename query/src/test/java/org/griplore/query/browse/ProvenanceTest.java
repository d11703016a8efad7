package org.griplore.query.browse;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.griplore.query.TestArchive;
import org.griplore.query.browse.OriginQuestion.OriginRow;
import org.griplore.store.vocabulary.SourceKind;
import org.griplore.store.vocabulary.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From the text found to the difference, every figure before and after is told. */
class ProvenanceTest {
  @TempDir Path folder;

  private List<ProvenanceStep> provenance(
      String discipline, Unit unit, double value, double other) {
    try (TestArchive archive = new TestArchive(folder)) {
      archive.add(
          TestArchive.told("t-1", "2021-06-14", SourceKind.OWN, "205/55 R16")
              .with("Velmora Aurelis 5", discipline, value, unit, null)
              .with("Quillarn Tarvion 11", discipline, other, unit, null));
      return archive.ask("origin", Map.of("result", List.of("1"))).rows().stream()
          .map(OriginRow.class::cast)
          .findFirst()
          .orElseThrow()
          .steps();
    }
  }

  @Test
  void aDistanceBecomesARatioToTheBestAndPerCentOfGrip() {
    List<ProvenanceStep> steps = provenance("wet-braking", Unit.METRE, 33, 30);
    assertThat(steps).hasSize(3);
    assertThat(steps.get(0).found()).isEqualTo("33.0");
    assertThat(steps.get(0).after()).isEqualTo(33);
    assertThat(steps.get(1).rule())
        .contains("the best of the test, Quillarn Tarvion 11, 30 m", "less is better");
    assertThat(steps.get(1).after()).isCloseTo(-Math.log(1.1), within(1e-12));
    // 10 % more distance is 9.09 % less grip (arithmetic)
    assertThat(steps.get(2).after()).isCloseTo(-100 / 11.0, within(1e-9));
    assertThat(steps.get(2).rule()).contains("of 1 / the figure in m");
    assertThat(steps.get(2).afterUnit()).isEqualTo("%");
  }

  @Test
  void perCentOfTheBestIsARatioAndMarksAreTurned() {
    List<ProvenanceStep> share = provenance("wet-braking", Unit.PERCENT_OF_BEST, 96, 100);
    assertThat(share.get(1).after()).isCloseTo(Math.log(0.96), within(1e-12));
    assertThat(share.get(2).after()).isCloseTo(-4, within(1e-9));
  }

  @Test
  void schoolMarksAndLevelsAreDifferencesAndNeverPerCent() {
    List<ProvenanceStep> marks = provenance("comfort", Unit.SCHOOL_MARK, 2.5, 1.5);
    assertThat(marks).hasSize(2);
    assertThat(marks.get(1).after()).isEqualTo(-1);
    assertThat(marks.get(1).rule()).contains("turned as less is better");
    assertThat(marks.get(1).afterUnit()).isEqualTo("mark (1 best)");
  }

  @Test
  void theBestItselfIsNothingBehind() {
    List<ProvenanceStep> steps = provenance("exterior-noise", Unit.DECIBEL_A, 69, 71);
    assertThat(1 / steps.get(1).after())
        .as("zero without a sign")
        .isEqualTo(Double.POSITIVE_INFINITY);
    assertThat(steps.get(1).afterUnit()).isEqualTo("dB(A)");
  }
}
