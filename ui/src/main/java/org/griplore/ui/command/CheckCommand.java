package org.griplore.ui.command;

import java.util.List;
import org.griplore.store.archive.Archive;
import org.griplore.store.archive.ArchiveCheck;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** Verifies an archive: originals against their hashes, the database, the text index. */
final class CheckCommand implements Action {
  private CheckCommand() {}

  static CommandSpec spec() {
    CommandSpec spec = CommandSpec.wrapWithoutInspection(new CheckCommand());
    spec.usageMessage()
        .description("Verify an archive: originals by hash, the database, the text index.")
        .footer("", "Example: griplore check --archive my-archive");
    spec.addOption(CommonWords.archive());
    return spec;
  }

  @Override
  public int run(ParseResult words, Terminal terminal) {
    try (Archive archive = Archive.open(CommonWords.archive(words))) {
      List<String> problems = ArchiveCheck.of(archive).problems();
      if (problems.isEmpty()) {
        terminal.out().println("The archive is sound.");
        return ExitCode.ANSWERED;
      }
      problems.forEach(terminal.out()::println);
      terminal.err().println("griplore: " + problems.size() + " problems in the archive.");
      return ExitCode.ERROR;
    }
  }
}
