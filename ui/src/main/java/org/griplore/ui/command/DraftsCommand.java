package org.griplore.ui.command;

import java.time.Clock;
import java.util.List;
import java.util.Map;
import org.griplore.ingest.AddedSource;
import org.griplore.ingest.Intake;
import org.griplore.query.Questions;
import org.griplore.query.answer.Answer;
import org.griplore.query.browse.DraftsQuestion;
import org.griplore.query.option.Choices;
import org.griplore.query.question.QueryContext;
import org.griplore.store.archive.Archive;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/** Lists tables that wait for a decision, or decides one by the reading proposed or the second. */
final class DraftsCommand implements Action {
  private final Clock clock;

  private DraftsCommand(Clock clock) {
    this.clock = clock;
  }

  static CommandSpec spec(Clock clock) {
    CommandSpec spec = CommandSpec.wrapWithoutInspection(new DraftsCommand(clock));
    spec.usageMessage()
        .description(
            "List the tables that could not be decided on, with the readings that are proposed; or"
                + " take one of them. What is taken is remembered for tables with the same headers.")
        .footer("", "Example: griplore drafts --take 2");
    spec.addOption(
        OptionSpec.builder("--take")
            .type(String.class)
            .paramLabel("N")
            .description("Read the draft of this number by the reading proposed")
            .build());
    spec.addOption(
        OptionSpec.builder("--second").description("With --take: by the second reading").build());
    spec.addOption(CommonWords.archive());
    spec.addOption(CommonWords.format());
    spec.addOption(CommonWords.output());
    return spec;
  }

  @Override
  public int run(ParseResult words, Terminal terminal) {
    String take = words.matchedOptionValue("--take", null);
    boolean second = words.hasMatchedOption("--second");
    if (take == null && second) {
      throw Choices.refusal("second", "", "--take N beside it");
    }
    if (take != null && !take.matches("\\d{1,9}")) {
      throw Choices.refusal("take", take, "a number that `griplore drafts` lists");
    }
    try (Archive archive = Archive.open(CommonWords.archive(words))) {
      if (take == null) {
        return list(archive, words, terminal);
      }
      Intake intake = new Intake(archive, CommonWords.catalogue(archive), clock);
      AddedSource added = intake.decide(Integer.parseInt(take), second ? 2 : 1);
      return AddCommand.told(List.of(added), terminal);
    }
  }

  private static int list(Archive archive, ParseResult words, Terminal terminal) {
    try (QueryContext context = new QueryContext(archive, CommonWords.catalogue(archive))) {
      Answer<?> answer = Questions.ask(new DraftsQuestion(), context, Map.of());
      AnswerFile.of(words, CommonWords.format(words), terminal).write(answer);
      return answer.rows().isEmpty() ? ExitCode.NO_EVIDENCE : ExitCode.ANSWERED;
    }
  }
}
