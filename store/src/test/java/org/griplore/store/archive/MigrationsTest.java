package org.griplore.store.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Map;
import java.util.zip.GZIPInputStream;
import org.griplore.store.archive.database.Migrations;
import org.griplore.store.archive.database.Sql;
import org.griplore.store.vocabulary.Cell;
import org.griplore.store.vocabulary.Decision;
import org.griplore.store.vocabulary.Reduction;
import org.griplore.store.vocabulary.Refusal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MigrationsTest {
  @TempDir Path folder;

  private Connection database() throws SQLException {
    return DriverManager.getConnection("jdbc:sqlite:" + folder.resolve("archive.db"));
  }

  /** An archive as version 1 left it: two revisions, the second of which settled a name. */
  private void makeVersionOne() throws IOException, SQLException {
    try (Connection connection = database();
        Statement statement = connection.createStatement();
        InputStream script = Migrations.class.getResourceAsStream("migration-1.sql")) {
      statement.executeUpdate(new String(script.readAllBytes(), StandardCharsets.UTF_8));
      statement.executeUpdate(
          """
          PRAGMA user_version = 1;
          PRAGMA application_id = 0x47524950;
          UPDATE archive_state SET stamp = 2;
          INSERT INTO source_file (id, origin) VALUES (1, 'a.csv'), (2, 'lineage.csv');
          INSERT INTO revision (id, source_file, number, sha256, bytes, name, form, options, added_at)
            VALUES (1, 1, 1, 'aa', 2, 'a.csv', 'table', '', '2024-05-01T12:00:00Z'),
                   (2, 2, 1, 'bb', 2, 'lineage.csv', 'lineage', '', '2024-05-02T12:00:00.123456Z');
          INSERT INTO model (id, name, same_as, same_as_revision)
            VALUES (2, 'Velmar Ostra III', NULL, NULL), (1, 'Ostra 3', 2, 2);
          INSERT INTO test (id, key) VALUES (1, 'T1');
          INSERT INTO sheet (id, name) VALUES (1, ''), (12, 'Wet: 1');
          INSERT INTO report (id, test, revision, title, details_at)
            VALUES (1, 1, 1, 'Title', 'size=1:2:3:a\\\\b\\nc' || char(13) || char(10) || 'title=12:1:1:x=1:2');
          INSERT INTO entry (id, report, model, name_at) VALUES (1, 1, 1, '12:34:5:a:b:c');
          INSERT INTO lineage (id, revision, model, aliases) VALUES (1, 2, 2, 'one|two');
          INSERT INTO discipline (id, key) VALUES (1, 'wet-braking');
          INSERT INTO unit (id, symbol) VALUES (1, 'm');
          INSERT INTO result (id, entry, discipline, value, unit, value_at, place, place_at)
            VALUES (7, 1, 1, 41.5, 1, '12:34:6:', 2, '1:1:2:' || char(0) || ':2');
          """);
    }
  }

  /** A part of the demo archive as version 2 left it, with corrections, decisions and an undo. */
  private void makeVersionTwo() throws IOException, SQLException {
    try (Connection connection = database();
        Statement statement = connection.createStatement();
        InputStream dump =
            new GZIPInputStream(MigrationsTest.class.getResourceAsStream("schema-2.sql.gz"))) {
      statement.executeUpdate(new String(dump.readAllBytes(), StandardCharsets.UTF_8));
    }
  }

  @Test
  void anArchiveOfVersionOneIsOpenedAddedToAndTakenBack() throws IOException, SQLException {
    makeVersionOne();
    try (Archive archive = Archive.open(folder)) {
      assertThat(archive.columnMaps()).isEmpty();
      assertThat(archive.models())
          .extracting(ModelRecord::name)
          .containsExactly("Velmar Ostra III");
      Figures.add(archive, "b.csv", 1, 0);
      assertThat(archive.undo().orElseThrow().results()).isEqualTo(100);

      TakenBack lineage = archive.undo().orElseThrow();
      assertThat(lineage.revisions()).extracting(Revision::name).containsExactly("lineage.csv");
      assertThat(lineage.apartAgain()).containsExactly("Ostra 3");
      assertThat(lineage.models()).containsExactly("Velmar Ostra III");
      assertThat(archive.models()).extracting(ModelRecord::name).containsExactly("Ostra 3");
      assertThat(archive.undo()).isPresent();
      assertThat(archive.undo()).isEmpty();
      assertThat(archive.stamp()).isEqualTo(6);
    }
  }

  @Test
  void packedCellsOfVersionOneBecomeColumns() throws IOException, SQLException {
    makeVersionOne();
    try (Archive archive = Archive.open(folder)) {
      ResultOrigin origin = archive.originOf(7).orElseThrow();
      assertThat(origin.cells().value()).isEqualTo(new Cell("Wet: 1", 34, 6, ""));
      assertThat(origin.cells().place()).isEqualTo(new Cell("", 1, 2, "\0:2"));
      assertThat(origin.cells().spread()).isNull();
      assertThat(origin.nameFound()).isEqualTo("a:b:c");
      assertThat(archive.snapshot().reports().get(0).details().cells())
          .isEqualTo(
              Map.of(
                  "size", new Cell("", 2, 3, "a\\b\nc\r"),
                  "title", new Cell("Wet: 1", 1, 1, "x=1:2")));
      assertThat(archive.models().get(0).aliases()).containsExactly("one", "two", "Ostra 3");
      assertThat(archive.revisions().get(1).addedAt()).hasToString("2024-05-02T12:00:00Z");
    }
  }

  @Test
  void anArchiveOfVersionTwoKeepsEverything() throws IOException, SQLException {
    makeVersionTwo();
    try (Archive archive = Archive.open(folder)) {
      assertThat(archive.pageProblems()).isEmpty();
      assertThat(archive.referenceProblems()).isEmpty();
      assertThat(archive.cellProblems(done -> {})).isEmpty();
      assertThat(archive.revisions()).hasSize(10);
      assertThat(archive.figureCount()).isEqualTo(267);
      assertThat(archive.noteCount()).isEqualTo(28);
      assertThat(archive.findingCount()).isEqualTo(6);
      assertThat(archive.revisions().get(8).options())
          .containsEntry("date", "2018-05-01")
          .containsEntry("title", "Long day; size=odd")
          .containsOnlyKeys("date", "title", "map");
      assertThat(archive.revisionChanges(10))
          .containsExactly(
              "Changed: Quillarn Tarvion 11, wet-braking, test 2018-05-01-long-day-size-odd:"
                  + " 42.0 m became 42.6 m.");
      assertThat(archive.columnMaps())
          .extracting(ColumnMapRecord::layout)
          .containsExactly("pneu | foo");
      assertThat(archive.decisions())
          .extracting(Decision::clause)
          .containsExactly(
              "\"Quilarn Tarvion 11\" is the same as Quillarn Tarvion 11",
              "\"Velmora Aurelis 5\" has the segment touring");
      assertThat(archive.originOf(1).orElseThrow().rule()).isEqualTo("decimal comma");
      assertThat(archive.undo().orElseThrow().revisions())
          .extracting(Revision::name)
          .containsExactly("other.csv");
    }
  }

  @Test
  void sentencesOfVersionTwoBecomeCodesAndReadTheSame() throws IOException, SQLException {
    makeVersionTwo();
    List<String> limits;
    try (Connection connection = database()) {
      limits =
          Sql.first(connection, "SELECT limits FROM reduction", row -> row.getString(1))
              .orElseThrow()
              .lines()
              .toList();
    }
    try (Archive archive = Archive.open(folder);
        Connection connection = archive.ownReading()) {
      int test =
          archive.snapshot().tests().stream()
              .filter(record -> !archive.reductions(record.id()).isEmpty())
              .findFirst()
              .orElseThrow()
              .id();
      Reduction reduction = archive.reductions(test).get(0).reduction();
      assertThat(reduction.measure()).isEqualTo("mean deceleration");
      assertThat(reduction.limits()).isEqualTo(limits);
      assertThat(reduction.sets().get(1).referenceWords())
          .isEqualTo("interpolated by position: 0.750 of sequence 1 + 0.250 of sequence 5");
      assertThat(Sql.number(connection, "SELECT count(*) FROM result_step WHERE code = 'told'"))
          .isZero();
      assertThat(
              Sql.number(connection, "SELECT count(*) FROM reduction_account WHERE code = 'told'"))
          .isZero();
    }
  }

  @Test
  void numbersThatWereTakenBackBeforeAreNotGivenAgain() throws IOException, SQLException {
    makeVersionTwo();
    try (Archive archive = Archive.open(folder)) {
      Figures.add(archive, "b.csv", 1, 0);
      List<Revision> revisions = archive.revisions();
      assertThat(revisions.get(revisions.size() - 1).id()).isEqualTo(12);
      int reports = archive.snapshot().reports().size();
      assertThat(archive.snapshot().reports().get(reports - 1).id()).isEqualTo(11);
      archive.undo();
      Figures.add(archive, "c.csv", 1, 0);
      assertThat(archive.revisions().get(10).id()).isEqualTo(13);
      assertThat(archive.snapshot().reports().get(reports - 1).id()).isEqualTo(12);
      long[] ids = archive.snapshot().results().id();
      assertThat(ids[ids.length - 1]).isEqualTo(269 + 200);
    }
  }

  @Test
  void aNewerVersionIsRefusedInOneSentence() throws IOException, SQLException {
    makeVersionTwo();
    try (Connection connection = database()) {
      Sql.execute(connection, "PRAGMA user_version = 4");
    }
    assertThatThrownBy(() -> Archive.open(folder))
        .isInstanceOf(Refusal.class)
        .hasMessage(
            "This archive was written by a newer Griplore (archive version 4, this program knows up"
                + " to 3): use the newer program.");
  }

  @Test
  void anOlderVersionInAReadOnlyFolderIsRefusedInOneSentence() throws IOException, SQLException {
    makeVersionTwo();
    assertThatThrownBy(() -> Archive.opened(folder, false))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("older Griplore (archive version 2)")
        .hasMessageContaining("open it once where it can be written");
  }

  @Test
  void whatIsBrokenStaysAsItIs() throws IOException, SQLException {
    makeVersionTwo();
    try (Connection connection = database()) {
      Sql.execute(connection, "UPDATE note SET report = 999 WHERE id = 1");
    }
    assertThatThrownBy(() -> Archive.open(folder))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("1 rows refer to rows that are missing; it was left as it is");
    try (Connection connection = database()) {
      assertThat(Sql.number(connection, "PRAGMA user_version")).isEqualTo(2);
      assertThat(Sql.number(connection, "SELECT count(*) FROM result WHERE value_at LIKE '%:%'"))
          .isPositive();
      Sql.execute(connection, "UPDATE note SET report = 1 WHERE id = 1");
    }
    try (Archive archive = Archive.open(folder)) {
      assertThat(archive.figureCount()).isEqualTo(267);
    }
  }

  @ParameterizedTest(name = "killed after {0} ms")
  @ValueSource(ints = {0, 20, 60, 120, 200})
  void whatIsKilledWhileItIsCarriedOverBeginsAgain(int millis)
      throws IOException, SQLException, InterruptedException {
    makeVersionTwo();
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                MigratingProcess.class.getName(),
                folder.toString())
            .redirectErrorStream(true)
            .start();
    assertThat(process.getInputStream().read()).isEqualTo('b');
    Thread.sleep(millis);
    process.destroyForcibly().waitFor();
    try (Connection connection = database()) {
      assertThat(Sql.number(connection, "PRAGMA user_version")).isIn(2L, 3L);
    }
    try (Archive archive = Archive.open(folder)) {
      assertThat(archive.pageProblems()).isEmpty();
      assertThat(archive.referenceProblems()).isEmpty();
      assertThat(archive.figureCount()).isEqualTo(267);
      assertThat(archive.revisions()).hasSize(10);
    }
  }
}
