package org.griplore.ui.command;

import java.time.Clock;
import java.util.List;
import org.griplore.query.option.Choices;
import org.griplore.store.archive.Archive;
import org.griplore.store.archive.ColumnMapRecord;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/** Lists what was said of tables' columns and is remembered, or forgets one of them. */
final class ColumnsCommand implements Action {
  private final Clock clock;

  private ColumnsCommand(Clock clock) {
    this.clock = clock;
  }

  static CommandSpec spec(Clock clock) {
    CommandSpec spec = CommandSpec.wrapWithoutInspection(new ColumnsCommand(clock));
    spec.usageMessage()
        .description(
            "List the column maps that were given with files and are used for later files of the"
                + " same headers, or forget one.")
        .footer("", "Example: griplore columns --forget 2");
    spec.addOption(
        OptionSpec.builder("--forget")
            .type(String.class)
            .paramLabel("N")
            .description("Use this one no more; files read by it stay as they are")
            .build());
    spec.addOption(CommonWords.archive());
    return spec;
  }

  @Override
  public int run(ParseResult words, Terminal terminal) {
    String forget = words.matchedOptionValue("--forget", null);
    if (forget != null && !forget.matches("\\d{1,9}")) {
      throw Choices.refusal("forget", forget, "a number that `griplore columns` lists");
    }
    try (Archive archive = Archive.open(CommonWords.archive(words))) {
      if (forget != null) {
        archive.forgetColumns(Integer.parseInt(forget), clock);
        terminal.out().println("Forgotten; files that were read by it stay as they are.");
        return ExitCode.ANSWERED;
      }
      List<ColumnMapRecord> maps = archive.columnMaps();
      for (ColumnMapRecord map : maps) {
        terminal
            .out()
            .println(
                "%d  %s  said of %s on %s"
                    .formatted(
                        map.id(),
                        map.layout(),
                        map.file(),
                        map.saidAt().toString().substring(0, 10)));
        terminal.out().println("   " + map.map());
      }
      if (maps.isEmpty()) {
        terminal.out().println("Nothing is remembered of the columns of any table.");
      }
      return maps.isEmpty() ? ExitCode.NO_EVIDENCE : ExitCode.ANSWERED;
    }
  }
}
