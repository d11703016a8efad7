package org.griplore.ui.command;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.stream.Collectors;
import org.griplore.query.option.Choices;
import org.griplore.store.archive.Archive;
import org.griplore.store.vocabulary.DisciplineCatalogue;
import org.griplore.ui.render.OutputFormat;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/** Options that several commands have. */
final class CommonWords {
  private static final String DEFAULT_ARCHIVE = "griplore-archive";

  private CommonWords() {}

  static OptionSpec help() {
    return OptionSpec.builder("-h", "--help").usageHelp(true).description("Show this help").build();
  }

  static OptionSpec archive() {
    return OptionSpec.builder("--archive")
        .type(String.class)
        .paramLabel("DIR")
        .description(
            "The archive's folder; else the environment's GRIPLORE_ARCHIVE, else ./"
                + DEFAULT_ARCHIVE)
        .build();
  }

  static OptionSpec format() {
    String words =
        Arrays.stream(OutputFormat.values())
            .map(OutputFormat::word)
            .collect(Collectors.joining("|"));
    return OptionSpec.builder("--format")
        .type(String.class)
        .paramLabel(words)
        .description("How to write the answer; table when not given")
        .build();
  }

  static OptionSpec output() {
    return OptionSpec.builder("--output")
        .type(String.class)
        .paramLabel("FILE")
        .description("Write the answer to this file; its ending says how when --format does not")
        .build();
  }

  static Path archive(ParseResult words) {
    String given = words.matchedOptionValue("--archive", null);
    if (given == null) {
      String environment = System.getenv("GRIPLORE_ARCHIVE");
      given = environment == null || environment.isBlank() ? DEFAULT_ARCHIVE : environment;
    }
    return path("archive", given);
  }

  static Path path(String option, String text) {
    try {
      return Path.of(text);
    } catch (InvalidPathException e) {
      throw Choices.refusal(option, text, "a path");
    }
  }

  /** A time as it is told: to the second, in UTC. */
  static String second(Instant time) {
    return time.truncatedTo(ChronoUnit.SECONDS).toString().replace('T', ' ').replace("Z", " UTC");
  }

  static OutputFormat format(ParseResult words) {
    String given = words.matchedOptionValue("--format", OutputFormat.TABLE.word());
    return OutputFormat.ofWord(given)
        .orElseThrow(
            () ->
                Choices.refusal(
                    "format",
                    given,
                    Arrays.stream(OutputFormat.values())
                        .map(OutputFormat::word)
                        .collect(Collectors.joining(", "))));
  }

  /** The standard disciplines, with those of the archive's own {@code disciplines.json}. */
  static DisciplineCatalogue catalogue(Path archiveFolder) {
    Path own = archiveFolder.resolve("disciplines.json");
    return java.nio.file.Files.exists(own)
        ? DisciplineCatalogue.standard().with(own)
        : DisciplineCatalogue.standard();
  }

  static DisciplineCatalogue catalogue(Archive archive) {
    return catalogue(archive.folder());
  }
}
