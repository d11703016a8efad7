package org.griplore.query.tradeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.griplore.query.TestArchive;
import org.griplore.query.answer.Answer;
import org.griplore.query.answer.Exclusion;
import org.griplore.store.vocabulary.Refusal;
import org.griplore.store.vocabulary.SourceKind;
import org.griplore.store.vocabulary.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TradeoffQuestionTest {
  private static final Map<String, List<String>> WET_AND_ROLLING =
      Map.of("discipline", List.of("wet-braking", "rolling-resistance"));

  @TempDir Path folder;

  /** A test whose models have both figures, in turn wet braking (m) and rolling (N/kN). */
  private static TestArchive.Told told(String key, Map<String, double[]> models) {
    TestArchive.Told told = TestArchive.told(key, "2020", SourceKind.OWN, null);
    models.forEach(
        (model, of) ->
            told.with(model, "wet-braking", of[0], Unit.METRE, null)
                .with(model, "rolling-resistance", of[1], Unit.NEWTON_PER_KILONEWTON, null));
    return told;
  }

  /** Level times exp(-effect): the shorter and the lower, the better. */
  private static double[] of(double level, double wet, double rolling) {
    return new double[] {30 * level * Math.exp(-wet), 8 * level * Math.exp(-rolling)};
  }

  private static List<TradeoffRow> rows(Answer<?> answer) {
    return answer.rows().stream().map(TradeoffRow.class::cast).toList();
  }

  @Test
  void modelsStandAgainstTheirMeanAndTheFrontIsTheOnesThatNoneBeats() {
    try (TestArchive archive = new TestArchive(folder)) {
      archive.add(
          told("t1", Map.of("A", of(1, 0.10, 0), "B", of(1, 0, 0.04), "C", of(1, -0.02, 0.02))),
          told("t2", Map.of("A", of(1.1, 0.10, 0), "B", of(1.1, 0, 0.04))));
      Answer<?> answer = archive.ask("tradeoff", WET_AND_ROLLING);
      List<TradeoffRow> rows = rows(answer);
      assertThat(rows).extracting(TradeoffRow::model).containsExactly("A", "B", "C");
      assertThat(rows).extracting(TradeoffRow::front).containsExactly(true, true, false);
      assertThat(rows).extracting(TradeoffRow::tests).containsExactly(2, 2, 1);
      // by arithmetic: the mean of 0.10, 0 and -0.02 is 0.08/3; of 0, 0.04 and 0.02 it is 0.02
      assertThat(rows.get(0).logX()).isCloseTo(0.10 - 0.08 / 3, within(1e-12));
      assertThat(rows.get(0).logY()).isCloseTo(-0.02, within(1e-12));
      assertThat(rows.get(2).x()).isCloseTo(100 * Math.expm1(-0.02 - 0.08 / 3), within(1e-9));
      Relation relation = answer.whole(TradeoffQuestion.RELATION).orElseThrow();
      assertThat(relation.tests()).isEqualTo(2);
      assertThat(relation.results()).isEqualTo(5);
      assertThat(relation.withinTests()).isNegative();
      assertThat(relation.betweenModels()).as("three models have none").isNull();
    }
  }

  @Test
  void theLevelOfATestMakesNoCorrelation() {
    try (TestArchive archive = new TestArchive(folder)) {
      archive.add(
          told("easy", Map.of("A", of(1, 0.1, 0), "B", of(1, 0, 0.1), "C", of(1, -0.1, -0.1))),
          told("hard", Map.of("A", of(2, 0.1, 0), "B", of(2, 0, 0.1), "C", of(2, -0.1, -0.1))));
      Relation relation =
          archive.ask("tradeoff", WET_AND_ROLLING).whole(TradeoffQuestion.RELATION).orElseThrow();
      // x: 1, 0, -1; y: 0, 1, -1 in each test: sum xy = 1, sum xx = sum yy = 2
      assertThat(relation.withinTests()).isCloseTo(0.5, within(1e-9));
      assertThat(relation.low()).as("three models say nothing of how models differ").isNull();
    }
  }

  @Test
  void theLargestPartIsTakenAndTheRestCounted() {
    try (TestArchive archive = new TestArchive(folder)) {
      archive.add(
          told("t1", Map.of("A", of(1, 0.1, 0), "B", of(1, 0, 0.1), "C", of(1, 0, 0.03))),
          told("t2", Map.of("D", of(1, 0.1, 0), "E", of(1, 0, 0.1))),
          TestArchive.told("t3", "2020", SourceKind.OWN, null)
              .with("A", "wet-braking", 30.0, Unit.METRE, null)
              .with("F", "wet-braking", 33.0, Unit.METRE, null));
      Answer<?> answer = archive.ask("tradeoff", WET_AND_ROLLING);
      assertThat(rows(answer)).extracting(TradeoffRow::model).containsExactly("A", "B", "C");
      assertThat(answer.excluded())
          .contains(
              new Exclusion("models in smaller groups that no tests connect", 2),
              new Exclusion("models compared in one of the two disciplines only", 1));
    }
  }

  @Test
  void aStepIsToldWithTheModelThatItLedTo() {
    try (TestArchive archive = new TestArchive(folder)) {
      archive.add(
          TestArchive.lineage("Ma", "Li", "Ma Li 1", null),
          TestArchive.lineage("Ma", "Li", "Ma Li 2", "Ma Li 1"));
      List<TestArchive.Told> tests = new ArrayList<>();
      for (int t = 0; t < 4; t++) {
        double scatter = 0.002 * (t % 2 == 0 ? 1 : -1);
        tests.add(
            told(
                "t" + t,
                Map.of(
                    "Ma Li 1", of(1, scatter, 0),
                    "Ma Li 2", of(1, 0.05, 0.03 + scatter),
                    "X", of(1, 0, 0.01))));
      }
      archive.add(tests.toArray(new TestArchive.Told[0]));
      Answer<?> answer = archive.ask("tradeoff", WET_AND_ROLLING);
      TradeoffStep step =
          rows(answer).stream()
              .filter(row -> row.model().equals("Ma Li 2"))
              .findFirst()
              .orElseThrow()
              .step();
      assertThat(step.older()).isEqualTo("Ma Li 1");
      assertThat(step.dx()).isCloseTo(100 * Math.expm1(0.05), within(1e-9));
      assertThat(step.dy()).isCloseTo(100 * Math.expm1(0.03), within(1e-9));
      assertThat(step.improvedBoth()).isTrue();
      assertThat(answer.whole(TradeoffQuestion.STEPS).orElseThrow()).isEqualTo(List.of(step));
      assertThat(answer.summary()).contains("1 of 1 step improved both");
    }
  }

  @Test
  void whatCannotBeAnsweredIsSaidPlainly() {
    try (TestArchive archive = new TestArchive(folder)) {
      archive.add(told("t1", Map.of("A", of(1, 0.1, 0))), told("t2", Map.of("B", of(1, 0, 0.1))));
      Answer<?> none = archive.ask("tradeoff", WET_AND_ROLLING);
      assertThat(none.hasEvidence()).isFalse();
      assertThat(none.summary())
          .isEqualTo("No test has two models with comparable values in wet-braking.");
      for (List<String> wrong :
          List.of(
              List.of("wet-braking"),
              List.of("wet-braking", "wet-braking"),
              List.of("wet-braking", "overall"),
              List.of("wet-braking", "swimming"))) {
        assertThatThrownBy(() -> archive.ask("tradeoff", Map.of("discipline", wrong)))
            .isInstanceOf(Refusal.class);
      }
    }
  }

  @Test
  void resultsWithoutScatterMakeNoClaim() {
    try (TestArchive archive = new TestArchive(folder)) {
      archive.add(
          told("t1", Map.of("A", of(1, 0, 0), "B", of(1, 0, 0))),
          told("t2", Map.of("A", of(1, 0, 0), "B", of(1, 0, 0))));
      Answer<?> answer = archive.ask("tradeoff", WET_AND_ROLLING);
      Relation relation = answer.whole(TradeoffQuestion.RELATION).orElseThrow();
      assertThat(relation.withinTests()).isNull();
      assertThat(relation.betweenModels()).isNull();
      assertThat(answer.summary()).contains("no correlation can be worked out");
      assertThat(rows(answer)).extracting(TradeoffRow::front).containsExactly(true, true);
    }
  }
}
