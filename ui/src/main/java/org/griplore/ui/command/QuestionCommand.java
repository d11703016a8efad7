package org.griplore.ui.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import org.griplore.query.Questions;
import org.griplore.query.answer.Answer;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Sense;
import org.griplore.query.option.Option;
import org.griplore.query.question.QueryContext;
import org.griplore.query.question.Question;
import org.griplore.store.archive.Archive;
import org.griplore.store.vocabulary.DisciplineCatalogue;
import org.griplore.store.vocabulary.Refusal;
import org.griplore.ui.render.OutputFormat;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;

/** A question as a command: its definition becomes the options, its answer is written out. */
final class QuestionCommand implements Action {
  private final Question<?> question;
  private final Map<String, List<String>> always;

  QuestionCommand(Question<?> question) {
    this(question, Map.of());
  }

  /** A question with options that are always given. */
  QuestionCommand(Question<?> question, Map<String, List<String>> always) {
    this.question = question;
    this.always = always;
  }

  /** The command as help does not name it. */
  CommandSpec hidden() {
    CommandSpec spec = spec();
    spec.usageMessage().hidden(true);
    return spec;
  }

  CommandSpec spec() {
    CommandSpec spec = CommandSpec.wrapWithoutInspection(this);
    spec.usageMessage().description(question.purpose() + ".").footer(footer());
    for (Option option : question.options()) {
      if (option.isArgument()) {
        spec.addPositional(
            PositionalParamSpec.builder()
                .type(List.class)
                .auxiliaryTypes(String.class)
                .arity("0..*")
                .paramLabel(option.value())
                .description(sentence(option))
                .build());
      } else {
        spec.addOption(option(option, arity(option)));
      }
    }
    spec.addOption(CommonWords.archive());
    spec.addOption(CommonWords.format());
    spec.addOption(CommonWords.output());
    return spec;
  }

  /** What each row tells, and an example. */
  private String[] footer() {
    List<String> lines = new ArrayList<>(List.of("", "Each row tells:"));
    for (Column<?> column : question.columns()) {
      Sense sense = column.sense();
      String unit = sense.unit() == null ? "" : " (" + sense.unit() + ")";
      lines.add(("  " + column.key() + unit + ": " + sense.meaning()).replace("%", "%%"));
    }
    lines.addAll(List.of("", "Example: griplore " + question.example()));
    return lines.toArray(String[]::new);
  }

  /** Several values may follow one name where no plain arguments could be meant. */
  private String arity(Option option) {
    if (option.given() == Option.Given.FLAG) {
      return "0";
    }
    return !option.isMany() || question.options().stream().anyMatch(Option::isArgument)
        ? "1"
        : "1..*";
  }

  private static OptionSpec option(Option option, String arity) {
    return OptionSpec.builder("--" + option.name())
        .type(List.class)
        .auxiliaryTypes(String.class)
        .arity(arity)
        .paramLabel(option.words().isEmpty() ? option.value() : String.join("|", option.words()))
        .description(sentence(option))
        .build();
  }

  private static String sentence(Option option) {
    String meaning = option.meaning();
    String sentence = Character.toUpperCase(meaning.charAt(0)) + meaning.substring(1);
    if (option.given() == Option.Given.REPEATED || option.given() == Option.Given.REQUIRED) {
      sentence += "; may be repeated";
    }
    if (option.fallback() != null) {
      sentence += " (" + option.fallback() + " when not given)";
    }
    return sentence.replace("%", "%%");
  }

  @Override
  public int run(ParseResult words, Terminal terminal) {
    OutputFormat format = CommonWords.format(words);
    AnswerFile file = AnswerFile.of(words, format, terminal);
    Path folder = CommonWords.archive(words);
    // read while the database is opened: both take a tenth of a second
    CompletableFuture<DisciplineCatalogue> catalogue =
        CompletableFuture.supplyAsync(() -> CommonWords.catalogue(folder));
    try (Archive archive = Archive.open(folder);
        QueryContext queryContext = new QueryContext(archive, joined(catalogue))) {
      Answer<?> answer = Questions.ask(question, queryContext, given(words));
      file.write(answer);
      return answer.hasEvidence() ? ExitCode.ANSWERED : ExitCode.NO_EVIDENCE;
    }
  }

  private static DisciplineCatalogue joined(CompletableFuture<DisciplineCatalogue> catalogue) {
    try {
      return catalogue.join();
    } catch (CompletionException e) {
      if (e.getCause() instanceof Refusal refusal) {
        throw refusal;
      }
      throw e;
    }
  }

  private static List<String> named(Option option, ParseResult words) {
    if (option.given() == Option.Given.FLAG) {
      return words.hasMatchedOption("--" + option.name()) ? List.of(Option.YES) : List.of();
    }
    return words.matchedOptionValue("--" + option.name(), List.of());
  }

  private Map<String, List<String>> given(ParseResult words) {
    Map<String, List<String>> given = new LinkedHashMap<>(always);
    for (Option option : question.options()) {
      List<String> values =
          option.isArgument() ? words.matchedPositionalValue(0, List.of()) : named(option, words);
      if (!values.isEmpty()) {
        given.put(option.name(), values);
      }
    }
    return given;
  }
}
