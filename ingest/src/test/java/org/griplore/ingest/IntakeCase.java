package org.griplore.ingest;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * One case: a folder with the files that are read ({@code input.*}, and {@code lineage.csv} where
 * names matter) and {@code expected.json}: {@code about} (the oddity in a sentence), {@code
 * options} and {@code charset} where they are not the usual, and lists of lines for {@code tests},
 * {@code results}, {@code notes}, {@code findings} and {@code refused}. Lists that are absent are
 * empty.
 */
record IntakeCase(Path folder, JsonNode expected) {
  private static final ObjectMapper JSON = new ObjectMapper();
  static final Path CASES = Path.of("src/test/resources/intake-cases");

  static List<IntakeCase> all() throws IOException {
    try (Stream<Path> folders = Files.list(CASES)) {
      List<IntakeCase> cases = new ArrayList<>();
      for (Path folder : folders.filter(Files::isDirectory).sorted().toList()) {
        Path expected = folder.resolve("expected.json");
        cases.add(
            new IntakeCase(
                folder,
                Files.exists(expected)
                    ? JSON.readTree(expected.toFile())
                    : JSON.createObjectNode()));
      }
      return cases;
    }
  }

  /**
   * Copies the files that are read, without {@code expected.json}, to a folder; a file is written
   * in the case's charset, with a byte order mark where that is UTF-16.
   */
  void copyTo(Path target) throws IOException {
    Charset charset = Charset.forName(expected.path("charset").asText("UTF-8"));
    boolean crlf = expected.path("crlf").asBoolean(false);
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.sorted().toList()) {
        String name = file.getFileName().toString();
        boolean plain = charset.equals(StandardCharsets.UTF_8) && !crlf;
        if (name.equals("expected.json")) {
          continue;
        }
        if (plain || !name.startsWith("input")) {
          Files.copy(file, target.resolve(name));
        } else {
          String text = Files.readString(file);
          Files.writeString(
              target.resolve(name), crlf ? text.replace("\n", "\r\n") : text, charset);
        }
      }
    }
  }

  ReadOptions options() {
    Map<String, String> details = new HashMap<>();
    expected
        .path("options")
        .properties()
        .forEach(option -> details.put(option.getKey(), option.getValue().asText()));
    return new ReadOptions(details);
  }

  List<String> lines(String list) {
    List<String> lines = new ArrayList<>();
    expected.path(list).forEach(line -> lines.add(line.asText()));
    return lines;
  }

  @Override
  public String toString() {
    return folder.getFileName() + ": " + expected.path("about").asText("?");
  }
}
