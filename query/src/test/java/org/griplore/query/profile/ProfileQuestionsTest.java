package org.griplore.query.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.griplore.query.TestArchive;
import org.griplore.query.answer.Answer;
import org.griplore.query.compare.StandingRow;
import org.griplore.query.profile.ModelQuestion.Known;
import org.griplore.store.vocabulary.Cell;
import org.griplore.store.vocabulary.LineageRow;
import org.griplore.store.vocabulary.Refusal;
import org.griplore.store.vocabulary.SourceKind;
import org.griplore.store.vocabulary.TestDate;
import org.griplore.store.vocabulary.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** All names and figures are invented. */
class ProfileQuestionsTest {
  @TempDir Path folder;

  private TestArchive archive() {
    TestArchive archive = new TestArchive(folder);
    archive.add(
        row("Orlo Tar 1", "1", "2015", null),
        row("Orlo Tar 2", "2", "2019", "Orlo Tar 1"),
        row("Orlo Tar 3", "3", "2023", "Orlo Tar 2"));
    return archive.add(
        TestArchive.told("t1", "2019", SourceKind.OWN, "205/55 R16")
            .with("Orlo Tar 1", "wet-braking", 33.0, Unit.METRE, null)
            .with("Orlo Tar 2", "wet-braking", 30.0, Unit.METRE, null)
            .with("Other", "wet-braking", 36.0, Unit.METRE, null),
        TestArchive.told("t2", "2021", SourceKind.OWN, null)
            .with("Orlo Tar 2", "wet-braking", 1.5, Unit.SCHOOL_MARK, null)
            .with("Other", "wet-braking", 2.5, Unit.SCHOOL_MARK, null),
        TestArchive.told("t3", "2022", SourceKind.INDEPENDENT, null)
            .with("Orlo Tar 2", "overall", null, null, 2)
            .with("Other", "overall", null, null, 1));
  }

  private static LineageRow row(String model, String generation, String launched, String follows) {
    return new LineageRow(
        model,
        "Orlo",
        "Tar",
        generation,
        new TestDate(launched),
        null,
        null,
        follows,
        List.of(),
        new Cell("", 1, 1, model));
  }

  private static List<ProfileRow> rows(Answer<?> answer) {
    return answer.rows().stream().map(ProfileRow.class::cast).toList();
  }

  @Test
  void aModelStandsAsTheStandingsSayAndLeadsToEveryResult() {
    try (TestArchive archive = archive()) {
      Answer<?> answer = archive.ask("model", Map.of("model", List.of("orlo tar 2")));
      ProfileRow wet = rows(answer).get(0);
      // all models met in one test: the mean of the logs of 1/33, 1/30 and 1/36, by arithmetic
      double mean = -(Math.log(33) + Math.log(30) + Math.log(36)) / 3;
      assertThat(wet.effect()).isCloseTo(100 * Math.expm1(-Math.log(30) - mean), within(1e-9));
      StandingRow standing =
          (StandingRow)
              archive.ask("standings", Map.of("discipline", List.of("wet-braking"))).rows().get(0);
      assertThat(standing.model()).isEqualTo("Orlo Tar 2");
      assertThat(wet.effect()).isEqualTo(standing.effect());
      assertThat(wet.low()).isEqualTo(standing.low());
      assertThat(wet.results())
          .extracting(ProfileResult::test, ProfileResult::value, ProfileResult::place)
          .containsExactly(
              org.assertj.core.groups.Tuple.tuple("t1", 30.0, 1),
              org.assertj.core.groups.Tuple.tuple("t2", 1.5, 1));
      assertThat(wet.results().get(0).size()).isEqualTo("205/55 R16");

      ProfileRow overall = rows(answer).get(1);
      assertThat(overall.discipline()).isEqualTo("overall");
      assertThat(overall.effect()).isNull();
      assertThat(overall.bestPlace()).isEqualTo(2);
    }
  }

  @Test
  void aModelKnowsItsForebearsAndSuccessors() {
    try (TestArchive archive = archive()) {
      Answer<?> answer = archive.ask("model", Map.of("model", List.of("Orlo Tar 2")));
      Known known = answer.whole(ModelQuestion.KNOWN).orElseThrow();
      assertThat(known.follows()).isEqualTo("Orlo Tar 1");
      assertThat(known.followedBy()).containsExactly("Orlo Tar 3");
      assertThat(known.family()).containsExactly("Orlo Tar 1", "Orlo Tar 2", "Orlo Tar 3");
      assertThat(known.line()).isEqualTo("Orlo Tar");
    }
  }

  @Test
  void filtersNarrowARecordAndSayWhatWasLeftOut() {
    try (TestArchive archive = archive()) {
      Answer<?> answer =
          archive.ask("model", Map.of("model", List.of("Orlo Tar 2"), "from", List.of("2022")));
      assertThat(rows(answer)).extracting(ProfileRow::discipline).containsExactly("overall");
      assertThat(answer.excluded())
          .contains(new org.griplore.query.answer.Exclusion("outside the dates asked for", 2));
    }
  }

  @Test
  void anUntestedModelHasARecordWithoutRows() {
    try (TestArchive archive = archive()) {
      Answer<?> answer = archive.ask("model", Map.of("model", List.of("Orlo Tar 3")));
      assertThat(answer.hasEvidence()).isFalse();
      assertThat(answer.summary())
          .isEqualTo("Orlo Tar 3 (launched 2023, follows Orlo Tar 2): no test that counts.");
    }
  }

  @Test
  void twoModelsAreRefusedAndAnUnknownOneIsOfferedTheNearest() {
    try (TestArchive archive = archive()) {
      assertThatThrownBy(
              () -> archive.ask("model", Map.of("model", List.of("Orlo Tar 1", "Other"))))
          .isInstanceOf(Refusal.class)
          .hasMessageContaining("one model");
      assertThatThrownBy(() -> archive.ask("model", Map.of("model", List.of("Orlo Tra 2"))))
          .isInstanceOf(Refusal.class)
          .hasMessageContaining("Orlo Tar 2");
    }
  }

  @Test
  void theGenerationsOfALineStandInTheOrderOfDescent() {
    try (TestArchive archive = archive()) {
      Answer<?> answer = archive.ask("line", Map.of("line", List.of("Orlo Tar")));
      assertThat(rows(answer))
          .extracting(ProfileRow::model, ProfileRow::discipline)
          .containsExactly(
              org.assertj.core.groups.Tuple.tuple("Orlo Tar 1", "wet-braking"),
              org.assertj.core.groups.Tuple.tuple("Orlo Tar 2", "wet-braking"),
              org.assertj.core.groups.Tuple.tuple("Orlo Tar 2", "overall"));
      assertThat(answer.summary()).startsWith("Orlo Tar has 3 models. The newest, Orlo Tar 3,");
    }
  }
}
