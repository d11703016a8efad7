package org.griplore.ui.command;

import java.time.Clock;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.griplore.ingest.decide.DescentDecisions;
import org.griplore.query.Questions;
import org.griplore.query.answer.Answer;
import org.griplore.query.browse.LineageQuestion;
import org.griplore.query.option.Choices;
import org.griplore.query.question.QueryContext;
import org.griplore.store.archive.Archive;
import org.griplore.store.vocabulary.Decision.Topic;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;

/** Shows a model's descent and who says so, and decides what holds whatever the sources say. */
final class LineageCommand implements Action {
  private static final Map<Topic, String> MEANINGS =
      new EnumMap<>(
          Map.of(
              Topic.FOLLOWS, "MODEL:Its predecessor",
              Topic.MAKER, "MAKER:Its maker",
              Topic.LINE, "LINE:The line it belongs to",
              Topic.GENERATION, "MARK:The generation's own mark within the line",
              Topic.LAUNCHED, "DATE:When it came to market, a year or a date",
              Topic.SEASON, "CLASS:summer, winter or all-season",
              Topic.SEGMENT, "TEXT:The market segment"));

  private final Clock clock;

  private LineageCommand(Clock clock) {
    this.clock = clock;
  }

  static CommandSpec spec(Clock clock) {
    CommandSpec spec = CommandSpec.wrapWithoutInspection(new LineageCommand(clock));
    spec.usageMessage()
        .description(
            "Show a model's descent and who says so; or decide what holds, whatever the sources"
                + " say. A decision can be taken back.")
        .footer(
            "", "Example: griplore lineage \"Velmora Aurelis 5\" --follows \"Velmora Aurelis 4\"");
    spec.addPositional(
        PositionalParamSpec.builder()
            .type(List.class)
            .auxiliaryTypes(String.class)
            .arity("0..*")
            .paramLabel("MODEL")
            .description("The model")
            .build());
    MEANINGS.forEach(
        (topic, meaning) -> {
          String[] parts = meaning.split(":");
          spec.addOption(
              OptionSpec.builder("--" + topic.word())
                  .type(String.class)
                  .paramLabel(parts[0])
                  .description(parts[1] + "; \"\" for none")
                  .build());
        });
    spec.addOption(
        OptionSpec.builder("--starts-line").description("It has no predecessor").build());
    spec.addOption(
        OptionSpec.builder("--undecided")
            .type(List.class)
            .auxiliaryTypes(String.class)
            .arity("1")
            .paramLabel("TOPIC")
            .description(
                "Take the decision on this back, so that the sources' word holds: follows, maker,"
                    + " line ..., or all; may be repeated")
            .build());
    spec.addOption(DecisionWords.because());
    spec.addOption(CommonWords.archive());
    spec.addOption(CommonWords.format());
    spec.addOption(CommonWords.output());
    return spec;
  }

  @Override
  public int run(ParseResult words, Terminal terminal) {
    List<String> models = words.matchedPositionalValue(0, List.of());
    if (models.size() != 1) {
      throw Choices.refusal(
          "MODEL", String.join(" ", models), "one model, as in `griplore lineage \"MODEL\"`");
    }
    String model = models.get(0);
    try (Archive archive = Archive.open(CommonWords.archive(words))) {
      DescentDecisions.Wanted wanted = wanted(archive, model, words);
      if (!wanted.values().isEmpty() || !wanted.takenBack().isEmpty()) {
        String because = words.matchedOptionValue("--because", "");
        return DecisionWords.tell(
            new DescentDecisions(archive, clock).decide(model, wanted, because), archive, terminal);
      }
      try (QueryContext queryContext = new QueryContext(archive, CommonWords.catalogue(archive))) {
        Answer<?> answer =
            Questions.ask(new LineageQuestion(), queryContext, Map.of("model", List.of(model)));
        AnswerFile.of(words, CommonWords.format(words), terminal).write(answer);
        return ExitCode.ANSWERED;
      }
    }
  }

  private static DescentDecisions.Wanted wanted(Archive archive, String model, ParseResult words) {
    Map<Topic, String> values = new EnumMap<>(Topic.class);
    for (Topic topic : MEANINGS.keySet()) {
      if (words.hasMatchedOption("--" + topic.word())) {
        String value = words.matchedOptionValue("--" + topic.word(), "").strip();
        values.put(topic, value.isEmpty() ? null : value);
      }
    }
    if (words.hasMatchedOption("--starts-line")) {
      if (values.get(Topic.FOLLOWS) != null) {
        throw Choices.refusal("starts-line", "--follows", "one of them");
      }
      values.put(Topic.FOLLOWS, null);
    }
    List<Topic> takenBack = new ArrayList<>();
    for (String word : words.matchedOptionValue("--undecided", List.<String>of())) {
      if (word.equals("all")) {
        takenBack.addAll(DescentDecisions.decided(archive, model));
      } else {
        takenBack.add(
            Topic.ofWord(word)
                .filter(MEANINGS::containsKey)
                .orElseThrow(
                    () ->
                        Choices.refusal(
                            "undecided",
                            word,
                            "all, follows, maker, line, generation, launched, season or segment")));
      }
    }
    return new DescentDecisions.Wanted(values, takenBack);
  }
}
