package org.griplore.query.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.griplore.query.TestArchive;
import org.griplore.query.answer.Answer;
import org.griplore.query.answer.Exclusion;
import org.griplore.query.discipline.Difference;
import org.griplore.store.vocabulary.Refusal;
import org.griplore.store.vocabulary.SourceKind;
import org.griplore.store.vocabulary.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CompareQuestionsTest {
  @TempDir Path folder;

  private TestArchive chain() {
    TestArchive archive = new TestArchive(folder);
    return archive.add(
        TestArchive.told("t1", "2020", SourceKind.OWN, null)
            .with("A", "wet-braking", 30.0, Unit.METRE, null)
            .with("B", "wet-braking", 33.0, Unit.METRE, null),
        TestArchive.told("t2", "2021", SourceKind.OWN, null)
            .with("B", "wet-braking", 100.0, Unit.PERCENT_OF_BEST, null)
            .with("C", "wet-braking", 80.0, Unit.PERCENT_OF_BEST, null),
        TestArchive.told("t3", "2022", SourceKind.OWN, null)
            .with("X", "wet-braking", 7.0, Unit.METRE_PER_SECOND_SQUARED, null)
            .with("Y", "wet-braking", 7.7, Unit.METRE_PER_SECOND_SQUARED, null),
        TestArchive.told("t4", "2023", SourceKind.OWN, null)
            .with("A", "wet-braking", 1.4, Unit.SCHOOL_MARK, null)
            .with("X", "wet-braking", 2.0, Unit.SCHOOL_MARK, null));
  }

  @Test
  void aChainOfTestsComparesWhatNeverMet() {
    try (TestArchive archive = chain()) {
      Answer<?> answer =
          archive.ask(
              "contrast", Map.of("model", List.of("A", "C"), "discipline", List.of("wet-braking")));
      Difference difference = ((ContrastQuestion.ContrastRow) answer.rows().get(0)).difference();
      // 33/30 in deceleration, times 100/80, by arithmetic
      assertThat(difference.difference()).isCloseTo(100 * (1.1 * 1.25 - 1), within(1e-9));
      assertThat(difference.logDifference()).isCloseTo(Math.log(1.375), within(1e-12));
      assertThat(difference.directTests()).isZero();
      assertThat(difference.se()).isNull();
      assertThat(answer.excluded())
          .contains(new Exclusion("values on another scale (marks, points or levels)", 2));
    }
  }

  @Test
  void aContrastNamesTheTestsThatHeldBothWithTheirResults() {
    try (TestArchive archive = chain()) {
      Answer<?> answer =
          archive.ask(
              "contrast", Map.of("model", List.of("A", "B"), "discipline", List.of("wet-braking")));
      ContrastQuestion.ContrastRow row = (ContrastQuestion.ContrastRow) answer.rows().get(0);
      assertThat(row.headToHeads()).hasSize(row.difference().directTests());
      HeadToHead met = row.headToHeads().get(0);
      assertThat(met.test()).isEqualTo("t1");
      assertThat(List.of(met.first(), met.second())).containsExactly(30.0, 33.0);
      // 33/30 in deceleration, by arithmetic
      assertThat(met.difference()).isCloseTo(10.0, within(1e-9));
      assertThat(archive.context().archive().originOf(met.firstResult())).isPresent();
      Answer<?> never =
          archive.ask(
              "contrast", Map.of("model", List.of("A", "C"), "discipline", List.of("wet-braking")));
      assertThat(((ContrastQuestion.ContrastRow) never.rows().get(0)).headToHeads()).isEmpty();
    }
  }

  @Test
  void partsThatNothingConnectsAreNeverCompared() {
    try (TestArchive archive = chain()) {
      Answer<?> none =
          archive.ask(
              "contrast", Map.of("model", List.of("A", "Y"), "discipline", List.of("wet-braking")));
      assertThat(none.hasEvidence()).isFalse();
      assertThat(none.summary()).isEqualTo("Nothing connects A and Y.");
      Answer<?> standings = archive.ask("standings", Map.of("discipline", List.of("wet-braking")));
      assertThat(standings.summary()).contains("2 groups that no test connects");
      assertThat(standings.rows())
          .extracting(row -> ((StandingRow) row).component())
          .containsOnly(1, 2);
    }
  }

  @Test
  void totalsOfReportsAreNotComparedAndUnknownThingsAreRefused() {
    try (TestArchive archive = chain()) {
      assertThatThrownBy(() -> archive.ask("standings", Map.of("discipline", List.of("overall"))))
          .isInstanceOf(Refusal.class)
          .hasMessageContaining("weights");
      assertThatThrownBy(() -> archive.ask("contrast", Map.of("model", List.of("A"))))
          .hasMessageContaining("two models");
      assertThat(archive.ask("standings", Map.of("discipline", List.of("wear"))).hasEvidence())
          .isFalse();
    }
  }
}
