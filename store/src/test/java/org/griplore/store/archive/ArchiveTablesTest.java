package org.griplore.store.archive;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.griplore.store.archive.database.Sql;
import org.griplore.store.archive.views.ArchiveTable;
import org.griplore.store.archive.views.ArchiveTables;
import org.griplore.store.archive.views.ViewSheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ArchiveTablesTest {
  /** What only this database needs, and words that views give in the rows of others. */
  private static final Set<String> NOT_GIVEN_AWAY =
      Set.of("archive_state", "rule", "sqlite_sequence");

  @TempDir Path folder;

  private static List<String> names(Connection connection, String type) {
    return Sql.list(
        connection,
        "SELECT name FROM sqlite_schema WHERE type = ? ORDER BY rowid",
        row -> row.getString(1),
        type);
  }

  @Test
  void everyTableOfTheDatabaseIsReadByAView() throws SQLException {
    String views = ViewSheet.script();
    try (Archive archive = Archive.openOrCreate(folder);
        Connection connection = archive.ownReading()) {
      for (String table : names(connection, "table")) {
        if (!NOT_GIVEN_AWAY.contains(table)) {
          assertThat(Pattern.compile("(FROM|JOIN) " + table + " ").matcher(views).find())
              .as(table)
              .isTrue();
        }
      }
    }
  }

  @Test
  void everyViewIsDescribedColumnByColumn() throws SQLException {
    try (Archive archive = Archive.openOrCreate(folder);
        Connection connection = archive.ownReading();
        ArchiveTables tables = archive.tables()) {
      assertThat(tables.all().stream().map(ArchiveTable::name).toList())
          .isEqualTo(names(connection, "view"));
      for (ArchiveTable table : tables.all()) {
        assertThat(table.fields().stream().map(ArchiveTable.Field::name).toList())
            .as(table.name())
            .isEqualTo(
                Sql.list(
                    connection,
                    "SELECT name FROM pragma_table_info(?) ORDER BY cid",
                    row -> row.getString(1),
                    table.name()));
      }
    }
  }
}
