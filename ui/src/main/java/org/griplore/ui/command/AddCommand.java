package org.griplore.ui.command;

import java.nio.file.Path;
import java.time.Clock;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.griplore.ingest.AddedSource;
import org.griplore.ingest.Intake;
import org.griplore.ingest.ReadOptions;
import org.griplore.query.option.Choices;
import org.griplore.store.archive.AdditionOutcome;
import org.griplore.store.archive.Archive;
import org.griplore.store.archive.DraftRecord;
import org.griplore.store.text.NoteIndex;
import org.griplore.store.vocabulary.ProposedReading;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;

/** Adds files and folders to an archive, which is made when it is not there. */
final class AddCommand implements Action {
  /** Options for details that a source does not say: name, topic, meaning. */
  private static final List<List<String>> DETAILS =
      List.of(
          List.of(
              "kind",
              "source_kind",
              "KIND",
              "Who stands behind the reports: own, independent, maker"),
          List.of("publication", "source", "NAME", "Who published them"),
          List.of("test", "test", "KEY", "The test's key"),
          List.of("title", "title", "TEXT", "The test's title"),
          List.of("date", "date", "DATE", "When it was tested"),
          List.of("size", "size", "SIZE", "The size tested, like \"205/55 R16 91V\""),
          List.of("season", "season", "CLASS", "summer, winter or all-season"),
          List.of("vehicle", "vehicle", "TEXT", "The vehicle, with its mass in kg"),
          List.of("venue", "venue", "TEXT", "The proving ground"),
          List.of("unit", "unit", "UNIT", "The unit of all columns that state none"));

  private final Clock clock;

  private AddCommand(Clock clock) {
    this.clock = clock;
  }

  static CommandSpec spec(Clock clock) {
    CommandSpec spec = CommandSpec.wrapWithoutInspection(new AddCommand(clock));
    spec.usageMessage()
        .description(
            "Add files, or all files in folders, to an archive; it is made when it is not there."
                + " The same content twice changes nothing; a changed file becomes a new revision.")
        .footer(
            "",
            "Example: griplore add results/2021 --kind own --archive my-archive",
            "Details a file does not say may also stand beside it, in FILE.details, as lines like"
                + " `Size: 205/55 R16 91V`.");
    spec.addPositional(
        PositionalParamSpec.builder()
            .type(List.class)
            .auxiliaryTypes(String.class)
            .arity("0..*")
            .paramLabel("PATH")
            .description("Files and folders")
            .build());
    for (List<String> detail : DETAILS) {
      spec.addOption(
          OptionSpec.builder("--" + detail.get(0))
              .type(String.class)
              .paramLabel(detail.get(2))
              .description(detail.get(3) + ", where a file does not say")
              .build());
    }
    spec.addOption(
        OptionSpec.builder("--map")
            .type(String.class)
            .paramLabel("FILE")
            .description("What the columns hold, where that is recognised wrongly: see FORMS.md")
            .build());
    spec.addOption(
        OptionSpec.builder("--explain")
            .type(boolean.class)
            .description("Say how files are understood, column by column, and write nothing")
            .build());
    spec.addOption(
        OptionSpec.builder("--map-out")
            .type(String.class)
            .paramLabel("FILE")
            .description("Write what was understood as a map to begin with; with --explain only")
            .build());
    spec.addOption(CommonWords.archive());
    return spec;
  }

  @Override
  public int run(ParseResult words, Terminal terminal) {
    List<String> given = words.matchedPositionalValue(0, List.of());
    if (given.isEmpty()) {
      throw Choices.refusal("PATH", "", "a file or folder, as in `griplore add results/2021`");
    }
    List<Path> paths = given.stream().map(path -> CommonWords.path("PATH", path)).toList();
    Path folder = CommonWords.archive(words);
    Paths.refuseMissing(paths);
    ReadOptions options =
        new ReadOptions(details(words), false, MapFile.read(words, CommonWords.catalogue(folder)));
    if (words.hasMatchedOption("--explain")) {
      return Explaining.of(paths, options, folder, MapFile.target(words), clock, terminal);
    }
    MapFile.refuseTarget(words);
    try (Archive archive = Archive.openOrCreate(folder);
        ProgressLine progress = new ProgressLine(terminal)) {
      Intake intake = new Intake(archive, CommonWords.catalogue(archive), clock);
      List<AddedSource> added =
          intake.add(
              paths,
              options,
              new Intake.Progress() {
                @Override
                public void reading(String name, int done, int total) {
                  progress.show("reading " + name, done, total);
                }

                @Override
                public void passedOver(int files) {
                  if (files > 0) {
                    terminal
                        .out()
                        .println(
                            Counts.of(files, "file")
                                + " passed over: lock files, thumbnails and the like");
                  }
                }
              });
      progress.show("indexing notes", added.size(), added.size());
      NoteIndex.open(archive).close();
      progress.end();
      int told = told(added, terminal);
      drafts(archive, added, terminal);
      return told;
    }
  }

  private static Map<String, String> details(ParseResult words) {
    Map<String, String> details = new HashMap<>();
    for (List<String> detail : DETAILS) {
      String value = words.matchedOptionValue("--" + detail.get(0), null);
      if (value != null && !value.isBlank()) {
        details.put(detail.get(1), value);
      }
    }
    return details;
  }

  /** Says what became of each source; refusals go to standard error. */
  static int told(List<AddedSource> added, Terminal terminal) {
    int refused = 0;
    long findings = 0;
    for (AddedSource source : added) {
      if (source.refusal() != null) {
        refused++;
        terminal.err().println("griplore: " + source.refusal().sentence());
        continue;
      }
      findings += source.outcome().findings();
      terminal.out().println(line(source.name(), source.outcome()));
      source.outcome().changes().forEach(change -> terminal.out().println("    " + change));
    }
    if (findings > 0) {
      terminal
          .out()
          .println(
              Counts.of(findings, "finding")
                  + ": `griplore findings` lists what was assumed or not understood.");
    }
    return refused > 0 ? ExitCode.ERROR : ExitCode.ANSWERED;
  }

  /** The tables of these sources that wait for a decision. */
  private static void drafts(Archive archive, List<AddedSource> added, Terminal terminal) {
    List<String> names = added.stream().map(AddedSource::name).toList();
    for (DraftRecord draft : archive.drafts()) {
      if (draft.state() == DraftRecord.State.OPEN && names.contains(draft.file())) {
        terminal
            .out()
            .println(
                "Draft %d, %s: %s; `griplore drafts --take %d` takes it so."
                    .formatted(
                        draft.id(),
                        draft.file(),
                        ProposedReading.of(draft.table()).get(0).words(),
                        draft.id()));
      }
    }
  }

  private static String line(String name, AdditionOutcome outcome) {
    return switch (outcome.status()) {
      case UNCHANGED -> name + ": in the archive already, nothing changed";
      case NEW -> name + ": " + counts(outcome);
      case REVISED -> name + ": read anew, " + counts(outcome);
    };
  }

  private static String counts(AdditionOutcome outcome) {
    return new Counts()
        .add(outcome.tests(), "test")
        .add(outcome.entries(), "tyre")
        .add(outcome.results(), "result")
        .add(outcome.notes(), "note")
        .add(outcome.lineage(), "model")
        .add(outcome.findings(), "finding")
        .orElse("nothing that counts");
  }
}
