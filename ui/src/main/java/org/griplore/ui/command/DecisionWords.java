package org.griplore.ui.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.griplore.store.archive.Archive;
import org.griplore.store.text.NoteIndex;
import org.griplore.store.vocabulary.Decision;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;
import picocli.CommandLine.Model.OptionSpec;

/** What commands that decide have in common. */
final class DecisionWords {
  /** So many decisions are told; the rest is counted. */
  private static final int TOLD = 20;

  private DecisionWords() {}

  static OptionSpec because() {
    return OptionSpec.builder("--because")
        .type(String.class)
        .paramLabel("WORDS")
        .description("Why it is decided so, kept with the decision")
        .build();
  }

  /** Says what was decided, once the text index knows it too. */
  static int tell(List<Decision> decided, Archive archive, Terminal terminal) {
    NoteIndex.open(archive).close();
    decided.stream()
        .limit(TOLD)
        .forEach(
            decision ->
                terminal
                    .out()
                    .println(
                        decision.clause()
                            + (decision.words().isEmpty() ? "" : " (" + decision.words() + ")")
                            + "."));
    if (decided.size() > TOLD) {
      terminal.out().println("And " + (decided.size() - TOLD) + " more decisions.");
    }
    if (decided.isEmpty()) {
      terminal.out().println("It is decided so already: nothing was changed.");
    }
    return ExitCode.ANSWERED;
  }

  static void write(Path file, String text) {
    try {
      Files.writeString(file, text, StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new Refusal(
          "The file " + file + " cannot be written.",
          e,
          new Problem("export", file.toString(), "a file in a folder that can be written"));
    }
  }
}
