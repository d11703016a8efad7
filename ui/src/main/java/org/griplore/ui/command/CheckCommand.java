package org.griplore.ui.command;

import java.util.List;
import org.griplore.store.archive.Archive;
import org.griplore.store.check.ArchiveCheck;
import org.griplore.store.check.CheckLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** Verifies an archive: the database, the cells, the originals by hash, the text index. */
final class CheckCommand implements Action {
  private CheckCommand() {}

  static CommandSpec spec() {
    CommandSpec spec = CommandSpec.wrapWithoutInspection(new CheckCommand());
    spec.usageMessage()
        .description("Verify an archive: database, cells, originals by hash, text index.")
        .footer("", "Example: griplore check --archive my-archive");
    spec.addOption(CommonWords.archive());
    return spec;
  }

  @Override
  public int run(ParseResult words, Terminal terminal) {
    try (Archive archive = Archive.open(CommonWords.archive(words));
        ProgressLine progress = new ProgressLine(terminal)) {
      List<CheckLine> lines =
          ArchiveCheck.run(
              archive,
              (part, done, total) -> progress.show(part, (int) done, (int) Math.max(total, 1)));
      progress.close();
      lines.forEach(line -> terminal.out().println(line.sentence()));
      long bad = lines.stream().filter(line -> !line.good()).count();
      if (bad > 0) {
        terminal
            .err()
            .println("griplore: The archive has " + bad + (bad == 1 ? " problem." : " problems."));
      }
      return bad > 0 ? ExitCode.ERROR : ExitCode.ANSWERED;
    }
  }
}
