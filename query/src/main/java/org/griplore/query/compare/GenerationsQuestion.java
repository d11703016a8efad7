package org.griplore.query.compare;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.griplore.query.answer.Answer;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Format;
import org.griplore.query.answer.Inquiry;
import org.griplore.query.answer.Lead;
import org.griplore.query.discipline.ComparisonScale;
import org.griplore.query.discipline.Difference;
import org.griplore.query.discipline.ModelStep;
import org.griplore.query.discipline.Network;
import org.griplore.query.discipline.StepsOfArchive;
import org.griplore.query.discipline.StrongestRemoval;
import org.griplore.query.evidence.Citations;
import org.griplore.query.evidence.Evidence;
import org.griplore.query.evidence.Exclusions;
import org.griplore.query.evidence.Filter;
import org.griplore.query.evidence.Names;
import org.griplore.query.network.VarianceMethod;
import org.griplore.query.option.Choices;
import org.griplore.query.option.Option;
import org.griplore.query.question.CommonOptions;
import org.griplore.query.question.QueryContext;
import org.griplore.query.question.Question;
import org.griplore.query.statistics.StepDistribution;
import org.griplore.query.statistics.StepPace;
import org.griplore.store.vocabulary.Direction;

/** The steps from one generation of a line to the next, and how unusual each is. */
public final class GenerationsQuestion implements Question<GenerationsQuestion.GenerationRow> {
  /**
   * One step in one discipline.
   *
   * @param years between the two launches; null when one is not known
   * @param pace the step for each of those years, in the step's unit; null without them
   * @param usualPace the usual gain a year among the archive's steps in this discipline
   * @param makerStep the step by maker-supplied reports alone; null when they do not show it
   * @param steps steps of the archive in this discipline that the percentile is among
   * @param percentile share of the archive's steps that this one is larger than, all drawn towards
   *     their mean by what is known of each; null with fewer than three steps
   * @param hangsOn the test and the source without which the step would move most; none in an
   *     archive so large that it would take long
   * @param consistency whether the tests of the discipline tell the same, in words
   * @param verdict the step in words
   */
  public record GenerationRow(
      String line,
      String older,
      String newer,
      String discipline,
      Difference step,
      Integer years,
      Double pace,
      Double usualPace,
      Double makerStep,
      int steps,
      Double percentile,
      List<StrongestRemoval> hangsOn,
      String consistency,
      String verdict) {}

  /** With more results it is not asked what each step hangs on. */
  private static final int MOST_ARMS = 50_000;

  @Override
  public String kind() {
    return "generations";
  }

  @Override
  public String purpose() {
    return "What each new generation gained, and whether that is more than usual";
  }

  @Override
  public String example() {
    return "generations \"Velmora Aurelis\" --discipline wet-braking";
  }

  @Override
  public List<Option> options() {
    List<Option> options = new ArrayList<>();
    options.add(
        Option.arguments(
            "line", "LINE", "a line, or one of its models for the steps to and from it", true));
    options.add(CommonOptions.discipline(null));
    options.addAll(Filter.OPTIONS);
    options.add(CompareOptions.VARIANCE);
    return options;
  }

  @Override
  public Answer<GenerationRow> answer(QueryContext context, Choices choices) {
    Evidence evidence = context.evidence();
    Set<Integer> wanted = new LinkedHashSet<>();
    choices.all("line").forEach(name -> wanted.addAll(context.names().lineOrModel("line", name)));
    List<ModelStep> all = ModelStep.all(evidence.models());
    List<ModelStep> asked =
        all.stream().filter(s -> wanted.contains(s.older()) || wanted.contains(s.newer())).toList();
    Filter filter = new Filter(choices, evidence);
    VarianceMethod method = CompareOptions.variance(choices);
    Exclusions excluded = new Exclusions();
    Citations citations = new Citations(evidence);
    List<GenerationRow> rows = new ArrayList<>();
    for (String discipline : ContrastQuestion.disciplines(context, choices)) {
      Optional<Network> network = context.networks().of(evidence, discipline, filter, method);
      if (network.isEmpty()) {
        excluded.add("disciplines without comparable values");
        continue;
      }
      network.get().excluded().list().forEach(left -> excluded.add(left.reason(), left.count()));
      Optional<Network> makers =
          choices.has("source")
              ? Optional.empty()
              : context.networks().of(evidence, discipline, filter.onlyMakers(), method);
      for (ModelStep step : asked) {
        Optional<Difference> difference = Difference.of(network.get(), step.newer(), step.older());
        if (difference.isEmpty()) {
          excluded.add("steps that no tests connect in a discipline");
          continue;
        }
        rows.add(row(evidence, step, discipline, difference.get(), makers, network.get()));
        network.get().entries().stream()
            .filter(
                e ->
                    evidence.entries().model()[e] == step.older()
                        || evidence.entries().model()[e] == step.newer())
            .forEach(citations::citeEntry);
      }
    }
    String names = String.join(", ", choices.all("line"));
    return Answer.to(
            new Inquiry(
                kind(),
                "What did new generations of " + names + " gain" + filter.words() + "?",
                choices.given()))
        .summary(StepWords.summary(names, !asked.isEmpty(), rows))
        .columns(columns())
        .rows(rows)
        .excluded(excluded.list())
        .caveats(caveats(choices, rows))
        .sources(citations.list())
        .build();
  }

