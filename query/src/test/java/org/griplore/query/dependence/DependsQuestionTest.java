package org.griplore.query.dependence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntToDoubleFunction;
import org.griplore.query.TestArchive;
import org.griplore.query.answer.Answer;
import org.griplore.query.answer.Exclusion;
import org.griplore.store.vocabulary.Refusal;
import org.griplore.store.vocabulary.SourceKind;
import org.griplore.store.vocabulary.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DependsQuestionTest {
  private static final List<String> SIZES =
      List.of("195/65 R15", "205/55 R16", "225/45 R17", "245/40 R18", "235/55 R19");

  @TempDir Path folder;

  /** A and B in each size, a test a year; A is better by the stated log ratio at each rim. */
  private TestArchive archive(int tests, IntToDoubleFunction contrastAtRim) {
    List<TestArchive.Told> told = new ArrayList<>();
    for (int t = 0; t < tests; t++) {
      int rim = 15 + t % SIZES.size();
      double level = 30 * (1 + 0.1 * t);
      told.add(
          TestArchive.told("t" + t, String.valueOf(2015 + t), SourceKind.OWN, SIZES.get(rim - 15))
              .with(
                  "A",
                  "wet-braking",
                  level * Math.exp(-contrastAtRim.applyAsDouble(rim)),
                  Unit.METRE,
                  null)
              .with("B", "wet-braking", level, Unit.METRE, null));
    }
    return new TestArchive(folder).add(told.toArray(new TestArchive.Told[0]));
  }

  private static DependsRow row(TestArchive archive, String on) {
    Answer<?> answer =
        archive.ask("depends", Map.of("contrast", List.of("A", "B"), "on", List.of(on)));
    assertThat(answer.rows()).hasSize(1);
    return (DependsRow) answer.rows().get(0);
  }

  /**
   * By arithmetic, tests of one weight: contrasts 0, 0.02, 0.01, 0.05, 0.04 at rims 15 to 19 give a
   * slope of (−2·0 − 0.02 + 0.05 + 2·0.04)/10 = 0.011 an inch and 0.024 at 17 inches.
   */
  @Test
  void theSlopeIsThatOfTheContrastsInsideTests() {
    double[] at = {0, 0.02, 0.01, 0.05, 0.04};
    try (TestArchive archive = archive(5, rim -> at[rim - 15])) {
      DependsRow row = row(archive, "rim");
      assertThat(row.logSlope()).isCloseTo(0.011, within(1e-12));
      assertThat(row.slope()).isCloseTo(100 * Math.expm1(0.011), within(1e-9));
      assertThat(row.unit()).isEqualTo("% per inch");
      assertThat(row.tests()).isEqualTo(5);
      assertThat(row.at()).isCloseTo(17, within(1e-12));
      assertThat(row.contrast()).isCloseTo(100 * Math.expm1(0.024), within(1e-9));
      assertThat(row.low()).isLessThan(row.slope());
      assertThat(row.points())
          .extracting(ContrastPoint::at)
          .containsExactly(15., 16., 17., 18., 19.);
      assertThat(row.line().get(0).at()).isEqualTo(15);
      // classical regression gives the same line: residuals by hand, HC2 by its definition
      assertThat(row.logSe()).isCloseTo(hc2(at), within(1e-12));
    }
  }

  /** Σ (x−x̄)² e² / (1 − h) over (Σ (x−x̄)²)², leverage h = 1/5 + (x−x̄)²/10. */
  private static double hc2(double[] y) {
    double sum = 0;
    for (int i = 0; i < 5; i++) {
      double x = i - 2;
      double e = y[i] - 0.024 - 0.011 * x;
      sum += x * x * e * e / (1 - 0.2 - x * x / 10);
    }
    return Math.sqrt(sum) / 10;
  }

  @ParameterizedTest(name = "{0} tests, on {1}: {2}")
  @CsvSource({
    "2, rim, cannot tell: 2 of at least 3 tests",
    "5, mass, cannot tell: 0 of at least 3 tests",
    "5, temperature, cannot tell: 0 of at least 3 tests",
    "5, rim, 'cannot tell: the tests do not scatter, so nothing is known of the error'"
  })
  void whatTheDataCannotTellIsSaid(int tests, String on, String verdict) {
    try (TestArchive archive = archive(tests, rim -> 0.01)) {
      DependsRow row = row(archive, on);
      assertThat(row.verdict()).isEqualTo(verdict);
      assertThat(row.low()).isNull();
      assertThat(row.p()).isNull();
    }
  }

  @Test
  void aModeratorThatDoesNotVarySaysSo() {
    try (TestArchive archive = archive(10, rim -> 0.01 * rim)) {
      Answer<?> answer =
          archive.ask(
              "depends",
              Map.of("contrast", List.of("A", "B"), "on", List.of("rim"), "rim", List.of("16")));
      assertThat(((DependsRow) answer.rows().get(0)).verdict())
          .isEqualTo("cannot tell: 2 of at least 3 tests");
    }
    try (TestArchive archive =
        new TestArchive(folder.resolve("one")).add(sameSize("a"), sameSize("b"), sameSize("c"))) {
      assertThat(row(archive, "width").verdict())
          .isEqualTo("cannot tell: all tests have the same section width");
    }
  }

  private static TestArchive.Told sameSize(String key) {
    return TestArchive.told(key, "2020", SourceKind.OWN, "205/55 R16")
        .with("A", "wet-braking", 30.0 + key.charAt(0) % 5, Unit.METRE, null)
        .with("B", "wet-braking", 33.0, Unit.METRE, null);
  }

  @Test
  void testsWithoutTheModeratorAreCounted() {
    try (TestArchive archive = archive(4, rim -> 0.01 * rim)) {
      archive.add(
          TestArchive.told("bare", null, SourceKind.OWN, null)
              .with("A", "wet-braking", 30.0, Unit.METRE, null)
              .with("B", "wet-braking", 33.0, Unit.METRE, null),
          TestArchive.told("alone", "2020", SourceKind.OWN, null)
              .with("A", "wet-braking", 30.0, Unit.METRE, null));
      Answer<?> answer =
          archive.ask("depends", Map.of("contrast", List.of("A : B"), "on", List.of("year")));
      assertThat(answer.excluded())
          .containsExactlyInAnyOrder(
              new Exclusion("tests that do not hold both sides", 1),
              new Exclusion("tests with both that do not state the year", 1));
      assertThat(answer.sources()).hasSize(4);
    }
  }

  @Test
  void allFiveAreAskedWhenNoneIsNamed() {
    try (TestArchive archive = archive(5, rim -> rim % 2 == 0 ? 0.01 : 0.02)) {
      Answer<?> answer = archive.ask("depends", Map.of("contrast", List.of("A", "B")));
      assertThat(answer.rows())
          .extracting(row -> ((DependsRow) row).moderator())
          .containsExactly("rim", "width", "mass", "temperature", "year");
      assertThat(answer.summary()).endsWith("a dependence on none of 5 looked at can be told.");
    }
  }

  @Test
  void whatCannotBeAnsweredIsSaidPlainly() {
    try (TestArchive archive = archive(3, rim -> 0.01)) {
      archive.add(
          TestArchive.told("other", "2020", SourceKind.OWN, null)
              .with("C", "wet-braking", 30.0, Unit.METRE, null));
      Answer<?> none = archive.ask("depends", Map.of("contrast", List.of("A", "C")));
      assertThat(none.hasEvidence()).isFalse();
      assertThat(none.summary()).isEqualTo("No test holds both A and C in wet-braking.");
      Map<List<String>, String> wrong = new LinkedHashMap<>();
      wrong.put(List.of("A"), "two sides");
      wrong.put(List.of("A", "A"), "without a model in common");
      wrong.put(List.of("A", "B", "C"), "two sides");
      wrong.put(List.of("summer", "summer"), "two sides");
      wrong.put(List.of("A", "Q"), "no model in the archive");
      wrong.forEach(
          (sides, says) ->
              assertThatThrownBy(() -> archive.ask("depends", Map.of("contrast", sides)))
                  .isInstanceOf(Refusal.class)
                  .hasMessageContaining(says));
    }
  }

  /**
   * By arithmetic: B loses 0.02 an inch to A and C alike; C, tested on the small rim only, and D,
   * on the large one only, differ by 0.3. The contrast of the lines mixes both, the same models do
   * not.
   */
  @Test
  void theSameModelsAreNotMisledByWhoStandsForASide() {
    try (TestArchive archive = new TestArchive(folder)) {
      archive.add(
          TestArchive.lineage("Ma", "Li", "A", null),
          TestArchive.lineage("Ma", "Li", "C", null),
          TestArchive.lineage("Ma", "Li", "D", null));
      archive.add(
          line("t1", 0, "C", 0.0, 0.001),
          line("t2", 1, "C", 0.0, -0.001),
          line("t3", 2, "C", 0.0, 0.0005),
          line("t4", 3, "D", 0.3, 0.0005),
          line("t5", 4, "D", 0.3, -0.001),
          line("t6", 4, "D", 0.3, 0.001));
      Answer<?> answer =
          archive.ask("depends", Map.of("contrast", List.of("Ma Li", "B"), "on", List.of("rim")));
      DependsRow row = (DependsRow) answer.rows().get(0);
      assertThat(row.slope()).isGreaterThan(4);
      assertThat(row.sameModels()).isCloseTo(100 * Math.expm1(0.02), within(0.1));
      assertThat(answer.caveats()).anyMatch(caveat -> caveat.contains("Which models stand"));
    }
  }

  /** A and another of its line against B: better by 0.02 an inch, the other by its own besides. */
  private static TestArchive.Told line(
      String key, int size, String other, double own, double scatter) {
    return TestArchive.told(key, "2020", SourceKind.OWN, SIZES.get(size))
        .with("A", "wet-braking", 30 * Math.exp(-0.02 * size - scatter), Unit.METRE, null)
        .with(other, "wet-braking", 30 * Math.exp(-0.02 * size - own), Unit.METRE, null)
        .with("B", "wet-braking", 30.0, Unit.METRE, null);
  }
}
