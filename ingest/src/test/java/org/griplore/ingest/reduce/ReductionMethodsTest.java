package org.griplore.ingest.reduce;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The document of the methods names every class, and only tests that exist. */
class ReductionMethodsTest {
  private static final Path MODULE = Path.of("").toAbsolutePath();

  @Test
  void everyClassAndItsTestStandInTheDocument() throws IOException {
    String text = Files.readString(MODULE.resolve("METHODS-reduction.md"));
    for (String name : names("src/main/java")) {
      if (!name.equals("package-info")) {
        assertThat(text).contains("`" + name + "`");
      }
    }
    List<String> tests = names("src/test/java");
    List<String> named =
        Pattern.compile("`(\\w+Test)`")
            .matcher(text)
            .results()
            .map(match -> match.group(1))
            .toList();
    assertThat(named).isNotEmpty();
    assertThat(tests).containsAll(named);
  }

  private static List<String> names(String root) throws IOException {
    try (Stream<Path> files =
        Files.walk(MODULE.resolve(root).resolve("org/griplore/ingest/reduce"))) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(file -> file.endsWith(".java"))
          .map(file -> file.substring(0, file.length() - ".java".length()))
          .toList();
    }
  }
}
