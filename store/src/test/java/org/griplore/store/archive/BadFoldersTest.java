package org.griplore.store.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.griplore.store.vocabulary.Refusal;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BadFoldersTest {
  @TempDir Path folder;

  private Path database() {
    return folder.resolve("archive.db");
  }

  private void make() {
    try (Archive archive = Archive.openOrCreate(folder)) {
      Figures.add(archive, "first.csv", 20, 0);
    }
  }

  private List<String> files() throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      return files.filter(Files::isRegularFile).map(Path::toString).sorted().toList();
    }
  }

  @Test
  void aFullDiskRefusesAnAdditionAndNothingIsAdded() throws IOException {
    try (Archive archive = Archive.openOrCreate(folder)) {
      Figures.add(archive, "first.csv", 1, 0);
      List<String> before = files();
      archive.limitPages(Files.size(database()) / 4096 + 60);
      assertThatThrownBy(() -> Figures.add(archive, "big.csv", 500, 1))
          .isInstanceOf(Refusal.class)
          .hasMessage("The disk is full: nothing was added, the archive is as it was.");
      assertThat(archive.stamp()).isEqualTo(1);
      assertThat(archive.snapshot().results().count()).isEqualTo(100);
      assertThat(files()).isEqualTo(before);
      archive.limitPages(0);
      Figures.add(archive, "big.csv", 500, 1);
      assertThat(archive.snapshot().results().count()).isEqualTo(50_100);
    }
  }

  @Test
  void anOriginalThatCannotBeCopiedRefusesTheAddition() throws IOException {
    byte[] content = "content".getBytes(StandardCharsets.UTF_8);
    int[] openings = {0};
    Original original =
        Original.of(
            "a.csv",
            "a.csv",
            () -> ++openings[0] == 1 ? new ByteArrayInputStream(content) : breaking());
    try (Archive archive = Archive.openOrCreate(folder)) {
      assertThatThrownBy(
              () -> {
                try (Addition addition = archive.begin(original, "table", Figures.NOON)) {
                  addition.put(Figures.report(1, 0));
                  addition.commit();
                }
              })
          .isInstanceOf(Refusal.class)
          .hasMessageContaining("The original of a.csv cannot be kept")
          .hasMessageContaining("nothing was added");
      assertThat(archive.stamp()).isZero();
      assertThat(archive.snapshot().tests()).isEmpty();
      assertThat(files()).noneMatch(file -> file.contains("originals"));
      Figures.add(archive, "b.csv", 1, 0);
    }
  }

  @Test
  void originalsWithoutADatabaseAreNoNewArchive() throws IOException {
    try (Archive archive = Archive.openOrCreate(folder)) {
      Figures.add(archive, "a.csv", 1, 0);
    }
    Files.delete(folder.resolve("archive.db"));
    List<String> left = files();
    assertThatThrownBy(() -> Archive.openOrCreate(folder))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("archive.db is missing, yet the archive has originals");
    assertThatThrownBy(() -> Archive.open(folder))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("restore it from a backup");
    assertThat(files()).isEqualTo(left);
  }

  private static InputStream breaking() {
    return new InputStream() {
      private int given;

      @Override
      public int read() throws IOException {
        if (given++ < 3) {
          return 'x';
        }
        throw new IOException("No space left on device");
      }
    };
  }

  @ParameterizedTest
  @ValueSource(strings = {"/proc/griplore-archive", "/sys/griplore-archive"})
  void whereNothingCanBeMadeThereIsNoArchive(String unwritable) {
    Assumptions.assumeTrue(
        Files.isDirectory(Path.of(unwritable).getParent()), "no " + unwritable + " here");
    assertThatThrownBy(() -> Archive.openOrCreate(Path.of(unwritable)))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("No archive can be made in " + unwritable);
  }

  @Test
  void aFileInTheFoldersPlaceIsRefused() throws IOException {
    Path file = Files.writeString(folder.resolve("file"), "text");
    assertThatThrownBy(() -> Archive.openOrCreate(file))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("it is no folder");
  }

  @Test
  void aClosedArchiveIsCompleteInItsOneFile(@TempDir Path copy) throws IOException {
    Archive reader = null;
    try (Archive archive = Archive.openOrCreate(folder)) {
      reader = Archive.open(folder);
      Figures.add(archive, "first.csv", 20, 0);
    }
    Files.copy(database(), copy.resolve("archive.db"));
    reader.close();
    try (Archive archive = ReadOnlyArchive.open(copy)) {
      assertThat(archive.writable()).isFalse();
      assertThat(archive.snapshot().results().count()).isEqualTo(2000);
      assertThatThrownBy(() -> Figures.add(archive, "b.csv", 1, 0))
          .isInstanceOf(Refusal.class)
          .hasMessageContaining("is read-only: nothing can be added");
    }
    try (Stream<Path> files = Files.list(copy)) {
      assertThat(files).hasSize(1);
    }
  }

  @Test
  void aReadOnlyArchiveWithUnfinishedChangesIsRefused(@TempDir Path copy) throws IOException {
    try (Archive archive = Archive.openOrCreate(folder)) {
      Figures.add(archive, "first.csv", 20, 0);
      for (String file : List.of("archive.db", "archive.db-wal")) {
        Files.copy(folder.resolve(file), copy.resolve(file));
      }
    }
    assertThatThrownBy(() -> ReadOnlyArchive.open(copy))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("was not closed properly");
    try (Archive archive = Archive.open(copy)) {
      assertThat(archive.snapshot().results().count()).isEqualTo(2000);
    }
  }

  @Test
  void junkIsNoArchive() throws IOException {
    byte[] junk = new byte[20_000];
    new Random(1).nextBytes(junk);
    Files.write(database(), junk);
    assertThatThrownBy(() -> Archive.open(folder))
        .isInstanceOf(Refusal.class)
        .hasMessage(
            "archive.db is damaged or is not a Griplore archive: restore it from a backup.");
    assertThat(Files.readAllBytes(database())).isEqualTo(junk);
  }

  @ParameterizedTest(name = "cut to {0} bytes")
  @ValueSource(ints = {0, 50, 100, 4096, 5000, 40_000, 100_000})
  void aTruncatedArchiveIsRefusedWhenOpenedOrRead(int bytes) throws IOException {
    make();
    byte[] whole = Files.readAllBytes(database());
    Files.write(database(), Arrays.copyOf(whole, bytes));
    assertThatThrownBy(
            () -> {
              try (Archive archive = Archive.open(folder)) {
                archive.snapshot();
              }
            })
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("archive.db is damaged");
  }

  private void execute(String sql) throws SQLException {
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + database());
        Statement statement = connection.createStatement()) {
      statement.executeUpdate(sql);
    }
  }

  @Test
  void aNewerArchiveIsLeftAlone() throws SQLException {
    make();
    execute("PRAGMA user_version = 99");
    assertThatThrownBy(() -> Archive.open(folder))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("written by a newer Griplore (archive version 99");
  }

  @Test
  void theDatabaseOfAnotherProgramIsLeftAlone() throws Exception {
    execute("CREATE TABLE song (title TEXT)");
    byte[] before = Files.readAllBytes(database());
    for (boolean writable : new boolean[] {true, false}) {
      assertThatThrownBy(() -> Archive.opened(folder, writable))
          .isInstanceOf(Refusal.class)
          .hasMessageContaining("is the database of another program");
    }
    assertThat(Files.readAllBytes(database()).length).isEqualTo(before.length);
  }

  @Test
  void anArchiveRemovedWhileOpenTakesNoAddition() throws IOException {
    make();
    try (Archive archive = Archive.open(folder)) {
      try (Stream<Path> files = Files.walk(folder)) {
        for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
          Files.delete(file);
        }
      }
      assertThatThrownBy(() -> Figures.add(archive, "b.csv", 1, 0))
          .isInstanceOf(Refusal.class)
          .hasMessageContaining("is gone");
      assertThat(folder).doesNotExist();
    }
    Files.createDirectories(folder);
  }
}
