package org.griplore.store.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import org.griplore.store.vocabulary.Cell;
import org.griplore.store.vocabulary.Details;
import org.griplore.store.vocabulary.Entry;
import org.griplore.store.vocabulary.Finding;
import org.griplore.store.vocabulary.LineageRow;
import org.griplore.store.vocabulary.LoggedRun;
import org.griplore.store.vocabulary.Note;
import org.griplore.store.vocabulary.Refusal;
import org.griplore.store.vocabulary.Result;
import org.griplore.store.vocabulary.ResultCells;
import org.griplore.store.vocabulary.SeasonClass;
import org.griplore.store.vocabulary.SourceKind;
import org.griplore.store.vocabulary.TestDate;
import org.griplore.store.vocabulary.TestReport;
import org.griplore.store.vocabulary.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AdditionTest {
  private static final Clock NOON =
      Clock.fixed(Instant.parse("2024-05-01T12:00:00Z"), ZoneOffset.UTC);

  @TempDir Path folder;

  private static Original original(String name, String text) {
    return Original.of(name, text.getBytes(StandardCharsets.UTF_8));
  }

  private static Details details() {
    return new Details(
        "Wet day",
        new TestDate("2021-05-04"),
        SourceKind.OWN,
        "Own tests",
        "205/55 R16 91V",
        SeasonClass.SUMMER,
        "compact hatchback",
        1350.0,
        null,
        18.5,
        null,
        Map.of("date", new Cell("Wet", 2, 1, "Datum: 04.05.2021\nnachmittags = \\ spät")));
  }

  private static Entry entry(String model, int row, String found, double metres, Integer place) {
    Cell value = new Cell("Wet", row, 3, found);
    Cell at = place == null ? null : new Cell("Wet", row, 4, place.toString());
    return new Entry(
        model,
        new Cell("Wet", row, 1, model),
        null,
        List.of(
            new Result(
                "wet-braking",
                metres,
                Unit.METRE,
                null,
                6,
                place,
                new ResultCells(value, null, null, at),
                "decimal comma")));
  }

  private static TestReport report(double metres) {
    return new TestReport(
        "W21",
        details(),
        List.of(entry("Alpha 1", 5, "31,2", metres, 1), entry("Beta 2", 6, "32,0", 32.0, null)),
        List.of(new Note("Alpha 1", "wet-braking", "Bites early.", new Cell("Wet", 9, 1, "Bites"))),
        List.of(
            new LoggedRun(
                "wet-braking",
                1,
                "Alpha 1",
                LoggedRun.Role.CANDIDATE,
                1,
                80.0,
                20.0,
                31.2,
                null,
                null,
                null,
                null,
                18.5,
                null,
                null,
                new Cell("Log", 2, 1, "Alpha 1"))));
  }

  private AdditionOutcome add(Archive archive, Original original, TestReport report) {
    try (Addition addition = archive.begin(original, "table", NOON)) {
      addition.put(report);
      addition.put(
          new Finding(
              Finding.Kind.ASSUMED, null, "%", "per cent of best", "say what the per cent is of"));
      return addition.commit();
    }
  }

  @Test
  void whatWasPutIsReadBackWithItsPlace() {
    try (Archive archive = Archive.openOrCreate(folder)) {
      AdditionOutcome outcome = add(archive, original("wet.csv", "a"), report(31.2));
      assertThat(outcome.status()).isEqualTo(AdditionOutcome.Status.NEW);
      assertThat(outcome.results()).isEqualTo(2);

      Snapshot snapshot = archive.snapshot();
      assertThat(snapshot.tests()).hasSize(1);
      assertThat(snapshot.tests().get(0).details()).isEqualTo(details().withoutCells());
      assertThat(snapshot.reports().get(0).details()).isEqualTo(details());
      assertThat(snapshot.results().value()).containsExactly(31.2, 32.0);
      assertThat(snapshot.results().place()).containsExactly(1, 0);
      assertThat(snapshot.results().spread()).containsExactly(Double.NaN, Double.NaN);

      ResultOrigin origin = archive.originOf(snapshot.results().id()[0]).orElseThrow();
      assertThat(origin.cells().value()).isEqualTo(new Cell("Wet", 5, 3, "31,2"));
      assertThat(origin.cells().place()).isEqualTo(new Cell("Wet", 5, 4, "1"));
      assertThat(origin.rule()).isEqualTo("decimal comma");
      assertThat(origin.revision().addedAt()).isEqualTo(NOON.instant());
      assertThat(archive.originals().intact(origin.revision().sha256())).isTrue();
      assertThat(archive.notes())
          .singleElement()
          .extracting(NoteRecord::size)
          .isEqualTo("205/55 R16 91V");
      assertThat(archive.findings()).hasSize(1);
      assertThat(archive.runs(snapshot.tests().get(0).id()))
          .singleElement()
          .extracting(run -> run.run().distanceM())
          .isEqualTo(31.2);
      assertThat(archive.originOf(99)).isEmpty();
    }
  }

  @Test
  void aChangedContentIsARevisionThatSaysWhatChanged() {
    try (Archive archive = Archive.openOrCreate(folder)) {
      add(archive, original("wet.csv", "a"), report(31.2));
      long first = archive.snapshot().results().id()[0];
      long before = archive.stamp();
      AdditionOutcome outcome = add(archive, original("wet.csv", "b"), report(30.9));
      assertThat(outcome.status()).isEqualTo(AdditionOutcome.Status.REVISED);
      assertThat(outcome.changes())
          .containsExactly(
              "Changed: Alpha 1, wet-braking, test W21: 31.2 m, place 1 became 30.9 m, place 1.");
      assertThat(archive.stamp()).isEqualTo(before + 1);
      assertThat(archive.snapshot().results().value()).containsExactly(30.9, 32.0);
      assertThat(archive.snapshot().tests()).hasSize(1);
      assertThat(archive.originOf(first).orElseThrow().value()).isEqualTo(31.2);
      assertThat(archive.originOf(first).orElseThrow().revision().supersededBy()).isEqualTo(2);
      assertThat(archive.notes()).hasSize(1);
    }
  }

  @Test
  void withoutCommitNothingStays() {
    try (Archive archive = Archive.openOrCreate(folder)) {
      Original wet = original("wet.csv", "a");
      try (Addition addition = archive.begin(wet, "table", NOON)) {
        addition.put(report(31.2));
      }
      assertThat(archive.stamp()).isZero();
      assertThat(archive.snapshot().tests()).isEmpty();
      assertThat(archive.originals().path(wet.sha256())).doesNotExist();
    }
  }

  @Test
  void oneAddsAtATime() {
    try (Archive archive = Archive.openOrCreate(folder);
        Addition first = archive.begin(original("a", "a"), "table", NOON)) {
      assertThatThrownBy(() -> archive.begin(original("b", "b"), "table", NOON))
          .isInstanceOf(Refusal.class)
          .hasMessageContaining("Somebody else is adding");
      first.put(report(31.2));
      assertThat(archive.snapshot().tests()).isEmpty();
      first.commit();
      assertThat(archive.snapshot().tests()).hasSize(1);
    }
  }

  @Test
  void aSecondFigureForTheSameThingIsAnotherSetAndAFinding() {
    try (Archive archive = Archive.openOrCreate(folder);
        Addition addition = archive.begin(original("a", "a"), "table", NOON)) {
      addition.put(report(31.2));
      addition.put(report(31.4));
      AdditionOutcome outcome = addition.commit();
      assertThat(outcome.results()).isEqualTo(4);
      assertThat(outcome.tests()).isEqualTo(1);
      assertThat(archive.findings())
          .extracting(finding -> finding.finding().found())
          .containsExactly("Alpha 1, wet-braking: 31.4 m", "Beta 2, wet-braking: 32.0 m");
      assertThat(archive.findings())
          .extracting(finding -> finding.finding().kind())
          .containsOnly(Finding.Kind.ASSUMED);
      assertThat(archive.snapshot().results().value()).containsExactly(31.2, 32.0, 31.4, 32.0);
    }
  }

  @Test
  void aSettledNameCountsForItsModelAndLineageIsKnown() {
    try (Archive archive = Archive.openOrCreate(folder)) {
      add(archive, original("wet.csv", "a"), report(31.2));
      try (Addition addition = archive.begin(original("lineage", "l"), "lineage", NOON)) {
        addition.put(
            new LineageRow(
                "Maker Alpha 1",
                "Maker",
                "Alpha",
                "1",
                new TestDate("2019"),
                SeasonClass.SUMMER,
                null,
                "Maker Alpha 0",
                List.of("Alpha One"),
                new Cell("", 2, 1, "Alpha 1")));
        addition.settleAs("Alpha 1", "Maker Alpha 1");
        addition.commit();
      }
      Snapshot snapshot = archive.snapshot();
      assertThat(snapshot.models())
          .extracting(ModelRecord::name)
          .containsExactly("Beta 2", "Maker Alpha 0", "Maker Alpha 1");
      ModelRecord alpha = snapshot.models().get(snapshot.entries().model()[0]);
      assertThat(alpha.name()).isEqualTo("Maker Alpha 1");
      assertThat(alpha.aliases()).containsExactly("Alpha One", "Alpha 1");
      assertThat(alpha.launched()).isEqualTo(new TestDate("2019"));
      assertThat(archive.originOf(snapshot.results().id()[0]).orElseThrow().model())
          .isEqualTo("Maker Alpha 1");
    }
  }

  @Test
  void noArchiveIsARefusalAndNothingIsMade() {
    assertThatThrownBy(() -> Archive.open(folder.resolve("none")))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("There is no archive");
    assertThat(folder.resolve("none")).doesNotExist();
  }
}
