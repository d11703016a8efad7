package org.griplore.query.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.griplore.query.TestArchive;
import org.griplore.query.answer.Answer;
import org.griplore.query.answer.Footnote;
import org.griplore.store.vocabulary.LineageRow;
import org.griplore.store.vocabulary.Refusal;
import org.griplore.store.vocabulary.SourceKind;
import org.griplore.store.vocabulary.Unit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TableQuestionTest {
  @TempDir Path folder;
  private TestArchive archive;

  /** Two small-car tests with A and B, a large-car test with B and C, D by itself elsewhere. */
  @BeforeEach
  void fill() {
    archive =
        new TestArchive(folder)
            .add(
                TestArchive.told("small-1", "2020", SourceKind.OWN, "205/55 R16 91V")
                    .on(1300)
                    .with("A", "wet-braking", 30.0, Unit.METRE, null)
                    .with("B", "wet-braking", 33.0, Unit.METRE, null)
                    .with("A", "exterior-noise", 70.0, Unit.DECIBEL_A, null)
                    .with("B", "exterior-noise", 71.5, Unit.DECIBEL_A, null),
                TestArchive.told("small-2", "2021", SourceKind.INDEPENDENT, "215/60 R16")
                    .on(1450)
                    .with("A", "wet-braking", 40.0, Unit.METRE, null)
                    .with("B", "wet-braking", 44.0, Unit.METRE, null),
                TestArchive.told("large", "2022", SourceKind.OWN, "255/40 R20")
                    .on(2200)
                    .with("B", "wet-braking", 50.0, Unit.METRE, null)
                    .with("C", "wet-braking", 40.0, Unit.METRE, null),
                TestArchive.told("alone", "2022", SourceKind.OWN, "205/55 R16")
                    .on(1300)
                    .with("D", "wet-braking", 20.0, Unit.METRE, null));
  }

  @AfterEach
  void close() {
    archive.close();
  }

  private Answer<?> ask(Map<String, List<String>> more) {
    Map<String, List<String>> options = new HashMap<>();
    options.put("models", List.of("A", "B", "C", "D"));
    options.put("size", List.of("205/55 R16"));
    options.put("mass", List.of("1400"));
    options.putAll(more);
    return archive.ask("table", options);
  }

  private static ComparedFigure cell(Answer<?> answer, int row, String discipline) {
    return ((TableRow) answer.rows().get(row)).figures().get(discipline);
  }

  @Test
  void aCellIsMeasuredInLikeTestsExpectedFromOthersOrWithoutEvidence() {
    Answer<?> answer = ask(Map.of());
    ComparedFigure a = cell(answer, 0, "wet-braking");
    ComparedFigure b = cell(answer, 1, "wet-braking");
    ComparedFigure c = cell(answer, 2, "wet-braking");
    ComparedFigure d = cell(answer, 3, "wet-braking");
    assertThat(List.of(a.basis(), b.basis(), c.basis(), d.basis()))
        .containsExactly("measured", "measured", "expected", "none");
    assertThat(List.of(a.tests(), b.tests(), c.tests(), d.tests())).containsExactly(2, 2, 1, 0);
    // on the level of the later like test; C is 50/40 times as good as B
    assertThat(a.value()).isCloseTo(40, within(1e-9));
    assertThat(b.value()).isCloseTo(44, within(1e-9));
    assertThat(c.value()).isCloseTo(44.0 * 40 / 50, within(1e-9));
    assertThat(answer.whole(TableQuestion.LEVELS).orElseThrow())
        .isEqualTo(Map.of("wet-braking", "small-2", "exterior-noise", "small-1"));
    assertThat(List.of(a.place(), b.place(), c.place())).containsExactly(2, 3, 1);
    assertThat(c.measured()).isNull();
    assertThat(c.delta()).isZero();
    assertThat(a.to()).isEqualTo("C");
    assertThat(b.delta()).isCloseTo(100 * (40.0 / 50 - 1), within(1e-9));
    assertThat(d).isEqualTo(ComparedFigure.none("wet-braking"));
    assertThat(answer.whole(TableQuestion.LIKE).orElseThrow().toString())
        .contains("rim=16.0", "widthFrom=195.0", "massTo=1610", "tests=[small-1, small-2]");
  }

  @Test
  void oneLikeTestIsShownAsItWasMeasuredAndLeadsToItsCell() {
    ComparedFigure a = cell(ask(Map.of()), 0, "exterior-noise");
    ComparedFigure b = cell(ask(Map.of()), 1, "exterior-noise");
    assertThat(a.value()).isCloseTo(70, within(1e-12));
    assertThat(b.value()).isCloseTo(71.5, within(1e-12));
    assertThat(b.delta()).isCloseTo(-1.5, within(1e-12));
    assertThat(b.deltaUnit()).isEqualTo("dB(A)");
    assertThat(b.logDelta()).isNull();
    assertThat(b.result()).isNotNull();
    assertThat(archive.ask("origin", Map.of("result", List.of(b.result().toString()))).rows())
        .isNotEmpty();
  }

  @Test
  void differencesAreToTheMeanOrToAChosenTyre() {
    Answer<?> mean = ask(Map.of("reference", List.of("mean")));
    double sum = 0;
    for (int row = 0; row < 3; row++) {
      sum += cell(mean, row, "wet-braking").logDelta();
      assertThat(cell(mean, row, "wet-braking").to()).isNull();
    }
    assertThat(sum).isCloseTo(0, within(1e-12));
    Answer<?> chosen = ask(Map.of("reference", List.of("B")));
    assertThat(cell(chosen, 0, "wet-braking").delta()).isCloseTo(10, within(1e-9));
    assertThat(cell(chosen, 1, "wet-braking").delta()).isZero();
    assertThat(cell(chosen, 1, "wet-braking").low()).isNull();
    assertThat(cell(chosen, 2, "wet-braking").delta()).isCloseTo(25, within(1e-9));
  }

  @Test
  void theReferenceJoinsTheTableAndWithoutEvidenceThereAreNoDifferences() {
    Answer<?> answer =
        ask(Map.of("models", List.of("A"), "reference", List.of("D"), "size", List.of()));
    assertThat(answer.rows())
        .extracting(row -> ((TableRow) row).role())
        .containsExactly("asked", "reference");
    assertThat(cell(answer, 0, "wet-braking").value()).isNotNull();
    assertThat(cell(answer, 0, "wet-braking").delta()).isNull();
    assertThat(answer.caveats()).anyMatch(caveat -> caveat.startsWith("D has no figure"));
  }

  @Test
  void withoutALikeTestThereAreDifferencesButNoValues() {
    Answer<?> answer = ask(Map.of("size", List.of("155/70 R13")));
    ComparedFigure a = cell(answer, 0, "wet-braking");
    assertThat(a.basis()).isEqualTo("expected");
    assertThat(a.value()).isNull();
    assertThat(a.unit()).isNull();
    assertThat(a.delta()).isCloseTo(100 * (1.1 * 40 / 50 - 1), within(1e-9));
    assertThat(a.place()).isEqualTo(2);
  }

  @Test
  void weightsMakeATotalThatSaysWhatItLeftOut() {
    Answer<?> answer =
        ask(
            Map.of(
                "weights", List.of("wet-braking=3,exterior-noise=1"), "reference", List.of("B")));
    TableRow a = (TableRow) answer.rows().get(0);
    TableRow b = (TableRow) answer.rows().get(1);
    TableRow c = (TableRow) answer.rows().get(2);
    TableRow d = (TableRow) answer.rows().get(3);
    // effects of A, B, C in wet braking: 0.0953, 0, 0.2231 from B; sample standard deviations
    double[] wet = {Math.log(1.1), 0, Math.log(1.25)};
    double mean = (wet[0] + wet[2]) / 3;
    double sd =
        Math.sqrt((Math.pow(wet[0] - mean, 2) + mean * mean + Math.pow(wet[2] - mean, 2)) / 2);
    double noise = 1.5 / Math.sqrt(2 * 0.75 * 0.75);
    assertThat(a.total().value()).isCloseTo((3 * wet[0] / sd + noise) / 4, within(1e-9));
    assertThat(a.total().place()).isEqualTo(1);
    assertThat(a.total().leftOut()).isEmpty();
    assertThat(b.total().value()).isZero();
    assertThat(b.total().place()).isEqualTo(2);
    assertThat(c.total().value()).isCloseTo(wet[2] / sd, within(1e-9));
    assertThat(c.total().place()).isNull();
    assertThat(c.total().leftOut()).containsExactly("exterior-noise");
    assertThat(d.total().value()).isNull();
  }

  @Test
  void conditionsOfLikeTestsAndNotesAreFootnotes() {
    archive.add(
        TestArchive.told("small-1", "2020", SourceKind.OWN, "205/55 R16 91V")
            .noted("A", "wet-braking", "Stops short.")
            .noted("A", null, "A friendly tyre.")
            .noted("C", null, "Not from a like test."),
        TestArchive.told("large", null, null, null).noted("A", "wet-braking", "Elsewhere."));
    Answer<?> answer = ask(Map.of("models", List.of("A", "B")));
    assertThat(answer.footnotes())
        .extracting(Footnote::text)
        .containsExactly(
            "Test small-1: 2020, 205/55 R16 91V, 1300 kg",
            "Test small-2: 2021, 215/60 R16, 1450 kg",
            "A, wet-braking: \u201cStops short.\u201d (small-1)",
            "A: \u201cA friendly tyre.\u201d (small-1)");
    assertThat(cell(answer, 0, "wet-braking").footnotes()).containsExactly(1, 2, 3);
    assertThat(cell(answer, 1, "exterior-noise").footnotes()).containsExactly(1);
    assertThat(((TableRow) answer.rows().get(0)).footnotes()).containsExactly(4);
  }

  /** A and B meet in one like test, E and F in another; only a test of another size joins them. */
  @Test
  void likeTestsThatNothingLikeConnectsAreBothMeasured() {
    archive.add(
        TestArchive.told("small-3", "2023", SourceKind.OWN, "205/55 R16")
            .on(1400)
            .with("E", "wet-braking", 36.0, Unit.METRE, null)
            .with("F", "wet-braking", 30.0, Unit.METRE, null),
        TestArchive.told("joining", "2023", SourceKind.OWN, "235/35 R19")
            .on(1800)
            .with("E", "wet-braking", 50.0, Unit.METRE, null)
            .with("A", "wet-braking", 50.0, Unit.METRE, null));
    Answer<?> answer =
        ask(Map.of("models", List.of("A", "B", "E", "F"), "reference", List.of("A")));
    List<ComparedFigure> cells = new ArrayList<>();
    for (int row = 0; row < 4; row++) {
      cells.add(cell(answer, row, "wet-braking"));
    }
    assertThat(cells).extracting(ComparedFigure::basis).containsOnly("measured");
    assertThat(cells.get(2).delta()).isCloseTo(0, within(1e-9));
    assertThat(cells.get(3).delta()).isCloseTo(20, within(1e-9));
    assertThat(cells.get(3).value()).isCloseTo(30, within(1e-9));
    assertThat(cells.get(3).measured()).isEqualTo(30);
    assertThat(cells.get(0).measured()).as("the mean of 30 and 40").isEqualTo(35);
    assertThat(cells.get(0).value()).as("as E is there").isCloseTo(36, within(1e-9));
  }

  private static LineageRow model(String name, String maker, String follows) {
    return new LineageRow(name, maker, maker, null, null, null, null, follows, List.of(), null);
  }

  @Test
  void relativesAndRivalsJoinInOrder() {
    archive.add(
        model("A", "One", "Old"),
        model("Old", "One", null),
        model("E", "One", "A"),
        model("B", "Two", null),
        model("C", "Three", null));
    Answer<?> answer =
        ask(
            Map.of(
                "models", List.of("A"), "with", List.of("predecessors", "successors", "rivals")));
    assertThat(answer.rows())
        .extracting(row -> ((TableRow) row).model() + " " + ((TableRow) row).role())
        .containsExactly("A asked", "Old predecessor", "E successor", "B rival");
  }

  @Test
  void badOptionsAreRefusedInASentence() {
    for (Map<String, List<String>> bad :
        List.of(
            Map.of("models", List.of("Nobody")),
            Map.of("models", List.<String>of()),
            Map.of("size", List.of("round")),
            Map.of("mass", List.of("heavy")),
            Map.of("reference", List.of("worst")),
            Map.of("with", List.of("friends")),
            Map.of("discipline", List.of("overall")),
            Map.of("discipline", List.of("speed")),
            Map.of("weights", List.of("wet-braking")),
            Map.of("weights", List.of("wet-braking=0")),
            Map.of("weights", List.of("wet-braking=1,wet-braking=2")))) {
      assertThatThrownBy(() -> ask(bad)).isInstanceOf(Refusal.class).hasMessageContaining(" ");
    }
  }

  @Test
  void tyresThatNothingIsKnownOfGiveAnEmptyTable() {
    Answer<?> answer = ask(Map.of("models", List.of("D")));
    assertThat(answer.hasEvidence()).isFalse();
    assertThat(answer.summary()).isEqualTo("No test says how these tyres compare.");
  }
}
