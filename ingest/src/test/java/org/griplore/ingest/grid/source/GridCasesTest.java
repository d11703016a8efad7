package org.griplore.ingest.grid.source;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.griplore.store.vocabulary.Refusal;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Each folder of {@code grid-cases} is a case: {@code input.*} is read as its expected.json says.
 */
class GridCasesTest {
  private static final Path CASES = Path.of("src", "test", "resources", "grid-cases");
  private static final ObjectMapper MAPPER = new ObjectMapper();

  static List<String> cases() throws IOException {
    try (Stream<Path> folders = Files.list(CASES)) {
      return folders.map(folder -> folder.getFileName().toString()).sorted().toList();
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("cases")
  void inputIsReadAsExpected(String name) throws IOException {
    Path input;
    try (Stream<Path> files = Files.list(CASES.resolve(name))) {
      input =
          files
              .filter(file -> file.getFileName().toString().startsWith("input."))
              .findFirst()
              .orElseThrow();
    }
    ObjectNode read;
    try {
      read = GridView.of(DocumentReader.read(input));
    } catch (Refusal refusal) {
      read = GridView.of(refusal);
    }
    Path expected = CASES.resolve(name).resolve("expected.json");
    assertThat(expected).as("what the case expects; found %s", read.toPrettyString()).exists();
    assertThat(read.toPrettyString())
        .isEqualTo(MAPPER.readTree(Files.readString(expected)).toPrettyString());
  }
}
