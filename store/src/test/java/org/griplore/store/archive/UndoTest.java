package org.griplore.store.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.griplore.store.check.ArchiveCheck;
import org.griplore.store.check.CheckLine;
import org.griplore.store.vocabulary.Cell;
import org.griplore.store.vocabulary.LineageRow;
import org.griplore.store.vocabulary.Refusal;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class UndoTest {
  @TempDir Path folder;
  private Archive archive;

  @BeforeEach
  void make() {
    archive = Archive.openOrCreate(folder);
  }

  @AfterEach
  void close() {
    archive.close();
  }

  private static void add(Delivery delivery, String file, int tests, double shift) {
    try (Addition addition =
        delivery.begin(Figures.original(file, file + tests + shift), "table", Map.of())) {
      for (int test = 0; test < tests; test++) {
        addition.put(Figures.report(test, shift));
      }
      addition.commit();
    }
  }

  private static LineageRow lineage(String name) {
    return new LineageRow(
        name, "Velmar", "Ostra", null, null, null, null, null, List.of(), new Cell("", 2, 1, name));
  }

  private void settle(String file, String name, String means) {
    try (Addition addition = archive.begin(Figures.original(file, file), "lineage", Figures.NOON)) {
      addition.put(lineage(means));
      addition.settleAs(name, means);
      addition.commit();
    }
  }

  @Test
  void anEmptyArchiveHasNothingToTakeBack() {
    assertThat(archive.lastAdded()).isEmpty();
    assertThat(archive.undo()).isEmpty();
    assertThat(archive.stamp()).isZero();
  }

  @Test
  void aDeliveryOfSeveralSourcesGoesAsOne() {
    Figures.add(archive, "first.csv", 1, 0);
    Delivery delivery = archive.delivery(Figures.NOON);
    add(delivery, "first.csv", 1, 0.5);
    add(delivery, "second.csv", 3, 0);
    assertThat(archive.snapshot().results().count()).isEqualTo(400);

    TakenBack taken = archive.undo().orElseThrow();
    assertThat(taken.revisions())
        .extracting(Revision::name)
        .containsExactly("first.csv", "second.csv");
    assertThat(taken.currentAgain()).extracting(Revision::number).containsExactly(1);
    assertThat(taken.tests()).containsExactly("T1", "T2");
    assertThat(taken.results()).isEqualTo(400);
    assertThat(taken.models()).isEmpty();
    assertThat(archive.snapshot().results().value()[0]).isEqualTo(30.0);
    assertThat(archive.sourceCount()).isEqualTo(1);
    taken
        .revisions()
        .forEach(gone -> assertThat(archive.originals().path(gone.sha256())).doesNotExist());
    assertThat(ArchiveCheck.run(archive, (part, done, total) -> {})).allMatch(CheckLine::good);
  }

  @Test
  void sayingWhatWouldGoChangesNothing() {
    Figures.add(archive, "first.csv", 2, 0);
    TakenBack told = archive.lastAdded().orElseThrow();
    assertThat(archive.stamp()).isEqualTo(1);
    assertThat(archive.snapshot().results().count()).isEqualTo(200);
    assertThat(archive.originals().intact(told.revisions().get(0).sha256())).isTrue();
    assertThat(archive.undo()).contains(told);
    assertThat(archive.snapshot().models()).isEmpty();
  }

  @Test
  void anAdditionOfSomebodyElseInBetweenPartsADelivery() {
    Delivery mine = archive.delivery(Figures.NOON);
    add(mine, "a.csv", 1, 0);
    Figures.add(archive, "other.csv", 1, 1);
    add(mine, "b.csv", 1, 2);
    add(mine, "c.csv", 1, 3);
    assertThat(archive.undo().orElseThrow().revisions())
        .extracting(Revision::name)
        .containsExactly("b.csv", "c.csv");
    add(mine, "d.csv", 1, 4);
    assertThat(archive.undo().orElseThrow().revisions())
        .extracting(Revision::name)
        .containsExactly("d.csv");
    assertThat(archive.undo().orElseThrow().revisions())
        .extracting(Revision::name)
        .containsExactly("other.csv");
  }

  @Test
  void anAdditionThatDidNotStayGivesItsDeliveryNoNumber() {
    Delivery mine = archive.delivery(Figures.NOON);
    try (Addition left = mine.begin(Figures.original("a.csv", "a"), "table", Map.of())) {
      left.put(Figures.report(1, 0));
    }
    Figures.add(archive, "other.csv", 1, 1);
    add(mine, "b.csv", 1, 2);
    assertThat(archive.undo().orElseThrow().revisions())
        .extracting(Revision::name)
        .containsExactly("b.csv");
  }

  @Test
  void aNameMeansWhatItMeantBefore() {
    Figures.add(archive, "first.csv", 1, 0);
    settle("l1", "Velmar Ostra 3", "Velmar Ostra Three");
    settle("l2", "Velmar Ostra Three", "Velmar Ostra III");
    assertThat(aliases("Velmar Ostra III")).containsExactly("Velmar Ostra 3", "Velmar Ostra Three");

    assertThat(archive.undo().orElseThrow().apartAgain())
        .containsExactly("Velmar Ostra 3", "Velmar Ostra Three");
    assertThat(aliases("Velmar Ostra Three")).containsExactly("Velmar Ostra 3");

    TakenBack first = archive.undo().orElseThrow();
    assertThat(first.models()).containsExactly("Velmar Ostra Three");
    assertThat(first.apartAgain()).containsExactly("Velmar Ostra 3");
    assertThat(archive.models()).extracting(ModelRecord::name).contains("Velmar Ostra 3");
    assertThat(archive.referenceProblems()).isEmpty();
  }

  private List<String> aliases(String name) {
    return archive.models().stream()
        .filter(model -> model.name().equals(name))
        .findFirst()
        .orElseThrow()
        .aliases();
  }

  @Test
  void aNumberThatWasToldNeverMeansAnotherFigure() {
    Figures.add(archive, "first.csv", 1, 0);
    Figures.add(archive, "second.csv", 2, 1);
    long highest = highestFigure();
    int reading = archive.undo().orElseThrow().revisions().get(0).id();
    assertThat(archive.originOf(highest)).isEmpty();
    Figures.add(archive, "third.csv", 2, 2);
    assertThat(archive.originOf(highest)).isEmpty();
    assertThat(archive.originOf(highest + 1)).isPresent();
    assertThat(archive.revisions().get(1).id()).isGreaterThan(reading);
  }

  private long highestFigure() {
    return java.util.Arrays.stream(archive.snapshot().results().id()).max().orElseThrow();
  }

  @Test
  void anOriginalThatAnotherReadingWasMadeOfStays() {
    byte[] content = "same".getBytes(java.nio.charset.StandardCharsets.UTF_8);
    for (String file : List.of("a.csv", "b.csv")) {
      try (Addition addition = archive.begin(Original.of(file, content), "table", Figures.NOON)) {
        addition.put(Figures.report(1, 0));
        addition.commit();
      }
    }
    TakenBack taken = archive.undo().orElseThrow();
    assertThat(archive.originals().intact(taken.revisions().get(0).sha256())).isTrue();
  }

  @Test
  void nothingIsTakenBackWhileSomebodyAdds() {
    Figures.add(archive, "first.csv", 1, 0);
    try (Addition adding = archive.begin(Figures.original("b.csv", "b"), "table", Figures.NOON)) {
      adding.put(Figures.report(2, 0));
      assertThatThrownBy(archive::undo)
          .isInstanceOf(Refusal.class)
          .hasMessageContaining("Somebody else is adding")
          .hasMessageContaining("nothing was taken back");
    }
    assertThat(archive.snapshot().results().count()).isEqualTo(100);
  }
}