  private static GenerationRow row(
      Evidence evidence,
      ModelStep step,
      String discipline,
      Difference difference,
      Optional<Network> makers,
      Network network) {
    StepsOfArchive steps = network.steps(evidence);
    List<StrongestRemoval> hangsOn =
        network.arms().size() > MOST_ARMS
            ? List.of()
            : network.hangsOn(evidence).difference(step.newer(), step.older(), false);
    Double percentile = steps.percentile(step);
    Integer years = step.years(evidence.models());
    ComparisonScale measure = new ComparisonScale(evidence.catalogue().get(discipline));
    return new GenerationRow(
        Names.lineName(evidence.models().get(step.newer())),
        evidence.models().get(step.older()).name(),
        evidence.models().get(step.newer()).name(),
        discipline,
        difference,
        years,
        years == null || years <= 0 ? null : measure.shown(onScale(difference) / years),
        measure.shown(steps.pace().map(StepPace::pace).orElse(null)),
        makers
            .flatMap(net -> Difference.of(net, step.newer(), step.older()))
            .map(Difference::difference)
            .orElse(null),
        steps.count(),
        percentile,
        hangsOn,
        network.consistency().words(network.measure()),
        StepWords.verdict(difference, percentile, hangsOn));
  }

  private static double onScale(Difference difference) {
    return difference.logDifference() == null
        ? difference.difference()
        : difference.logDifference();
  }

