package org.griplore.query.reweigh;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.griplore.query.TestArchive;
import org.griplore.query.answer.Answer;
import org.griplore.query.answer.Exclusion;
import org.griplore.query.reweigh.ReweighRow.Acceptance;
import org.griplore.store.vocabulary.Refusal;
import org.griplore.store.vocabulary.SourceKind;
import org.griplore.store.vocabulary.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ReweighQuestionTest {
  @TempDir Path folder;

  /** Points of comfort and of steering: A gives comfort, B gives steering, C is between. */
  private TestArchive archive() {
    return new TestArchive(folder)
        .add(
            told("t1", "2020")
                .with("A", "comfort", 9.0, Unit.POINTS_10, null)
                .with("B", "comfort", 5.0, Unit.POINTS_10, null)
                .with("C", "comfort", 7.0, Unit.POINTS_10, null)
                .with("A", "steering-response", 4.0, Unit.POINTS_10, null)
                .with("B", "steering-response", 8.0, Unit.POINTS_10, null)
                .with("C", "steering-response", 7.0, Unit.POINTS_10, null)
                .with("A", "overall", null, null, 3)
                .with("B", "overall", null, null, 1)
                .with("C", "overall", null, null, 2))
        .add(
            told("t2", "2021")
                .with("A", "wear", 40000.0, Unit.KILOMETRE, null)
                .with("B", "wear", 30000.0, Unit.KILOMETRE, null));
  }

  private static TestArchive.Told told(String key, String date) {
    return TestArchive.told(key, date, SourceKind.OWN, null);
  }

  private static Map<String, List<String>> options(String... pairs) {
    Map<String, List<String>> options = new LinkedHashMap<>();
    for (int i = 0; i < pairs.length; i += 2) {
      options.put(pairs[i], List.of(pairs[i + 1].split("\\|")));
    }
    return options;
  }

  private static ReweighRow row(Answer<?> answer, String model) {
    return answer.rows().stream()
        .map(ReweighRow.class::cast)
        .filter(of -> of.model().equals(model))
        .findFirst()
        .orElseThrow();
  }

  /**
   * Comfort 2, 0, -2 has squares 8, steering -7/3, 5/3, 2/3 has 26/3, each with 2 degrees of
   * freedom. With a = weight of comfort / (weight of comfort + of steering), A beats C from a > a1,
   * B beats C below a2, all by the straight lines of the totals.
   */
  @Test
  void sharesOfTheWeightSpaceAreThoseOfItsGeometry() {
    try (TestArchive archive = archive()) {
      Answer<?> answer =
          archive.ask(
              "reweigh",
              options(
                  "weights", "comfort=1,steering-response=1",
                  "min-field", "2",
                  "top", "1",
                  "draws", "40000"));
      double comfort = Math.sqrt(8 / 2.0);
      double steering = Math.sqrt(26 / 3.0 / 2.0);
      double fromC = (3 / steering) / (3 / steering + 2 / comfort);
      double belowC = (1 / steering) / (1 / steering + 2 / comfort);
      assertThat(row(answer, "A").acceptability().get(0).share())
          .isCloseTo(1 - fromC, within(0.01));
      assertThat(row(answer, "B").acceptability().get(0).share()).isCloseTo(belowC, within(0.01));
      assertThat(row(answer, "C").acceptability().get(0).share())
          .isCloseTo(fromC - belowC, within(0.01));
      // the mean weight of comfort over a > fromC, and of steering over a < belowC
      assertThat(row(answer, "A").favouredBy().get(0).discipline()).isEqualTo("comfort");
      assertThat(row(answer, "A").favouredBy().get(0).weight())
          .isCloseTo((1 + fromC) / 2, within(0.01));
      assertThat(row(answer, "B").favouredBy().get(0).discipline()).isEqualTo("steering-response");
      assertThat(row(answer, "B").favouredBy().get(0).weight())
          .isCloseTo(1 - belowC / 2, within(0.01));
      for (String model : List.of("A", "B", "C")) {
        ReweighRow row = row(answer, model);
        assertThat(row.acceptability().stream().mapToDouble(Acceptance::share).sum())
            .isCloseTo(1, within(1e-12));
        assertThat(row.acceptable()).isEqualTo(row.acceptability().get(0).share());
        assertThat(row.acceptableError()).isBetween(0.0, 0.5 / Math.sqrt(40000));
      }
    }
  }

  @Test
  void theUsersWeightsRankAnewBesideTheReports() {
    try (TestArchive archive = archive()) {
      Map<String, List<String>> options =
          options(
              "model",
              "A",
              "weights",
              "comfort=9,steering-response=1",
              "min-field",
              "2",
              "top",
              "1");
      ReweighRow a = row(archive.ask("reweigh", options), "A");
      assertThat(a.tests()).isEqualTo(1);
      assertThat(a.within()).isEqualTo(1);
      assertThat(a.reported()).isZero();
      assertThat(a.places().get(0).reported()).isEqualTo(3);
      assertThat(row(archive.ask("reweigh", options), "A")).as("same seed").isEqualTo(a);
      options.put("weights", List.of("comfort=1", "steering-response=9"));
      assertThat(row(archive.ask("reweigh", options), "A").within()).isZero();
    }
  }

  @Test
  void aTestWithLessThanHalfOfTheWeightIsLeftOutAndCounted() {
    try (TestArchive archive = archive()) {
      Answer<?> answer =
          archive.ask(
              "reweigh", options("weights", "comfort=2,wear=1", "min-field", "2", "top", "1"));
      assertThat(answer.excluded())
          .contains(new Exclusion("tests whose disciplines hold less than half of the weight", 1));
      assertThat(row(answer, "B").tests()).isEqualTo(1);
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "comfort=0",
        "comfort=0,wear=0",
        "comfort=-1",
        "comfort",
        "comfort=much",
        "overall=1",
        "swimming=1",
        "comfort=1,comfort=2",
        ","
      })
  void weightsThatMeanNothingAreRefused(String weights) {
    try (TestArchive archive = archive()) {
      assertThatThrownBy(() -> archive.ask("reweigh", options("weights", weights)))
          .isInstanceOf(Refusal.class)
          .hasMessageContaining("weights");
    }
  }

  @Test
  void withoutATestThatCountsNothingIsSaid() {
    try (TestArchive archive = archive()) {
      Answer<?> answer = archive.ask("reweigh", options("model", "A"));
      assertThat(answer.hasEvidence()).isFalse();
      assertThat(answer.summary()).isEqualTo("No test that counts ranks A under these weights.");
    }
  }
}
