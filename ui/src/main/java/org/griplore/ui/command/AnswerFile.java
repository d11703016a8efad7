package org.griplore.ui.command;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Arrays;
import java.util.stream.Collectors;
import org.griplore.query.answer.Answer;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;
import org.griplore.ui.render.OutputFormat;
import org.griplore.ui.render.TerminalStyle;
import picocli.CommandLine.ParseResult;

/** Where a command's answer goes, and in which format: a file, or standard output. */
final class AnswerFile {
  private static final String ENDINGS =
      Arrays.stream(OutputFormat.values())
          .map(format -> "." + format.ending())
          .collect(Collectors.joining(", "));

  private final Path file;
  private final OutputFormat format;
  private final Terminal terminal;

  private AnswerFile(Path file, OutputFormat format, Terminal terminal) {
    this.file = file;
    this.format = format;
    this.terminal = terminal;
  }

  /**
   * Reads {@code --output} beside the format; a file's ending tells the format when none is given.
   *
   * @throws Refusal when a format that is no text would go to a screen
   */
  static AnswerFile of(ParseResult words, OutputFormat given, Terminal terminal) {
    String output = words.matchedOptionValue("--output", null);
    Path file = output == null ? null : CommonWords.path("output", output);
    OutputFormat format = given;
    if (file != null && !words.hasMatchedOption("--format")) {
      String ending = output.substring(output.lastIndexOf('.') + 1);
      format =
          OutputFormat.ofEnding(ending)
              .orElseThrow(
                  () ->
                      new Refusal(
                          "The ending of "
                              + output
                              + " says no format: end it with "
                              + ENDINGS
                              + ", or add `--format`.",
                          new Problem("output", output, "a file that ends with " + ENDINGS)));
    }
    if (file == null && !format.isText() && terminal.bytes() == null) {
      throw new Refusal(
          "A terminal cannot show "
              + format.word()
              + ": add `--output FILE."
              + format.ending()
              + "`, or redirect the output to a file.",
          new Problem("format", format.word(), "a file to write to"));
    }
    return new AnswerFile(file, format, terminal);
  }

  /**
   * Writes the answer; a file appears whole or not at all.
   *
   * @throws Refusal when the file cannot be written
   */
  void write(Answer<?> answer) {
    if (file == null && format.isText()) {
      terminal.out().print(format.text(answer, terminal.style()));
      terminal.out().flush();
    } else if (file == null) {
      format.write(answer, terminal.bytes(), terminal.style());
    } else {
      try {
        toFile(answer);
      } catch (IOException | UncheckedIOException e) {
        throw new Refusal(
            "The file " + file + " cannot be written: " + e.getMessage() + ".",
            new Problem("output", file.toString(), "a file in a folder that can be written to"));
      }
    }
  }

  private void toFile(Answer<?> answer) throws IOException {
    Path folder = file.toAbsolutePath().getParent();
    Path unfinished = Files.createTempFile(folder, ".griplore-", ".part");
    try {
      try (OutputStream out = Files.newOutputStream(unfinished)) {
        format.write(answer, out, TerminalStyle.PLAIN);
      }
      Files.move(unfinished, file, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      Files.deleteIfExists(unfinished);
    }
  }
}
