package org.griplore.store.archive;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MigrationsTest {
  @TempDir Path folder;

  /** An archive as version 1 left it: two readings, the second of which settled a name. */
  private void makeVersionOne() throws IOException, SQLException {
    try (Connection connection =
            DriverManager.getConnection("jdbc:sqlite:" + folder.resolve("archive.db"));
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
                   (2, 2, 1, 'bb', 2, 'lineage.csv', 'lineage', '', '2024-05-02T12:00:00Z');
          INSERT INTO model (id, name, same_as, same_as_revision)
            VALUES (2, 'Velmar Ostra III', NULL, NULL), (1, 'Ostra 3', 2, 2);
          INSERT INTO test (id, key) VALUES (1, 'T1');
          INSERT INTO report (id, test, revision, details_at) VALUES (1, 1, 1, '');
          INSERT INTO entry (id, report, model) VALUES (1, 1, 1);
          INSERT INTO lineage (id, revision, model, aliases) VALUES (1, 2, 2, '');
          """);
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
      assertThat(lineage.readings()).extracting(Revision::name).containsExactly("lineage.csv");
      assertThat(lineage.apartAgain()).containsExactly("Ostra 3");
      assertThat(lineage.models()).containsExactly("Velmar Ostra III");
      assertThat(archive.models()).extracting(ModelRecord::name).containsExactly("Ostra 3");
      assertThat(archive.undo()).isPresent();
      assertThat(archive.undo()).isEmpty();
      assertThat(archive.stamp()).isEqualTo(6);
    }
  }
}
