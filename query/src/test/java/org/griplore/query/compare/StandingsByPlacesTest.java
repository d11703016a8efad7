package org.griplore.query.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.griplore.query.TestArchive;
import org.griplore.query.answer.Answer;
import org.griplore.query.discipline.TestsAgreement;
import org.griplore.store.vocabulary.SourceKind;
import org.griplore.store.vocabulary.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StandingsByPlacesTest {
  private static final Map<String, List<String>> BY_PLACES =
      Map.of("discipline", List.of("wet-braking"), "by", List.of("places"));
  private static final Map<String, List<String>> BY_VALUES =
      Map.of("discipline", List.of("wet-braking"));

  @TempDir Path folder;

  private static TestArchive.Told placed(String key, String... bestFirst) {
    TestArchive.Told told = TestArchive.told(key, "2020", SourceKind.OWN, null);
    for (int i = 0; i < bestFirst.length; i++) {
      told.with(bestFirst[i], "wet-braking", null, null, i + 1);
    }
    return told;
  }

  /** Fields of two are Bradley-Terry's model, whose estimate for two models is the log odds. */
  @Test
  void fieldsOfTwoGiveTheLogOddsOfBeingAhead() {
    try (TestArchive archive = new TestArchive(folder)) {
      archive.add(placed("t1", "A", "B"), placed("t2", "A", "B"), placed("t3", "A", "B"));
      archive.add(placed("t4", "B", "A"));
      List<StandingRow> rows = rows(archive.ask("standings", BY_PLACES));
      assertThat(rows).extracting(StandingRow::model).containsExactly("A", "B");
      assertThat(rows.get(0).effect() - rows.get(1).effect()).isCloseTo(Math.log(3), within(1e-9));
      assertThat(rows.get(0).places().ahead())
          .isCloseTo(Math.sqrt(3) / (1 + Math.sqrt(3)), within(1e-9));
      assertThat(rows.get(0).places().rankByValues()).isNull();
    }
  }

  @Test
  void placesAloneJoinTheStandingByPlacesAndNeverThatByValues() {
    try (TestArchive archive = new TestArchive(folder)) {
      archive.add(
          TestArchive.told("t1", "2020", SourceKind.OWN, null)
              .with("A", "wet-braking", 30.0, Unit.METRE, null)
              .with("B", "wet-braking", 33.0, Unit.METRE, null)
              .with("C", "wet-braking", 35.0, Unit.METRE, null),
          placed("t2", "D", "A", "C"),
          placed("t3", "B", "D", "A"));
      Answer<?> values = archive.ask("standings", BY_VALUES);
      assertThat(values.rows()).hasSize(3);
      assertThat(values.caveats()).anyMatch(caveat -> caveat.startsWith("2 tests give places"));
      Answer<?> places = archive.ask("standings", BY_PLACES);
      List<StandingRow> rows = rows(places);
      assertThat(rows).extracting(StandingRow::model).containsExactlyInAnyOrder("A", "B", "C", "D");
      assertThat(places.summary()).contains("in 3 tests (2 give places alone)", "Rank agreement");
      assertThat(places.whole(StandingsQuestion.AGREEMENT)).isPresent();
      assertThat(rows)
          .filteredOn(row -> row.model().equals("D"))
          .extracting(row -> row.places().rankByValues())
          .containsExactly((Integer) null);
    }
  }

  @Test
  void whoNeverCameBehindIsBoundedAndTheAnswerSaysSo() {
    try (TestArchive archive = new TestArchive(folder)) {
      archive.add(placed("t1", "A", "B", "C"), placed("t2", "A", "C", "B"));
      Answer<?> answer = archive.ask("standings", BY_PLACES);
      assertThat(rows(answer)).allMatch(row -> Double.isFinite(row.effect()) && row.se() > 0);
      assertThat(answer.caveats()).anyMatch(caveat -> caveat.contains("never came behind"));
    }
  }

  /** Three tests of the same order among models that all placed: W is 1, by chance in 1 of 36. */
  @Test
  void howFarTestsAgreeIsSaidOverTheModelsThatAllOfThemPlaced() {
    try (TestArchive archive = new TestArchive(folder)) {
      archive.add(placed("t1", "A", "D", "B", "C"), placed("t2", "A", "B", "E", "C"));
      assertThat(archive.ask("standings", BY_PLACES).whole(StandingsQuestion.TESTS_AGREEMENT))
          .hasValueSatisfying(two -> assertThat(two.chance()).isCloseTo(1 / 6.0, within(0.015)));
      archive.add(placed("t3", "A", "B", "C"), placed("t4", "E", "D"));
      Answer<?> answer = archive.ask("standings", BY_PLACES);
      TestsAgreement agreement = answer.whole(StandingsQuestion.TESTS_AGREEMENT).orElseThrow();
      assertThat(agreement.tests()).isEqualTo(3);
      assertThat(agreement.models()).isEqualTo(3);
      assertThat(agreement.w()).isEqualTo(1);
      assertThat(agreement.friedman()).isCloseTo(6, within(1e-12));
      assertThat(agreement.chance()).isCloseTo(1 / 36.0, within(0.007));
      assertThat(answer.caveats())
          .anyMatch(
              caveat ->
                  caveat.startsWith(
                      "The order of the same 3 models agrees between 3 tests with Kendall's W 1.00"));
    }
  }

  @Test
  void withoutThreeModelsInTwoTestsNothingIsSaidOfAgreement() {
    try (TestArchive archive = new TestArchive(folder)) {
      archive.add(placed("t1", "A", "B", "C"), placed("t2", "B", "A", "D"));
      Answer<?> answer = archive.ask("standings", BY_PLACES);
      assertThat(answer.whole(StandingsQuestion.TESTS_AGREEMENT)).isEmpty();
      assertThat(answer.caveats()).noneMatch(caveat -> caveat.contains("Kendall's W"));
    }
  }

  @Test
  void tiesAloneAndNoPlacesAtAllAreSaidInASentence() {
    try (TestArchive archive = new TestArchive(folder)) {
      assertThat(archive.ask("standings", BY_PLACES).summary())
          .isEqualTo("No test places two models in wet-braking.");
      archive.add(
          TestArchive.told("t1", "2020", SourceKind.OWN, null)
              .with("A", "wet-braking", null, null, 1)
              .with("B", "wet-braking", null, null, 1)
              .with("C", "wet-braking", null, null, 1));
      Answer<?> ties = archive.ask("standings", BY_PLACES);
      assertThat(ties.hasEvidence()).isFalse();
      assertThat(ties.summary()).startsWith("The places in wet-braking set no scale");
    }
  }

  private static List<StandingRow> rows(Answer<?> answer) {
    return answer.rows().stream().map(StandingRow.class::cast).toList();
  }
}
