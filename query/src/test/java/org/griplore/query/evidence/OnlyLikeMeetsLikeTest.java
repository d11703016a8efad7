package org.griplore.query.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.griplore.query.TestArchive;
import org.griplore.query.TestArchive.Told;
import org.griplore.query.answer.Answer;
import org.griplore.query.answer.Exclusion;
import org.griplore.query.compare.ContrastQuestion.ContrastRow;
import org.griplore.query.placings.Placing;
import org.griplore.query.placings.PlacingRow;
import org.griplore.store.vocabulary.Circumstance;
import org.griplore.store.vocabulary.Refusal;
import org.griplore.store.vocabulary.ResultKind;
import org.griplore.store.vocabulary.SourceKind;
import org.griplore.store.vocabulary.TyreState;
import org.griplore.store.vocabulary.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Figures of another kind, state, speed or temperature never enter a comparison unasked. */
class OnlyLikeMeetsLikeTest {
  private static final TyreState WORN = TyreState.worn(3.0);
  private static final Circumstance FROM_100 = Circumstance.MEASURED.within(100.0, 0.0);
  private static final Circumstance FROM_80 = Circumstance.MEASURED.within(80.0, 0.0);

  @TempDir Path folder;

  private static Told test(String key, double... metres) {
    Told told = TestArchive.told(key, "2021", SourceKind.OWN, "205/55 R16");
    for (int i = 0; i < metres.length; i++) {
      told.with(String.valueOf((char) ('A' + i)), "wet-braking", metres[i], Unit.METRE, null);
    }
    return told;
  }

  private static Told more(Told told, String model, double metres) {
    return told.with(model, "wet-braking", metres, Unit.METRE, null);
  }

  private static Answer<?> ask(TestArchive archive, String... options) {
    Map<String, List<String>> given = new HashMap<>();
    given.put("model", List.of("A"));
    given.put("discipline", List.of("wet-braking"));
    for (int i = 0; i < options.length; i += 2) {
      given.put(options[i], List.of(options[i + 1]));
    }
    return archive.ask("placings", given);
  }

  private static List<Placing> places(Answer<?> answer) {
    return ((PlacingRow) answer.rows().get(0)).places();
  }

  @Test
  void wornTyresAreASeriesOfTheirOwn() {
    try (TestArchive archive = new TestArchive(folder)) {
      Told told = test("t", 30, 31, 32, 33);
      for (String model : List.of("A", "B", "C", "D")) {
        more(told, model, model.equals("A") ? 50 : 40).in(WORN);
      }
      archive.add(told);
      Answer<?> asNew = ask(archive);
      assertThat(places(asNew)).extracting(Placing::place).containsExactly(1);
      assertThat(places(asNew)).extracting(Placing::field).containsExactly(4);
      assertThat(asNew.excluded()).contains(new Exclusion("worn tyres", 1));
      Answer<?> worn = ask(archive, "state", "worn");
      assertThat(places(worn)).extracting(Placing::place).containsExactly(4);
      assertThat(worn.inquiry().sentence()).contains("worn tyres");
    }
  }

  @Test
  void whatIsDeclaredOrClaimedIsNotMeasured() {
    try (TestArchive archive = new TestArchive(folder)) {
      Told told = test("t", 30, 31, 32, 33);
      more(told, "A", 99).under(Circumstance.of(ResultKind.DECLARED));
      more(told, "B", 11).under(Circumstance.of(ResultKind.CLAIMED));
      archive.add(told);
      Answer<?> measured = ask(archive);
      assertThat(places(measured)).extracting(Placing::field).containsExactly(4);
      assertThat(measured.excluded())
          .contains(new Exclusion("figures that are declared, not measured", 1));
      ContrastRow contrast =
          (ContrastRow)
              archive
                  .ask(
                      "contrast",
                      Map.of("model", List.of("A", "B"), "discipline", List.of("wet-braking")))
                  .rows()
                  .get(0);
      assertThat(contrast.difference().difference()).isCloseTo(100 * (31 / 30.0 - 1), within(1e-9));
    }
  }

  @Test
  void ofSeveralSpeedsTheFullestSpeaksForTheTest() {
    try (TestArchive archive = new TestArchive(folder)) {
      Told told = TestArchive.told("t", "2021", SourceKind.OWN, "205/55 R16");
      for (String model : List.of("A", "B", "C", "D")) {
        more(told, model, model.equals("A") ? 48 : 50).under(FROM_100);
      }
      for (String model : List.of("A", "B", "C", "D", "E")) {
        more(told, model, model.equals("A") ? 34 : 30).under(FROM_80);
      }
      archive.add(told);
      assertThat(places(ask(archive))).extracting(Placing::place).containsExactly(5);
      assertThat(places(ask(archive))).extracting(Placing::field).containsExactly(5);
      assertThat(ask(archive).excluded())
          .contains(
              new Exclusion(
                  "further speeds or conditions of a test, of which the fullest counts", 1));
    }
  }

  @Test
  void temperaturesAndSingleTestsAreLeftOutOnRequest() {
    try (TestArchive archive = new TestArchive(folder)) {
      archive.add(
          test("cold", 30, 31, 32, 33).warm(8.0, 5.0),
          test("warm", 33, 31, 32, 30).warm(25.0, 22.0),
          test("silent", 31, 30, 32, 33));
      assertThat(places(ask(archive, "surface-to", "12")))
          .extracting(Placing::test)
          .containsExactly("cold");
      assertThat(places(ask(archive, "air-from", "20")))
          .extracting(Placing::test)
          .containsExactly("warm");
      assertThat(ask(archive, "air-from", "20").excluded())
          .contains(new Exclusion("temperature of the air not stated", 1));
      assertThat(places(ask(archive, "without", "cold")))
          .extracting(Placing::test)
          .containsExactlyInAnyOrder("warm", "silent");
      assertThat(ask(archive, "surface-from", "60").hasEvidence()).isFalse();
      assertThatThrownBy(() -> ask(archive, "without", "nowhere")).isInstanceOf(Refusal.class);
      assertThatThrownBy(() -> ask(archive, "state", "melted")).isInstanceOf(Refusal.class);
      assertThatThrownBy(() -> ask(archive, "air-from", "20", "air-to", "10"))
          .isInstanceOf(Refusal.class);
    }
  }
}
