package org.griplore.ui.command;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.griplore.ingest.decide.DecisionsFile;
import org.griplore.ingest.decide.NameDecisions;
import org.griplore.query.Questions;
import org.griplore.query.answer.Answer;
import org.griplore.query.browse.SettleQuestion;
import org.griplore.query.option.Choices;
import org.griplore.query.question.QueryContext;
import org.griplore.store.archive.Archive;
import org.griplore.store.archive.Original;
import org.griplore.store.vocabulary.Decision;
import org.griplore.store.vocabulary.TestDecision;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;

/** Lists undecided names, decides on them, takes decisions back and carries them elsewhere. */
final class SettleCommand implements Action {
  private final Clock clock;

  private SettleCommand(Clock clock) {
    this.clock = clock;
  }

  static CommandSpec spec(Clock clock) {
    CommandSpec spec = CommandSpec.wrapWithoutInspection(new SettleCommand(clock));
    spec.usageMessage()
        .description(
            "List the names that nobody has decided on, with the models they could mean; or decide"
                + " what names mean. A decision holds at once and for files added later, and can be"
                + " taken back.")
        .footer(
            "",
            "Example: griplore settle \"Velmora Aurelys 5\" --same-as \"Velmora Aurelis 5\"",
            "`griplore decisions` lists what was decided.");
    spec.addPositional(
        PositionalParamSpec.builder()
            .type(List.class)
            .auxiliaryTypes(String.class)
            .arity("0..*")
            .paramLabel("NAME")
            .description("Names to decide on; none lists the undecided")
            .build());
    spec.addOption(text("--same-as", "MODEL", "The names mean this model"));
    spec.addOption(flag("--new", "Each name is a model of its own"));
    spec.addOption(flag("--undecided", "Take the decisions on the names back"));
    spec.addOption(
        flag("--rest", "With --new, instead of names: all undecided names without a candidate"));
    spec.addOption(flag("--same-test", "Two tests, by their keys, are one that was told twice"));
    spec.addOption(flag("--two-tests", "Two tests that look like one are two, and both count"));
    spec.addOption(flag("--open-test", "Take the decision on two tests back"));
    spec.addOption(DecisionWords.because());
    spec.addOption(text("--export", "FILE", "Write the decisions that stand as CSV"));
    spec.addOption(text("--import", "FILE", "Take the decisions of such a file, all or none"));
    spec.addOption(CommonWords.archive());
    spec.addOption(CommonWords.format());
    spec.addOption(CommonWords.output());
    return spec;
  }

  private static OptionSpec text(String name, String value, String meaning) {
    return OptionSpec.builder(name)
        .type(String.class)
        .paramLabel(value)
        .description(meaning)
        .build();
  }

  private static OptionSpec flag(String name, String meaning) {
    return OptionSpec.builder(name).description(meaning).build();
  }

  @Override
  public int run(ParseResult words, Terminal terminal) {
    List<String> names = words.matchedPositionalValue(0, List.of());
    Optional<TestDecision.Verdict> verdict = TestVerdict.of(words);
    if (verdict.isPresent()) {
      try (Archive archive = Archive.open(CommonWords.archive(words))) {
        return TestVerdict.decide(archive, names, verdict.get(), words, clock, terminal);
      }
    }
    List<String> acts =
        List.of("--same-as", "--new", "--undecided", "--export", "--import").stream()
            .filter(words::hasMatchedOption)
            .toList();
    if (acts.size() > 1) {
      throw Choices.refusal(acts.get(1).substring(2), String.join(" ", acts), "one of them");
    }
    boolean onNames = !acts.isEmpty() && !acts.get(0).matches("--export|--import");
    boolean rest = words.hasMatchedOption("--rest");
    if (rest && (!names.isEmpty() || !acts.equals(List.of("--new")))) {
      throw Choices.refusal("rest", String.join(" ", names), "--new, and no names beside it");
    }
    if (onNames != (rest || !names.isEmpty())) {
      throw Choices.refusal(
          "NAME",
          String.join(" ", names),
          onNames
              ? "the name to decide on, as in `griplore settle \"NAME\" " + acts.get(0) + "`"
              : "with a name one of --same-as MODEL, --new, --undecided");
    }
    try (Archive archive = Archive.open(CommonWords.archive(words))) {
      return acts.isEmpty()
          ? list(archive, words, terminal)
          : acts.get(0).equals("--export")
              ? export(archive, words, terminal)
              : DecisionWords.tell(decide(archive, acts.get(0), names, words), archive, terminal);
    }
  }

  private List<Decision> decide(
      Archive archive, String act, List<String> names, ParseResult words) {
    NameDecisions decisions = new NameDecisions(archive, clock);
    String because = words.matchedOptionValue("--because", "");
    return switch (act) {
      case "--same-as" -> decisions.sameAs(names, words.matchedOptionValue(act, ""), because);
      case "--undecided" -> decisions.takeBack(names, because);
      case "--import" -> {
        Path file = CommonWords.path("import", words.matchedOptionValue(act, ""));
        Paths.refuseMissing(List.of(file));
        yield archive.decide(DecisionsFile.read(Original.of(file), clock));
      }
      default -> names.isEmpty() ? decisions.restAreOwn(because) : decisions.own(names, because);
    };
  }

  private static int list(Archive archive, ParseResult words, Terminal terminal) {
    try (QueryContext queryContext = new QueryContext(archive, CommonWords.catalogue(archive))) {
      Answer<?> answer = Questions.ask(new SettleQuestion(), queryContext, Map.of());
      AnswerFile.of(words, CommonWords.format(words), terminal).write(answer);
      return ExitCode.ANSWERED;
    }
  }

  private static int export(Archive archive, ParseResult words, Terminal terminal) {
    Path file = CommonWords.path("export", words.matchedOptionValue("--export", ""));
    List<Decision> decisions = archive.decisions();
    DecisionWords.write(file, DecisionsFile.text(decisions));
    terminal.out().println(Counts.of(decisions.size(), "decision") + " written to " + file + ".");
    return ExitCode.ANSWERED;
  }
}
