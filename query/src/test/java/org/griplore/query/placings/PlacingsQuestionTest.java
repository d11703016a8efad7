package org.griplore.query.placings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.griplore.query.TestArchive;
import org.griplore.query.TestArchive.Told;
import org.griplore.query.answer.Answer;
import org.griplore.query.answer.Exclusion;
import org.griplore.store.vocabulary.Refusal;
import org.griplore.store.vocabulary.SourceKind;
import org.griplore.store.vocabulary.TestDecision;
import org.griplore.store.vocabulary.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PlacingsQuestionTest {
  @TempDir Path folder;

  /** A test of wet braking distances; "us" is the first of them. */
  private static Told braking(String key, String date, SourceKind kind, double... metres) {
    Told told = TestArchive.told(key, date, kind, "205/55 R16 91V");
    for (int i = 0; i < metres.length; i++) {
      told.with(i == 0 ? "us" : "rival " + i, "wet-braking", metres[i], Unit.METRE, null);
    }
    return told;
  }

  private PlacingRow us(TestArchive archive, Map<String, List<String>> more) {
    Map<String, List<String>> options = new java.util.HashMap<>(more);
    options.put("model", List.of("us"));
    options.putIfAbsent("discipline", List.of("wet-braking"));
    return (PlacingRow) archive.ask("placings", options).rows().get(0);
  }

  @Test
  void placesAreCountedAgainstChance() {
    try (TestArchive archive = new TestArchive(folder)) {
      archive.add(
          braking("a", "2019-04-01", SourceKind.OWN, 30, 31, 32, 33, 34, 35, 36, 37),
          braking("b", "2021", SourceKind.INDEPENDENT, 33, 31, 32, 32.5, 34),
          braking("c", null, SourceKind.MAKER, 31, 30, 31, 33),
          braking("d", "2020-05", SourceKind.OWN, 30, 31, 32));
      List<String> all = List.of("own", "independent", "maker");
      PlacingRow us = us(archive, Map.of("source", all));
      assertThat(us.tests()).isEqualTo(3);
      assertThat(us.within()).isEqualTo(2);
      assertThat(us.places()).extracting(Placing::test).containsExactly("a", "b", "c");
      assertThat(us.places()).extracting(Placing::place).containsExactly(1, 4, 2);
      assertThat(us.places()).extracting(Placing::field).containsExactly(8, 5, 4);
      assertThat(us.places()).extracting(Placing::tied).containsExactly(false, false, true);
      assertThat(us.places()).extracting(Placing::basis).containsOnly("computed");
      assertThat(us.firstYear()).isEqualTo(2019);
      assertThat(us.lastYear()).isEqualTo(2021);
      assertThat(us.bestPlace()).isEqualTo(1);
      assertThat(us.medianPlace()).isEqualTo(2);
      // entries at place three or better over the field, and by hand: all three, or all but one
      double a = 3.0 / 8;
      double b = 3.0 / 5;
      double c = 3.0 / 4;
      assertThat(us.expectedByChance()).isCloseTo(a + b + c, within(1e-15));
      double atLeastTwo = a * b * c + a * b * (1 - c) + a * (1 - b) * c + (1 - a) * b * c;
      assertThat(us.chanceOfAtLeast()).isCloseTo(atLeastTwo, within(1e-15));
      Answer<?> answer =
          archive.ask(
              "placings",
              Map.of(
                  "model", List.of("us"),
                  "discipline", List.of("wet-braking"),
                  "source", all));
      assertThat(answer.excluded()).containsExactly(new Exclusion("field of 3 or fewer", 1));
      assertThat(answer.sources()).hasSize(3);
      assertThat(answer.caveats()).anyMatch(caveat -> caveat.startsWith("1 report was supplied"));
    }
  }

  @Test
  void filtersLeaveOutAndCount() {
    try (TestArchive archive = new TestArchive(folder)) {
      archive.add(
          braking("a", "2019-04-01", SourceKind.OWN, 30, 31, 32, 33),
          braking("b", "2021", SourceKind.INDEPENDENT, 33, 31, 32, 32.5),
          braking("c", null, SourceKind.MAKER, 31, 30, 31, 33));
      assertThat(us(archive, Map.of("from", List.of("2021-06"))).places())
          .extracting(Placing::test)
          .containsExactly("b");
      assertThat(us(archive, Map.of("to", List.of("2019"))).places())
          .extracting(Placing::test)
          .containsExactly("a");
      assertThat(us(archive, Map.of("source", List.of("own", "maker"))).places())
          .extracting(Placing::test)
          .containsExactly("a", "c");
      assertThat(us(archive, Map.of("size", List.of("205/55R16"))).tests()).isEqualTo(2);
      Answer<?> none =
          archive.ask(
              "placings",
              Map.of(
                  "model", List.of("us"),
                  "discipline", List.of("wet-braking"),
                  "rim", List.of("17")));
      assertThat(none.hasEvidence()).isFalse();
      assertThat(none.excluded()).containsExactly(new Exclusion("another rim diameter", 3));
      assertThat(none.summary()).isEqualTo("No test that counts ranked us in wet-braking.");
    }
  }

  /** Makers' reports stand beside what others measured, and alone they are no evidence. */
  @Test
  void makersReportsStandBeside() {
    try (TestArchive archive = new TestArchive(folder)) {
      archive.add(
          braking("a", "2019-04-01", SourceKind.OWN, 33, 31, 32, 30),
          braking("b", "2021", SourceKind.MAKER, 29, 31, 32, 32.5),
          TestArchive.told("c", "2021", SourceKind.MAKER, null)
              .with("us", "wear", 50000.0, Unit.KILOMETRE, null)
              .with("rival 1", "wear", 40000.0, Unit.KILOMETRE, null)
              .with("rival 2", "wear", 41000.0, Unit.KILOMETRE, null)
              .with("rival 3", "wear", 42000.0, Unit.KILOMETRE, null));
      PlacingRow us = us(archive, Map.of());
      assertThat(us.tests()).isEqualTo(1);
      assertThat(us.within()).isEqualTo(0);
      assertThat(us.makerTests()).isEqualTo(1);
      assertThat(us.makerWithin()).isEqualTo(1);
      Answer<?> alone =
          archive.ask("placings", Map.of("model", List.of("us"), "discipline", List.of("wear")));
      assertThat(alone.hasEvidence()).isFalse();
      assertThat(alone.summary())
          .isEqualTo(
              "No test that counts ranked us in wear. Reports that makers supplied alone tell of it:"
                  + " `--source maker` shows what they say.");
      assertThat(
              us(archive, Map.of("discipline", List.of("wear"), "source", List.of("maker")))
                  .tests())
          .isEqualTo(1);
    }
  }

  /** The same figures under another key, rounded: counted once until somebody decides. */
  @Test
  void aTestToldUnderAnotherKeyCountsOnce() {
    try (TestArchive archive = new TestArchive(folder)) {
      archive.add(
          braking("a", "2021-04-01", SourceKind.OWN, 30.14, 31.26, 32.41, 33.18, 35.52),
          braking("b", "2021-06", SourceKind.INDEPENDENT, 30.1, 31.3, 32.4, 33.2, 35.5));
      assertThat(us(archive, Map.of()).places()).extracting(Placing::test).containsExactly("a");
      archive
          .context()
          .archive()
          .decideTests(
              List.of(new TestDecision("a", "b", TestDecision.Verdict.APART, Instant.EPOCH, "")));
      assertThat(us(archive, Map.of()).tests()).isEqualTo(2);
    }
  }

  @Test
  void publishedPlacesCountBeforeComputedOnes() {
    try (TestArchive archive = new TestArchive(folder)) {
      archive.add(
          TestArchive.told("ranks", "2020", SourceKind.INDEPENDENT, null)
              .with("us", "overall", null, null, 2)
              .with("rival 1", "overall", null, null, 1)
              .with("rival 2", "overall", null, null, 9),
          TestArchive.told("marks", "2021", SourceKind.INDEPENDENT, null)
              .with("us", "overall", 1.9, Unit.SCHOOL_MARK, null)
              .with("rival 1", "overall", 1.8, Unit.SCHOOL_MARK, null)
              .with("rival 2", "overall", 2.4, Unit.SCHOOL_MARK, null)
              .with("rival 3", "overall", 4.0, Unit.SCHOOL_MARK, null),
          TestArchive.told("mixed", "2022", SourceKind.INDEPENDENT, null)
              .with("us", "overall", 1.9, Unit.SCHOOL_MARK, null)
              .with("rival 1", "overall", 88.0, Unit.POINTS_100, null)
              .with("rival 2", "overall", 2.4, Unit.SCHOOL_MARK, null)
              .with("rival 3", "overall", 4.0, Unit.SCHOOL_MARK, null));
      PlacingRow us = us(archive, Map.of("discipline", List.of("overall")));
      assertThat(us.places()).extracting(Placing::basis).containsExactly("published", "computed");
      assertThat(us.places()).extracting(Placing::place).containsExactly(2, 2);
      // places up to 9 were published: the report ranked at least nine, whatever it lists
      assertThat(us.places()).extracting(Placing::field).containsExactly(9, 4);
    }
  }

  @Test
  void aTestToldTwiceCountsOnce() {
    try (TestArchive archive = new TestArchive(folder)) {
      archive.add(braking("a", "2019", SourceKind.OWN, 30, 31, 32, 33));
      archive.add(braking("a", null, null, 34, 31, 32, 33));
      PlacingRow us = us(archive, Map.of());
      assertThat(us.places()).extracting(Placing::place).containsExactly(1);
      assertThat(us.places()).extracting(Placing::field).containsExactly(4);
    }
  }

  /** Whole points in which everybody is alike: all are among the first, as chance would have it. */
  @Test
  void ratingsThatAreAllTheSameAreNoNews() {
    try (TestArchive archive = new TestArchive(folder)) {
      for (int t = 0; t < 8; t++) {
        Told told = TestArchive.told("t" + t, "202" + t, SourceKind.OWN, "205/55 R16 91V");
        for (int i = 0; i < 10; i++) {
          told.with(i == 0 ? "us" : "rival " + i, "comfort", 7.0, Unit.POINTS_10, null);
        }
        archive.add(told);
      }
      PlacingRow whole = us(archive, Map.of("discipline", List.of("comfort")));
      assertThat(whole.within()).isEqualTo(8);
      assertThat(whole.expectedByChance()).isEqualTo(8);
      assertThat(whole.chanceOfAtLeast()).isEqualTo(1);
      PlacingRow shared =
          us(archive, Map.of("discipline", List.of("comfort"), "ties", List.of("shared")));
      assertThat(shared.within().doubleValue()).isCloseTo(2.4, within(1e-12));
      assertThat(shared.share()).isCloseTo(0.3, within(1e-12));
      assertThat(shared.expectedByChance()).isCloseTo(2.4, within(1e-12));
      assertThat(shared.chanceOfAtLeast()).isEqualTo(1);
    }
  }

  @Test
  void aWrongOptionIsOneSentence() {
    try (TestArchive archive = new TestArchive(folder)) {
      archive.add(braking("a", "2019", SourceKind.OWN, 30, 31, 32, 33));
      assertThatThrownBy(() -> us(archive, Map.of("top", List.of("0"))))
          .isInstanceOf(Refusal.class)
          .hasMessage("Option `top` is \"0\"; expected a whole number from 1 to 1000.");
      assertThatThrownBy(() -> archive.ask("placings", Map.of("model", List.of("rivel 1"))))
          .isInstanceOf(Refusal.class)
          .hasMessageContaining("did you mean rival 1");
      assertThatThrownBy(() -> archive.ask("placings", Map.of("modle", List.of("us"))))
          .hasMessageContaining("has no option `modle`");
    }
  }
}
