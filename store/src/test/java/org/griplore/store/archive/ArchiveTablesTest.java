package org.griplore.store.archive;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ArchiveTablesTest {
  /** Words that stand in other tables' rows, and what only this database needs. */
  private static final Set<String> NOT_TABLES_OF_THEIR_OWN =
      Set.of("source_file", "unit", "rule", "sheet", "archive_state", "number_used");

  /** Under which name a table of the database is given away; a new one must find its place. */
  private static final Map<String, String> GIVEN_AS =
      Map.ofEntries(
          Map.entry("revision", "readings"),
          Map.entry("revision_change", "reading_changes"),
          Map.entry("reading_of_name", "read_names"),
          Map.entry("decision", "decisions"),
          Map.entry("column_map", "column_maps"),
          Map.entry("discipline", "disciplines"),
          Map.entry("model", "models"),
          Map.entry("lineage", "lineage"),
          Map.entry("test", "tests"),
          Map.entry("report", "reports"),
          Map.entry("entry", "entries"),
          Map.entry("result", "results"),
          Map.entry("result_step", "result_steps"),
          Map.entry("run", "runs"),
          Map.entry("reduction", "reductions"),
          Map.entry("reduced_set", "reduced_sets"),
          Map.entry("reduced_run", "reduced_runs"),
          Map.entry("note", "notes"),
          Map.entry("finding", "findings"));

  @TempDir Path folder;

  @Test
  void everyTableOfTheDatabaseIsGivenAway() throws SQLException {
    try (Archive archive = Archive.openOrCreate(folder);
        Connection connection = archive.ownReading();
        ArchiveTables tables = ArchiveTables.open(archive)) {
      Set<String> stored =
          new HashSet<>(
              Sql.list(
                  connection,
                  "SELECT name FROM sqlite_schema WHERE type = 'table'",
                  row -> row.getString(1)));
      stored.removeAll(NOT_TABLES_OF_THEIR_OWN);
      assertThat(stored).isEqualTo(GIVEN_AS.keySet());
      Set<String> given = tables.all().stream().map(ArchiveTable::name).collect(Collectors.toSet());
      given.add("disciplines");
      assertThat(given).containsAll(GIVEN_AS.values());
    }
  }
}
