package org.griplore.ui.command;

import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import org.griplore.ingest.Intake;
import org.griplore.query.option.Choices;
import org.griplore.store.archive.Archive;
import org.griplore.store.check.ArchiveCheck;
import org.griplore.store.check.CheckLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/**
 * Verifies an archive: the database, the cells, the originals by hash, the text index, and that
 * originals read anew give what the archive holds.
 */
final class CheckCommand implements Action {
  private static final int SAMPLE = 10;

  private final Clock clock;

  private CheckCommand(Clock clock) {
    this.clock = clock;
  }

  static CommandSpec spec(Clock clock) {
    CommandSpec spec = CommandSpec.wrapWithoutInspection(new CheckCommand(clock));
    spec.usageMessage()
        .description(
            "Verify an archive: database, cells, originals by hash, text index. Originals of some"
                + " revisions, drawn at random, are read anew, and each figure, note and run is"
                + " compared with what the archive holds.")
        .footer("", "Example: griplore check --all --archive my-archive");
    spec.addOption(
        OptionSpec.builder("--all")
            .description("Read every original anew, old revisions too")
            .build());
    spec.addOption(
        OptionSpec.builder("--sample")
            .type(String.class)
            .paramLabel("N")
            .description("How many revisions to read anew; " + SAMPLE + " when not given")
            .build());
    spec.addOption(
        OptionSpec.builder("--seed")
            .type(String.class)
            .paramLabel("N")
            .description("Draws the sample that an earlier check drew with this seed")
            .build());
    spec.addOption(CommonWords.archive());
    return spec;
  }

  @Override
  public int run(ParseResult words, Terminal terminal) {
    long sample = number(words, "sample", SAMPLE);
    long seed = number(words, "seed", -1);
    try (Archive archive = Archive.open(CommonWords.archive(words));
        ProgressLine progress = new ProgressLine(terminal)) {
      ArchiveCheck.Progress told =
          (part, done, total) -> progress.show(part, (int) done, (int) Math.max(total, 1));
      List<CheckLine> lines = new ArrayList<>(ArchiveCheck.run(archive, told));
      if (lines.stream().allMatch(CheckLine::good)) {
        Intake intake = new Intake(archive, CommonWords.catalogue(archive), clock);
        SampleCheck check = new SampleCheck(archive, intake, told);
        lines.addAll(
            words.hasMatchedOption("--all")
                ? check.all()
                : check.sample((int) sample, seed < 0 ? archive.stamp() : seed));
      } else {
        lines.add(new CheckLine(true, "No original was read anew: mend the archive first."));
      }
      progress.end();
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

  private static long number(ParseResult words, String option, long otherwise) {
    String given = words.matchedOptionValue("--" + option, null);
    if (given == null) {
      return otherwise;
    }
    if (!given.matches("\\d{1,9}")) {
      throw Choices.refusal(option, given, "a whole number, 0 or more");
    }
    return Long.parseLong(given);
  }
}
