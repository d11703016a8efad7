package org.griplore.query.browse;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.griplore.query.TestArchive;
import org.griplore.query.answer.Answer;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Exclusion;
import org.griplore.query.browse.CoverageQuestion.CoverageRow;
import org.griplore.store.vocabulary.Refusal;
import org.griplore.store.vocabulary.SourceKind;
import org.griplore.store.vocabulary.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** All names and figures are invented. */
class CoverageQuestionTest {
  @TempDir Path folder;

  private TestArchive archive() {
    return new TestArchive(folder)
        .add(
            TestArchive.told("t1", "2019", SourceKind.OWN, null)
                .with("A", "wet-braking", 33.0, Unit.METRE, null)
                .with("A", "dry-braking", 36.0, Unit.METRE, null)
                .with("B", "wet-braking", 30.0, Unit.METRE, null),
            TestArchive.told("t2", "2021", SourceKind.OWN, null)
                .with("A", "wet-braking", 33.0, Unit.METRE, null)
                .with("C", "wet-braking", null, null, 2));
  }

  private static List<CoverageRow> rows(Answer<?> answer) {
    return answer.rows().stream().map(CoverageRow.class::cast).toList();
  }

  @Test
  void testsAreCountedByModelAndDisciplineAndGapsAreNamed() {
    try (TestArchive archive = archive()) {
      Answer<?> answer = archive.ask("coverage", Map.of());
      assertThat(rows(answer))
          .containsExactly(
              new CoverageRow(
                  "A", null, 2, 2021, Map.of("wet-braking", 2, "dry-braking", 1), List.of()),
              new CoverageRow("B", null, 1, 2019, Map.of("wet-braking", 1), List.of("dry-braking")),
              new CoverageRow(
                  "C", null, 1, 2021, Map.of("wet-braking", 1), List.of("dry-braking")));
      assertThat(answer.columns())
          .extracting(Column::key)
          .containsExactly(
              "model", "season", "tests", "lastYear", "wet-braking", "dry-braking", "gaps");
      assertThat(answer.summary())
          .isEqualTo(
              "3 models and 2 disciplines. The most frequent gap is dry-braking: 2 of them have no"
                  + " test in it.");
    }
  }

  @Test
  void modelsMissingADisciplineAreFoundAndPagesAreCounted() {
    try (TestArchive archive = archive()) {
      Answer<?> answer =
          archive.ask("coverage", Map.of("missing", List.of("dry-braking"), "limit", List.of("1")));
      assertThat(rows(answer)).extracting(CoverageRow::model).containsExactly("B");
      assertThat(answer.excluded())
          .containsExactly(new Exclusion("further models; see --limit and --skip", 1));
      Answer<?> last = archive.ask("coverage", Map.of("sort", List.of("last")));
      assertThat(rows(last)).extracting(CoverageRow::model).containsExactly("B", "A", "C");
    }
  }

  @Test
  void aFilterCountsOnlyItsOwnTests() {
    try (TestArchive archive = archive()) {
      CoverageRow a = rows(archive.ask("coverage", Map.of("from", List.of("2020")))).get(0);
      assertThat(a.counts()).isEqualTo(Map.of("wet-braking", 1));
      assertThat(a.gaps()).containsExactly("dry-braking");
    }
  }

  @Test
  void anUnknownDisciplineIsRefused() {
    try (TestArchive archive = archive()) {
      assertThatThrownBy(() -> archive.ask("coverage", Map.of("missing", List.of("wet"))))
          .isInstanceOf(Refusal.class)
          .hasMessageContaining("wet-braking");
    }
  }
}
