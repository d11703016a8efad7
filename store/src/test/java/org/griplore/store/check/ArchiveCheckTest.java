package org.griplore.store.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.griplore.store.archive.Archive;
import org.griplore.store.archive.Figures;
import org.griplore.store.text.NoteIndex;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ArchiveCheckTest {
  @TempDir Path folder;

  @BeforeEach
  void make() {
    try (Archive archive = Archive.openOrCreate(folder)) {
      Figures.add(archive, "a.csv", 20, 0);
      Figures.add(archive, "a.csv", 20, 1);
      Figures.add(archive, "b.csv", 20, 0);
    }
  }

  private List<CheckLine> check() {
    try (Archive archive = Archive.open(folder)) {
      return ArchiveCheck.run(archive, (part, done, total) -> {});
    }
  }

  private List<String> problems() {
    return check().stream().filter(line -> !line.good()).map(CheckLine::sentence).toList();
  }

  private void execute(String sql) throws SQLException {
    try (Connection connection =
            DriverManager.getConnection("jdbc:sqlite:" + folder.resolve("archive.db"));
        Statement statement = connection.createStatement()) {
      statement.executeUpdate(sql);
    }
  }

  @Test
  void aSoundArchiveIsSaidToBeSound() {
    List<String> parts = new ArrayList<>();
    try (Archive archive = Archive.open(folder)) {
      NoteIndex.open(archive).close();
      assertThat(ArchiveCheck.run(archive, (part, done, total) -> parts.add(part)))
          .containsExactly(
              new CheckLine(true, "The database is whole."),
              new CheckLine(true, "Every reference leads to a row."),
              new CheckLine(true, "All 4000 figures say where they stand."),
              new CheckLine(true, "The originals of all 3 revisions are there, unchanged."),
              new CheckLine(true, "The text index agrees with the archive."));
    }
    assertThat(parts).contains("database", "figures", "originals", "text index");
  }

  @Test
  void changedAndMissingOriginalsAreNamed() throws IOException {
    List<Path> originals;
    try (Stream<Path> files = Files.walk(folder.resolve("originals"))) {
      originals = files.filter(Files::isRegularFile).sorted().toList();
    }
    Files.writeString(originals.get(0), "another content");
    Files.delete(originals.get(1));
    assertThat(problems())
        .hasSize(2)
        .anyMatch(line -> line.contains("is not what was read: " + originals.get(0)))
        .anyMatch(line -> line.contains("is missing: " + originals.get(1)));
  }

  @Test
  void cellsThatCannotBeReadAreCounted() throws SQLException {
    execute("UPDATE result SET value_row = NULL WHERE entry_id > 200 AND discipline_id < 3");
    assertThat(problems()).hasSize(11).last().isEqualTo("And 790 more figures like these.");
    assertThat(problems().get(0)).contains("does not say where it stands.");
  }

  @Test
  void rowsThatReferToNothingAreCounted() throws SQLException {
    execute("DELETE FROM entry WHERE id = 5");
    assertThat(problems()).contains("10 rows of result refer to a missing entry.");
  }

  @Test
  void aDamagedPageIsTold() throws IOException {
    try (RandomAccessFile file =
        new RandomAccessFile(folder.resolve("archive.db").toFile(), "rw")) {
      file.seek(file.length() / 2 / 4096 * 4096);
      file.write(new byte[4096]);
    }
    assertThat(problems()).isNotEmpty().allMatch(line -> line.contains("archive.db is damaged"));
  }

  @Test
  void aDamagedIndexIsTold() throws IOException {
    try (Archive archive = Archive.open(folder)) {
      NoteIndex.open(archive).close();
    }
    Path index = folder.resolve("index");
    try (Stream<Path> files = Files.list(index)) {
      for (Path file : files.filter(f -> f.toString().contains("segments_")).toList()) {
        Files.write(file, new byte[30]);
      }
    }
    assertThat(problems())
        .containsExactly("The text index is damaged: the next search makes it anew.");
  }
}
