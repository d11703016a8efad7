package org.griplore.store.archive;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.griplore.store.archive.database.Sql;
import org.griplore.store.archive.views.ArchiveTable;
import org.griplore.store.archive.views.ViewSheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** SCHEMA.md describes every table, view and column there is, and none that is not. */
class SchemaDocumentTest {
  @TempDir Path folder;

  /** The rows of the table under each heading: column, type, meaning. */
  private static Map<String, List<List<String>>> described() throws IOException {
    Map<String, List<List<String>>> sections = new LinkedHashMap<>();
    String section = "";
    for (String line : Files.readAllLines(Path.of("SCHEMA.md"))) {
      if (line.startsWith("### ")) {
        section = line.substring(4);
        assertThat(sections.put(section, new ArrayList<>())).as(section).isNull();
      } else if (line.startsWith("| ")
          && !line.equals("| column | type | meaning |")
          && !line.contains("---")) {
        sections.get(section).add(List.of(line.substring(2, line.length() - 2).split(" \\| ", -1)));
      }
    }
    return sections;
  }

  @Test
  void everyTableViewAndColumnIsDescribed() throws IOException, SQLException {
    Map<String, List<List<String>>> described = described();
    try (Archive archive = Archive.openOrCreate(folder);
        Connection connection = archive.ownReading()) {
      List<String> names =
          Sql.list(
              connection,
              "SELECT name FROM sqlite_schema WHERE type IN ('table', 'view')"
                  + " AND name NOT LIKE 'sqlite%'",
              row -> row.getString(1));
      assertThat(described.keySet()).containsExactlyInAnyOrderElementsOf(names);
      for (String name : names) {
        assertThat(described.get(name))
            .as(name)
            .extracting(row -> row.get(0))
            .isEqualTo(
                Sql.list(
                    connection,
                    "SELECT name FROM pragma_table_info(?) ORDER BY cid",
                    row -> row.getString(1),
                    name));
        assertThat(described.get(name))
            .as(name)
            .allMatch(row -> row.size() == 3 && !row.get(2).isBlank());
      }
    }
  }

  @Test
  void whatIsSaidOfViewsIsSaidInTheDatabaseToo() throws IOException {
    Map<String, List<List<String>>> described = described();
    for (ArchiveTable table : ViewSheet.tables()) {
      for (int i = 0; i < table.fields().size(); i++) {
        ArchiveTable.Field field = table.fields().get(i);
        List<String> row = described.get(table.name()).get(i);
        assertThat(row.get(1)).as(table.name()).startsWith(field.type().word());
        assertThat(row.get(2)).as(table.name()).startsWith(field.describes());
        field.words().forEach(word -> assertThat(row.get(2)).contains(word));
      }
    }
  }
}
