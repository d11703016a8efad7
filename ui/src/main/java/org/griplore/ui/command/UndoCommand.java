package org.griplore.ui.command;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import org.griplore.store.archive.Archive;
import org.griplore.store.archive.Revision;
import org.griplore.store.archive.TakenBack;
import org.griplore.store.text.NoteIndex;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/** Takes back the last addition and says in words what that was. */
final class UndoCommand implements Action {
  /** So many names are told; the rest is counted. */
  private static final int TOLD = 10;

  private UndoCommand() {}

  static CommandSpec spec() {
    CommandSpec spec = CommandSpec.wrapWithoutInspection(new UndoCommand());
    spec.usageMessage()
        .description(
            "Take back the last addition wholly: all that one `add`, or one commit in the page,"
                + " put in. What it had replaced counts again. Decisions on names stay.")
        .footer(
            "",
            "Example: griplore undo --dry-run --archive my-archive",
            "What was taken back is gone from the archive, its kept originals too: your own files"
                + " are not touched and can be added again.");
    spec.addOption(
        OptionSpec.builder("--dry-run")
            .description("Only say what would be taken back; change nothing")
            .build());
    spec.addOption(CommonWords.archive());
    return spec;
  }

  @Override
  public int run(ParseResult words, Terminal terminal) {
    boolean dry = words.hasMatchedOption("--dry-run");
    try (Archive archive = Archive.open(CommonWords.archive(words))) {
      Optional<TakenBack> taken = dry ? archive.lastAdded() : archive.undo();
      if (taken.isEmpty()) {
        terminal.out().println("The archive is empty: there is nothing to take back.");
        return ExitCode.NO_EVIDENCE;
      }
      if (!dry) {
        NoteIndex.open(archive).close();
      }
      tell(taken.get(), dry, terminal.out());
      return ExitCode.ANSWERED;
    }
  }

  private static void tell(TakenBack taken, boolean dry, PrintWriter out) {
    String is = dry ? "Would be taken" : "Taken";
    String when = CommonWords.second(taken.revisions().get(0).addedAt());
    out.println(
        "%s back: %s added on %s:"
            .formatted(is, Counts.of(taken.revisions().size(), "revision"), when));
    tell(taken.revisions().stream().map(UndoCommand::named).toList(), "    %s", out);
    out.println(
        "With " + (taken.revisions().size() == 1 ? "it: " : "them: ") + counts(taken) + ".");
    tell(
        taken.currentAgain().stream().map(UndoCommand::named).toList(),
        (dry ? "Would count" : "Counts") + " again: %s.",
        out);
    list("Tests that no other revision tells of", taken.tests(), out);
    list("Models that nothing else tells of", taken.models(), out);
    list("Names that mean what they meant before", taken.apartAgain(), out);
    if (dry) {
      out.println("Nothing was changed.");
    }
  }

  private static String named(Revision revision) {
    return revision.name() + ", revision " + revision.number() + " of " + revision.origin();
  }

  private static String counts(TakenBack taken) {
    return new Counts()
        .add(taken.entries(), "tyre")
        .add(taken.results(), "result")
        .add(taken.runs(), "run")
        .add(taken.notes(), "note")
        .add(taken.lineage(), "row on descent", "rows on descent")
        .add(taken.findings(), "finding")
        .orElse("no figures");
  }

  private static void tell(List<String> names, String sentence, PrintWriter out) {
    names.stream().limit(TOLD).forEach(name -> out.println(sentence.formatted(name)));
    if (names.size() > TOLD) {
      out.println("    and " + (names.size() - TOLD) + " more.");
    }
  }

  private static void list(String what, List<String> names, PrintWriter out) {
    if (!names.isEmpty()) {
      int more = names.size() - TOLD;
      out.println(
          what
              + ": "
              + String.join(", ", names.subList(0, Math.min(TOLD, names.size())))
              + (more > 0 ? " and " + more + " more." : "."));
    }
  }
}
