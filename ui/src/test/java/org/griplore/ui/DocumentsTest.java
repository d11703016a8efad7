package org.griplore.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.griplore.query.Questions;
import org.griplore.store.vocabulary.Discipline;
import org.griplore.store.vocabulary.DisciplineCatalogue;
import org.griplore.ui.render.OutputFormat;
import org.junit.jupiter.api.Test;

/** What the program has stands in its documents. */
class DocumentsTest {
  private static String text(String file) throws IOException {
    return Files.readString(Path.of("..", file));
  }

  @Test
  void theReadmeNamesEveryCommandAndFormat() throws IOException {
    String readme = text("README.md");
    Questions.all()
        .forEach(question -> assertThat(readme).containsPattern("`" + question.kind() + "[ `]"));
    for (String command :
        List.of("add", "columns", "settle", "undo", "export", "check", "serve", "demo")) {
      assertThat(readme).containsPattern("`" + command + "[ `]");
    }
    for (OutputFormat format : OutputFormat.values()) {
      assertThat(readme).contains(format.word()).contains("." + format.ending());
    }
  }

  @Test
  void theFormsNameEveryDiscipline() throws IOException {
    String forms = text("ingest/FORMS.md");
    for (Discipline discipline : DisciplineCatalogue.standard().all()) {
      assertThat(forms).contains("`" + discipline.key() + "`");
    }
  }

  @Test
  void theReadmeGivesTheCommandThatRunsTheTests() throws IOException {
    String readme = text("README.md");
    assertThat(readme)
        .contains("mvn -q -DskipTests package && java -jar ui/target/griplore.jar demo")
        .contains("mvn verify");
    assertThat(text(".ci/run")).contains("mvn --batch-mode verify");
  }
}
