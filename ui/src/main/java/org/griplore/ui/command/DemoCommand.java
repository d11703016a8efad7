package org.griplore.ui.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import org.griplore.ingest.AddedSource;
import org.griplore.ingest.Intake;
import org.griplore.ingest.ReadOptions;
import org.griplore.query.Questions;
import org.griplore.query.question.QueryContext;
import org.griplore.query.question.Question;
import org.griplore.store.archive.Archive;
import org.griplore.store.text.NoteIndex;
import org.griplore.store.vocabulary.Refusal;
import org.griplore.ui.web.Explorer;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/**
 * Builds the invented demo archive in a temporary folder, asks it a tester's questions, serves it.
 */
final class DemoCommand implements Action {
  private final Clock clock;

  private DemoCommand(Clock clock) {
    this.clock = clock;
  }

  static CommandSpec spec(Clock clock) {
    CommandSpec spec = CommandSpec.wrapWithoutInspection(new DemoCommand(clock));
    spec.usageMessage()
        .description(
            "Build the invented demo archive in a temporary folder, ask it what a tester asks before"
                + " a test, and open the explorer until Ctrl-C.")
        .footer("", "Example: griplore demo --no-serve");
    spec.addOption(
        OptionSpec.builder("--no-serve")
            .type(boolean.class)
            .description("Stop after the answers")
            .build());
    spec.addOption(ServeCommand.portOption());
    return spec;
  }

  @Override
  public int run(ParseResult words, Terminal terminal) {
    int port = ServeCommand.port(words);
    boolean serve = !words.hasMatchedOption("--no-serve");
    Path folder = temporaryFolder();
    Path sources = DemoSources.copyTo(folder.resolve("sources"));
    try (Archive archive = Archive.openOrCreate(folder.resolve("archive"));
        ProgressLine progress = new ProgressLine(terminal);
        QueryContext queryContext = new QueryContext(archive, CommonWords.catalogue(archive))) {
      List<AddedSource> added =
          new Intake(archive, CommonWords.catalogue(archive), clock)
              .add(
                  List.of(sources),
                  ReadOptions.NONE,
                  (name, done, total) -> progress.show("reading " + name, done, total));
      NoteIndex.open(archive).close();
      progress.end();
      for (AddedSource source : added) {
        if (source.refusal() != null) {
          throw source.refusal();
        }
      }
      Question<?> holdings = Questions.of("holdings").orElseThrow();
      terminal.out().println(Questions.ask(holdings, queryContext, Map.of()).summary());
      terminal.out().println("The archive, all of it invented, is in " + archive.folder() + ".");
      DemoTour.show(queryContext, terminal);
      terminal.out().println();
      terminal.out().flush();
      return serve
          ? ServeCommand.serve(new Explorer(queryContext, clock), port, terminal)
          : ExitCode.ANSWERED;
    }
  }

  private static Path temporaryFolder() {
    try {
      return Files.createTempDirectory("griplore-demo-");
    } catch (IOException e) {
      throw new Refusal("No temporary folder can be made: " + e.getMessage() + ".", e);
    }
  }
}
