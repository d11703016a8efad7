package org.griplore.ui.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.griplore.query.question.QueryContext;
import org.griplore.store.archive.Archive;
import org.griplore.store.vocabulary.DisciplineCatalogue;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("A long answer")
class LongPagesTest {
  private static final int TESTS = 400;

  @Test
  @DisplayName("is shown in part, says so, and leads to the whole; other forms have every row")
  void cut(@TempDir Path folder) throws IOException {
    StringBuilder table = new StringBuilder("test,date,model,discipline,value,unit\n");
    for (int test = 0; test < TESTS; test++) {
      table.append(
          "t%04d,2020,Orlo Tar %d,wet-braking,%d,m%n".formatted(test, test % 7, 30 + test % 5));
    }
    Path file = Files.writeString(folder.resolve("long.csv"), table);
    try (Archive archive = DemoExplorer.archive(folder, file);
        QueryContext queryContext = new QueryContext(archive, DisciplineCatalogue.standard());
        Explorer explorer = new Explorer(queryContext)) {
      String at = "http://localhost:" + explorer.start(0);
      String page = Reader.get(at + "/tests").body();
      assertThat(page)
          .contains("The first 250 of 400 rows.")
          .contains("<a href=\"/tests?rows=all\">")
          .contains("and 300 more; the other forms of this answer have them all.");
      assertThat(page.split("<tr>", -1)).hasSize(250 + 2);
      assertThat(Reader.get(at + "/tests?rows=all").body().split("<tr>", -1)).hasSize(TESTS + 2);
      assertThat(Reader.get(at + "/tests.csv").body().lines()).hasSize(TESTS + 1);
    }
  }
}