  /** Says where how steps differ is known from few of them only. */
  private static Optional<String> few(List<GenerationRow> rows) {
    List<String> disciplines =
        rows.stream()
            .filter(row -> row.percentile() != null && row.steps() < StepDistribution.FEW)
            .map(row -> row.discipline() + " (" + row.steps() + ")")
            .distinct()
            .toList();
    return disciplines.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "The archive has few steps in "
                + String.join(", ", disciplines)
                + ": how usual a step of that size is, is hardly more than a guess there.");
  }

  private static List<String> caveats(Choices choices, List<GenerationRow> rows) {
    List<String> caveats = new ArrayList<>();
    List<String> lines = rows.stream().map(GenerationRow::consistency).distinct().toList();
    if (lines.size() == 1) {
      caveats.add(lines.get(0));
    }
    caveats.add(CompareOptions.PER_CENT);
    few(rows).ifPresent(caveats::add);
    if (!choices.has("source")) {
      caveats.add("Reports supplied by makers are left out of the steps and shown apart.");
    }
    caveats.add(CommonOptions.RESULTS_HOLD);
    return caveats;
  }

  private static Lead between(String question, GenerationRow row) {
    return Lead.to(question)
        .with("model", row.newer(), row.older())
        .with("discipline", row.discipline());
  }

  private static Lead contrast(GenerationRow row, Inquiry asked) {
    return between("contrast", row).under(Filter.given(asked));
  }

  @Override
  public List<Column<GenerationRow>> columns() {
    return List.of(
        Column.<GenerationRow>of("line", "Line", Format.LINE, GenerationRow::line).asDetail(),
        Column.of("older", "From", Format.MODEL, GenerationRow::older).means("The older model."),
        Column.of("newer", "To", Format.MODEL, GenerationRow::newer)
            .means("The model that follows it."),
        Column.of("discipline", "Discipline", Format.DISCIPLINE, GenerationRow::discipline)
            .leadingTo((row, asked) -> Lead.again(asked).with("discipline", row.discipline())),
        Column.<GenerationRow>number("step", "Step", Format.DELTA, 1, r -> r.step().difference())
            .inUnitOf("unit")
            .means("Successor less predecessor, plus is better.")
            .leadingTo(GenerationsQuestion::contrast),
        Column.<GenerationRow>of("unit", "in", Format.UNIT, r -> r.step().unit())
            .means("Unit of the step."),
        Column.<GenerationRow>number("low", "from", Format.DELTA, 1, r -> r.step().low())
            .inUnitOf("unit")
            .means("Lower end of its 95 % interval for another car, size and day.")
            .leadingTo(GenerationsQuestion::contrast),
        Column.<GenerationRow>number("high", "to", Format.DELTA, 1, r -> r.step().high())
            .inUnitOf("unit")
            .means("Upper end of that interval.")
            .leadingTo(GenerationsQuestion::contrast),
        Column.<GenerationRow>number(
                "runsLow", "This day from", Format.DELTA, 1, r -> r.step().runsLow())
            .inUnitOf("unit")
            .means(
                "Lower end of the 95 % interval for this day's sets and car, by their runs alone.")
            .asDetail(),
        Column.<GenerationRow>number("runsHigh", "to", Format.DELTA, 1, r -> r.step().runsHigh())
            .inUnitOf("unit")
            .means("Upper end of that interval.")
            .asDetail(),
        Column.<GenerationRow>number(
                "predictionLow", "New test from", Format.DELTA, 1, r -> r.step().predictionLow())
            .inUnitOf("unit")
            .means("Lower end of the 95 % interval for the difference in a new test.")
            .asDetail(),
        Column.<GenerationRow>number(
                "predictionHigh", "to", Format.DELTA, 1, r -> r.step().predictionHigh())
            .inUnitOf("unit")
            .means("Upper end of that interval.")
            .asDetail(),
        Column.<GenerationRow>of(
                "directTests", "With both", Format.COUNT, r -> r.step().directTests())
            .means("Tests that held both.")
            .leadingTo((row, asked) -> between("tests", row).under(Filter.given(asked))),
        Column.<GenerationRow>number(
                "directStep", "Direct", Format.DELTA, 1, r -> r.step().direct())
            .inUnitOf("unit")
            .means("The step by tests that held both.")
            .asDetail(),
        Column.<GenerationRow>number(
                "indirectStep", "Indirect", Format.DELTA, 1, r -> r.step().indirect())
            .inUnitOf("unit")
            .means("The step by tests that held one of them.")
            .asDetail(),
        Column.<GenerationRow>number(
                "inconsistencyP",
                "P(inconsistent)",
                Format.CHANCE,
                3,
                r -> r.step().inconsistencyP())
            .means(
                "Probability of so large a disagreement of direct and indirect evidence by chance.")
            .leadingTo(GenerationsQuestion::contrast)
            .asDetail(),
        Column.number("makerStep", "By maker", Format.DELTA, 1, GenerationRow::makerStep)
            .inUnitOf("unit")
            .means("The step by maker-supplied reports alone.")
            .leadingTo(
                (row, asked) ->
                    between("contrast", row).with("source", "maker").under(Filter.given(asked))),
        Column.<GenerationRow>of("years", "Years", Format.COUNT, GenerationRow::years)
            .in("a")
            .means("Years between the two launches.")
            .asDetail(),
        Column.number("pace", "A year", Format.DELTA, 1, GenerationRow::pace)
            .inUnitOf("unit")
            .means("The step for each of those years."),
        Column.number("usualPace", "usual", Format.DELTA, 1, GenerationRow::usualPace)
            .inUnitOf("unit")
            .means("The usual gain a year among the archive's steps in this discipline."),
        Column.<GenerationRow>of("steps", "Steps", Format.COUNT, GenerationRow::steps)
            .means("Steps of the archive in this discipline that the percentile is among.")
            .asDetail(),
        Column.of("percentile", "Percentile", Format.SHARE, GenerationRow::percentile)
            .better(Direction.HIGH)
            .means(
                "Share of the archive's steps that this one is larger than, from 0 to 1, all drawn towards their mean by what is known of each."),
        Column.<GenerationRow>of(
                "consistency", "Consistency", Format.TEXT, GenerationRow::consistency)
            .means("Whether the tests of the discipline tell the same, in words.")
            .asDetail(),
        Column.rows("hangsOn", "Hangs on", HangsOnColumns.COLUMNS, GenerationRow::hangsOn)
            .means("The test and the source without which the step would move most."),
        Column.of("verdict", "In words", Format.TEXT, GenerationRow::verdict)
            .means("The step in words."),
        Column.<GenerationRow>number(
                "logStep", "Log", Format.NUMBER, 4, r -> r.step().logDifference())
            .means("Natural log behind a step in per cent.")
            .asDetail(),
        Column.<GenerationRow>number("logSe", "Log SE", Format.NUMBER, 4, r -> r.step().logSe())
            .means("Standard error of that log.")
            .asDetail());
  }
}
