package org.griplore.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.griplore.store.archive.Archive;
import org.griplore.store.archive.ModelRecord;
import org.griplore.store.archive.ResultOrigin;
import org.junit.jupiter.api.Test;

/** The queries that the README shows run in plain SQLite and say what the archive says. */
class SqliteQueriesTest {
  private static final Pattern QUERY = Pattern.compile("```sql\n(.*?)```", Pattern.DOTALL);

  private static List<String> queries() throws IOException {
    String readme = Files.readString(Path.of("..", "README.md"));
    Matcher matcher = QUERY.matcher(readme.substring(readme.indexOf("## Ask it with sqlite3")));
    List<String> queries = new ArrayList<>();
    while (matcher.find()) {
      queries.add(matcher.group(1));
    }
    return queries;
  }

  private static List<Map<String, Object>> rows(String query) throws SQLException {
    List<Map<String, Object>> rows = new ArrayList<>();
    try (Connection connection =
            DriverManager.getConnection(
                "jdbc:sqlite:" + DemoArchive.folder().resolve("archive.db"));
        Statement statement = connection.createStatement();
        ResultSet found = statement.executeQuery(query)) {
      int columns = found.getMetaData().getColumnCount();
      while (found.next()) {
        Map<String, Object> row = new LinkedHashMap<>();
        for (int i = 1; i <= columns; i++) {
          row.put(found.getMetaData().getColumnLabel(i), found.getObject(i));
        }
        rows.add(row);
      }
    }
    return rows;
  }

  @Test
  void theReadmeShowsFiveQueries() throws IOException {
    assertThat(queries()).hasSize(5);
  }

  @Test
  void topThreesAreThoseThatPublishedPlacesSay() throws IOException, SQLException {
    List<Map<String, Object>> rows = rows(queries().get(0));
    assertThat(rows).hasSizeGreaterThan(20);
    assertThat(rows)
        .allSatisfy(
            row ->
                assertThat((Integer) row.get("top_three"))
                    .isBetween(0, (Integer) row.get("tests")));
    assertThat(rows.get(0).get("model")).isEqualTo("Velmora Aurelis 4");
  }

  @Test
  void aDisciplineIsListedTestByTest() throws IOException, SQLException {
    List<Map<String, Object>> rows = rows(queries().get(1));
    assertThat(rows).hasSizeGreaterThan(200);
    assertThat(rows).allSatisfy(row -> assertThat((Double) row.get("value")).isPositive());
    assertThat(rows).extracting(row -> row.get("unit")).contains("m");
  }

  @Test
  void generationsStandBesideTheirPredecessors() throws IOException, SQLException {
    List<Map<String, Object>> rows = rows(queries().get(2));
    Map<String, ModelRecord> models = new LinkedHashMap<>();
    try (Archive archive = Archive.open(DemoArchive.folder())) {
      archive.models().forEach(model -> models.put(model.name(), model));
    }
    assertThat(rows).hasSizeGreaterThan(10);
    assertThat(rows)
        .allSatisfy(
            row ->
                assertThat(models.get((String) row.get("newer")).follows())
                    .isEqualTo(models.get((String) row.get("older")).id()));
  }

  @Test
  void notesOfAModelAreThoseOfTheArchive() throws IOException, SQLException {
    List<Map<String, Object>> rows = rows(queries().get(3));
    try (Archive archive = Archive.open(DemoArchive.folder())) {
      assertThat(rows)
          .extracting(row -> row.get("text"))
          .containsExactlyInAnyOrderElementsOf(
              archive.notes().stream()
                  .filter(note -> "Velmora Aurelis 4".equals(note.model()))
                  .map(note -> (Object) note.text())
                  .toList())
          .isNotEmpty();
    }
  }

  @Test
  void aFigureLeadsToItsCell() throws IOException, SQLException {
    Map<String, Object> row = rows(queries().get(4)).get(0);
    try (Archive archive = Archive.open(DemoArchive.folder())) {
      ResultOrigin origin = archive.originOf((Integer) row.get("result_id")).orElseThrow();
      assertThat(row)
          .containsEntry("value", origin.value())
          .containsEntry("unit", origin.unit())
          .containsEntry("file", origin.revision().name())
          .containsEntry("row", origin.cells().value().row())
          .containsEntry("column", origin.cells().value().column())
          .containsEntry("cell_text", origin.cells().value().found())
          .containsEntry("revision_id", origin.revision().id());
    }
  }
}
