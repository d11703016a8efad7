package org.griplore.query.outlook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.griplore.query.TestArchive;
import org.griplore.query.answer.Answer;
import org.griplore.query.outlook.BacktestQuestion.BacktestRow;
import org.griplore.store.vocabulary.LineageRow;
import org.griplore.store.vocabulary.Refusal;
import org.griplore.store.vocabulary.SourceKind;
import org.griplore.store.vocabulary.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OutlookQuestionTest {
  private static final String[] MODELS = {"A", "B", "C", "D", "E"};

  @TempDir Path folder;

  /** Yearly tests of five models, A best and E worst, with a little scatter. */
  private TestArchive archive(int tests, double scatter) {
    TestArchive archive = new TestArchive(folder);
    for (int t = 0; t < tests; t++) {
      TestArchive.Told told =
          TestArchive.told("t" + t, String.valueOf(2010 + t), SourceKind.OWN, "205/55 R16");
      for (int m = 0; m < MODELS.length; m++) {
        double value = 30 + m + scatter * Math.sin(7 * t + 3 * m);
        told.with(MODELS[m], "wet-braking", value, Unit.METRE, null);
      }
      archive.add(told);
    }
    return archive;
  }

  private static List<OutlookRow> rows(Answer<?> answer) {
    return answer.rows().stream().map(OutlookRow.class::cast).toList();
  }

  private static Map<String, List<String>> models(String... names) {
    return Map.of("models", List.of(names));
  }

  @Test
  void theFieldIsExpectedInTheOrderOfItsTests() {
    try (TestArchive archive = archive(5, 0.4)) {
      Answer<?> answer = archive.ask("outlook", models("E,C,A", "B"));
      assertThat(rows(answer)).extracting(OutlookRow::model).containsExactly("A", "B", "C", "E");
      for (OutlookRow row : rows(answer)) {
        assertThat(row.low()).isLessThan(row.expected());
        assertThat(row.high()).isGreaterThan(row.expected());
        assertThat(row.basis()).isEqualTo("tests");
        assertThat(row.tests()).isEqualTo(5);
        assertThat(row.likeTests()).isNull();
      }
      assertThat(rows(answer).get(0).topThree()).isGreaterThan(rows(answer).get(3).topThree());
      assertThat(rows(answer).stream().mapToDouble(OutlookRow::topThree).sum())
          .isBetween(2.999, 3.001);
      assertThat(rows(archive.ask("outlook", models("A", "B", "C"))))
          .extracting(OutlookRow::topThree)
          .containsOnlyNulls();
    }
  }

  @Test
  void aNewModelRestsOnItsPredecessorAndAStrangerOnNothing() {
    try (TestArchive archive = archive(5, 0.4)) {
      archive.add(row("A", null), row("A2", "A"), row("X", null));
      Answer<?> answer = archive.ask("outlook", models("A2", "A", "B", "X"));
      assertThat(rows(answer)).extracting(OutlookRow::model).containsOnly("A2", "A", "B");
      OutlookRow told = rows(answer).stream().filter(r -> r.model().equals("A2")).findFirst().get();
      OutlookRow old = rows(answer).stream().filter(r -> r.model().equals("A")).findFirst().get();
      assertThat(told.basis()).isEqualTo("predecessor");
      assertThat(told.tests()).isZero();
      assertThat(told.high() - told.low()).isGreaterThan(old.high() - old.low());
      assertThat(answer.caveats()).anyMatch(says -> says.startsWith("Nothing is known of X:"));
    }
  }

  private static LineageRow row(String model, String follows) {
    return new LineageRow(model, null, "L", null, null, null, null, follows, List.of(), null);
  }

  @Test
  void weightsGiveATotal() {
    try (TestArchive archive = archive(5, 0.4)) {
      Answer<?> answer =
          archive.ask(
              "outlook",
              Map.of("models", List.of("A,B,C,D"), "weights", List.of("wet-braking=2,wear=1")));
      assertThat(rows(answer).get(0).discipline()).isEqualTo("overall");
      assertThat(rows(answer).get(0).model()).isEqualTo("A");
      assertThat(rows(answer).get(0).low()).isLessThan(rows(answer).get(0).expected());
    }
  }

  /** One test, results that never differ, or a stranger: no row, a sentence, never NaN. */
  @ParameterizedTest
  @CsvSource({"1,0.4,A", "0,0,A"})
  void tooLittleIsSaid(int tests, double scatter, String model) {
    try (TestArchive archive = archive(tests, scatter)) {
      archive.add(row("A", null), row("X", null), row("Y", null));
      assertThat(archive.ask("outlook", models(model, "X")).summary())
          .isEqualTo("Too little is known of these tyres to expect anything.");
      assertThat(archive.ask("outlook", models("X", "Y")).hasEvidence()).isFalse();
      assertThat(archive.ask("backtest", Map.of()).summary()).startsWith("No test could be");
    }
  }

  @Test
  void resultsThatNeverDifferTellNothing() {
    try (TestArchive archive = new TestArchive(folder)) {
      for (int t = 0; t < 8; t++) {
        TestArchive.Told told = TestArchive.told("t" + t, "20" + (10 + t), SourceKind.OWN, null);
        for (String model : MODELS) {
          told.with(model, "comfort", 7.0, Unit.POINTS_10, null);
        }
        archive.add(told);
      }
      assertThat(archive.ask("outlook", models("A", "B")).hasEvidence()).isFalse();
      assertThat(archive.ask("backtest", Map.of()).hasEvidence()).isFalse();
    }
  }

  /** Without scatter the intervals shrink, and stay finite. */
  @Test
  void testsThatAgreeWhollyGiveFiniteAnswers() {
    try (TestArchive archive = archive(12, 0)) {
      for (OutlookRow row : rows(archive.ask("outlook", models("A", "B", "C", "D")))) {
        assertThat(row.expected()).isFinite();
        assertThat(row.high() - row.low()).isFinite().isPositive();
      }
      BacktestRow row = (BacktestRow) archive.ask("backtest", Map.of()).rows().get(0);
      assertThat(row.error()).isFinite().isLessThan(1);
      assertThat(row.rankAgreement()).isEqualTo(1);
    }
  }

  @Test
  void testsOfTheSameDayOrYearDoNotPredictEachOther() {
    try (TestArchive archive = new TestArchive(folder)) {
      for (int t = 0; t < 8; t++) {
        TestArchive.Told told = TestArchive.told("t" + t, "2015", SourceKind.OWN, null);
        for (int m = 0; m < MODELS.length; m++) {
          told.with(MODELS[m], "wet-braking", 30.0 + m + 0.1 * t * m, Unit.METRE, null);
        }
        archive.add(told);
      }
      assertThat(archive.ask("backtest", Map.of()).hasEvidence()).isFalse();
    }
  }

  @Test
  void badFieldsAreRefused() {
    try (TestArchive archive = archive(3, 0.4)) {
      assertThatThrownBy(() -> archive.ask("outlook", Map.of())).isInstanceOf(Refusal.class);
      assertThatThrownBy(() -> archive.ask("outlook", models("A", "A")))
          .hasMessageContaining("a field of two");
      assertThatThrownBy(() -> archive.ask("outlook", models("A", "Nobody")))
          .hasMessageContaining("no model");
      assertThatThrownBy(
              () ->
                  archive.ask(
                      "outlook", Map.of("models", List.of("A,B"), "size", List.of("205-55"))))
          .hasMessageContaining("a size like");
      assertThatThrownBy(
              () ->
                  archive.ask(
                      "outlook", Map.of("models", List.of("A,B"), "weights", List.of("wear=0"))))
          .hasMessageContaining("above zero");
    }
  }
}
