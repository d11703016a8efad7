package org.griplore.store.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import org.griplore.store.check.ArchiveCheck;
import org.griplore.store.check.CheckLine;
import org.griplore.store.check.OriginalsCheck;
import org.griplore.store.vocabulary.Refusal;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TwoProcessesTest {
  @TempDir Path folder;

  @BeforeEach
  void make() {
    try (Archive archive = Archive.openOrCreate(folder)) {
      Figures.add(archive, "first.csv", 1, 0);
    }
  }

  @Test
  void whileAnotherProcessAddsThisOneReadsButDoesNotAdd() throws Exception {
    try (Archive archive = Archive.open(folder)) {
      Process other = AddingProcess.start(folder, "wait");
      try {
        AddingProcess.awaitAdding(other);
        assertThat(archive.snapshot().results().count()).isEqualTo(100);
        assertThatThrownBy(() -> Figures.add(archive, "second.csv", 1, 1))
            .isInstanceOf(Refusal.class)
            .hasMessageContaining("Somebody else is adding to the archive");
        other.getOutputStream().write('\n');
        other.getOutputStream().flush();
        assertThat(AddingProcess.end(other)).isZero();
      } finally {
        other.destroyForcibly();
      }
      assertThat(archive.snapshot().results().count()).isEqualTo(30_100);
      Figures.add(archive, "second.csv", 1, 1);
      assertThat(archive.stamp()).isEqualTo(3);
    }
  }

  @Test
  void aProcessKilledInTheMiddleLeavesTheArchiveAsItWas() throws Exception {
    assertThat(AddingProcess.end(AddingProcess.start(folder, "halt")))
        .isEqualTo(AddingProcess.KILLED);
    try (Archive archive = Archive.open(folder)) {
      assertThat(archive.stamp()).isEqualTo(1);
      assertThat(archive.snapshot().results().count()).isEqualTo(100);
      assertThat(ArchiveCheck.run(archive, (part, done, total) -> {})).allMatch(CheckLine::good);
      Figures.add(archive, "other.csv", 2, 1);
      assertThat(archive.snapshot().results().count()).isEqualTo(300);
    }
  }

  @Test
  void aProcessKilledWhileItKeepsTheOriginalLeavesAHarmlessFile() throws Exception {
    assertThat(AddingProcess.end(AddingProcess.start(folder, "halt-keeping")))
        .isEqualTo(AddingProcess.KILLED);
    try (Archive archive = Archive.open(folder)) {
      assertThat(archive.stamp()).isEqualTo(1);
      assertThat(OriginalsCheck.orphans(archive)).hasSize(1);
      assertThat(ArchiveCheck.run(archive, (part, done, total) -> {}))
          .allMatch(CheckLine::good)
          .anyMatch(line -> line.sentence().startsWith("No revision was made of"));
      try (Addition addition =
          archive.begin(Figures.original("other.csv", "other"), "table", Figures.NOON)) {
        addition.put(Figures.report(7, 0));
        addition.commit();
      }
      assertThat(OriginalsCheck.orphans(archive)).isEmpty();
    }
  }
}
