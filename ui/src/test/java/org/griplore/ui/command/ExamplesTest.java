package org.griplore.ui.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.griplore.query.Questions;
import org.griplore.ui.DemoArchive;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The example that each command's help shows can be typed as it stands on the demo archive. */
class ExamplesTest {
  @TempDir Path folder;

  private Path archive;

  /** Some examples change the archive: each has a copy of its own. */
  @BeforeEach
  void copyOfTheDemoArchive() throws IOException {
    archive = folder.resolve("archive");
    Path demo = DemoArchive.folder();
    try (Stream<Path> files = Files.walk(demo)) {
      for (Path file : files.toList()) {
        Files.copy(file, archive.resolve(demo.relativize(file).toString()));
      }
    }
  }

  @ParameterizedTest
  @MethodSource("questions")
  void ofAQuestionIsAnswered(String example) {
    if (example.startsWith("decisions ")) {
      // nothing is decided in the demo archive
      assertThat(run(exampleOf("settle")).code()).isZero();
    }
    Run run = run(example);
    // no table of the demo archive is undecided, and no test of it was told twice
    boolean none = example.matches("(drafts|retold)\\b.*");
    assertThat(run.code()).as(run.err()).isEqualTo(none ? ExitCode.NO_EVIDENCE : 0);
    assertThat(run.err()).isEmpty();
  }

  static Stream<String> questions() {
    return Questions.all().stream().map(question -> question.example());
  }

  @ParameterizedTest
  @ValueSource(strings = {"settle", "lineage", "undo", "export", "check"})
  void ofAnActIsDone(String command) {
    Run run = run(exampleOf(command));
    assertThat(run.code()).as(run.err()).isZero();
    assertThat(run.err()).isEmpty();
  }

  @Test
  void ofTheSettledNameIsOneOfTheUndecided() {
    String name = Typed.words(exampleOf("settle")).get(1);
    assertThat(run("settle").out().replaceAll("\\s+", " ")).contains(name);
    assertThat(run(exampleOf("settle")).code()).isZero();
    assertThat(run("settle").out().replaceAll("\\s+", " ")).doesNotContain(name);
  }

  private static String exampleOf(String command) {
    return Run.of(command, "--help")
        .out()
        .lines()
        .filter(line -> line.startsWith("Example: griplore "))
        .map(line -> line.substring("Example: griplore ".length()))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no example in the help of " + command));
  }

  private Run run(String line) {
    List<String> words =
        Typed.words(line.replace("my-package", folder.resolve("package").toString()));
    int at = words.indexOf("--archive");
    if (at >= 0) {
      words.set(at + 1, archive.toString());
    } else {
      words.addAll(List.of("--archive", archive.toString()));
    }
    return Run.of(words.toArray(String[]::new));
  }
}
