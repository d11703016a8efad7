package org.griplore.ingest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import org.griplore.store.archive.Archive;
import org.griplore.store.archive.DraftRecord;
import org.griplore.store.archive.Original;
import org.griplore.store.vocabulary.DisciplineCatalogue;
import org.griplore.store.vocabulary.ProposedReading;
import org.griplore.store.vocabulary.Refusal;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("A table that cannot be decided on")
class DraftsTest {
  /** Each tyre twice, and nothing says why. */
  private static final String OPEN =
      """
      Tyre;Wet braking (m);Dry braking (m)
      Velmora Aurelis 5;31.2;36.4
      Quillarn Tarvion 11;32.5;35.9
      Zelvartis Omnivar AS2;33.1;37.0
      Velmora Aurelis 5;34.2;38.4
      Quillarn Tarvion 11;35.5;37.9
      Zelvartis Omnivar AS2;36.1;39.0
      """;

  @TempDir Path folder;

  private static Original original(String text) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    return Original.of("open.csv", "open.csv", () -> new ByteArrayInputStream(bytes));
  }

  @Test
  @DisplayName("is kept as a draft with its readings, and tells no figure")
  void isKept() {
    try (Archive archive = Archive.openOrCreate(folder)) {
      Intake intake = new Intake(archive, DisciplineCatalogue.standard(), Clock.systemUTC());
      AddedSource added = intake.add(original(OPEN), ReadOptions.NONE);
      assertThat(added.refusal()).isNull();
      assertThat(archive.snapshot().results().id()).isEmpty();
      List<DraftRecord> drafts = archive.drafts();
      assertThat(drafts).hasSize(1);
      assertThat(drafts.get(0).file()).isEqualTo("open.csv");
      assertThat(ProposedReading.of(drafts.get(0).table()).get(0).words())
          .contains("6 tyres down")
          .contains("wet-braking");
      assertThat(ProposedReading.of(drafts.get(0).table()).get(0).reasons().get(0))
          .contains("several rows");
    }
  }

  @Test
  @DisplayName("is read by the reading that is taken, and is no draft then")
  void isDecided() {
    try (Archive archive = Archive.openOrCreate(folder)) {
      Intake intake = new Intake(archive, DisciplineCatalogue.standard(), Clock.systemUTC());
      intake.add(original(OPEN), ReadOptions.NONE);
      int draft = archive.drafts().get(0).id();
      assertThatThrownBy(() -> intake.decide(draft + 1, 1))
          .isInstanceOf(Refusal.class)
          .hasMessageContaining("no open draft");
      assertThat(intake.decide(draft, 1).refusal()).isNull();
      assertThat(archive.drafts()).noneMatch(record -> record.state() == DraftRecord.State.OPEN);
      assertThat(archive.snapshot().results().id()).isNotEmpty();
    }
  }
}
