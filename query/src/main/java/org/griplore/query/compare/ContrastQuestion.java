package org.griplore.query.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.griplore.query.answer.Answer;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Format;
import org.griplore.query.answer.Inquiry;
import org.griplore.query.answer.Lead;
import org.griplore.query.answer.Missing;
import org.griplore.query.answer.Wording;
import org.griplore.query.discipline.Consistency;
import org.griplore.query.discipline.Difference;
import org.griplore.query.discipline.HangsOn;
import org.griplore.query.discipline.Network;
import org.griplore.query.discipline.StrongestRemoval;
import org.griplore.query.evidence.Citations;
import org.griplore.query.evidence.Evidence;
import org.griplore.query.evidence.Exclusions;
import org.griplore.query.evidence.Filter;
import org.griplore.query.network.VarianceMethod;
import org.griplore.query.option.Choices;
import org.griplore.query.option.Option;
import org.griplore.query.question.CommonOptions;
import org.griplore.query.question.QueryContext;
import org.griplore.query.question.Question;
import org.griplore.store.vocabulary.Direction;
import org.griplore.store.vocabulary.Discipline;

/** How two models compare, in one discipline or in all. */
public final class ContrastQuestion implements Question<ContrastQuestion.ContrastRow> {
  /**
   * One discipline.
   *
   * @param heterogeneity standard deviation of the heterogeneity of model and test on the
   *     discipline's scale (log ratio, dB, points); null when it was not estimated apart from the
   *     error
   * @param directShare share of the evidence from tests that held both, 0 to 1
   * @param consistency whether the tests of the network tell the same
   * @param inWords that in one line
   * @param hangsOn the test, source and model without which the difference would move most
   * @param headToHeads the tests that held both, oldest first
   */
  public record ContrastRow(
      String discipline,
      Difference difference,
      Double heterogeneity,
      Double directShare,
      Consistency consistency,
      String inWords,
      List<StrongestRemoval> hangsOn,
      List<HeadToHead> headToHeads) {}

  @Override
  public String kind() {
    return "contrast";
  }

  @Override
  public String purpose() {
    return "How two models compare, in tests that held both and by chains of tests";
  }

  @Override
  public String example() {
    return "contrast \"Velmora Aurelis 5\" \"Velmora Aurelis 4\" --discipline wet-braking";
  }

  @Override
  public List<Option> options() {
    List<Option> options = new ArrayList<>();
    options.add(Option.arguments("model", "MODEL", "two models; the first less the second", true));
    options.add(CommonOptions.discipline(null));
    options.addAll(Filter.OPTIONS);
    options.add(CompareOptions.VARIANCE);
    return options;
  }

  @Override
  public Answer<ContrastRow> answer(QueryContext context, Choices choices) {
    Evidence evidence = context.evidence();
    List<Integer> models =
        choices.all("model").stream().map(name -> context.names().model("model", name)).toList();
    if (models.size() != 2 || models.get(0).equals(models.get(1))) {
      throw Choices.refusal("model", String.join(", ", choices.all("model")), "two models");
    }
    Filter filter = new Filter(choices, evidence);
    VarianceMethod method = CompareOptions.variance(choices);
    Exclusions excluded = new Exclusions();
    Citations citations = new Citations(evidence);
    List<ContrastRow> rows = new ArrayList<>();
    List<String> bySize = new ArrayList<>();
    for (String discipline : disciplines(context, choices)) {
      Optional<Network> network = context.networks().of(evidence, discipline, filter, method);
      Optional<Difference> difference =
          network.flatMap(net -> Difference.of(net, models.get(0), models.get(1)));
      if (difference.isEmpty()) {
        excluded.add("disciplines in which nothing connects the two");
        continue;
      }
      Network net = network.orElseThrow();
      net.excluded().list().forEach(left -> excluded.add(left.reason(), left.count()));
      rows.add(
          new ContrastRow(
              discipline,
              difference.get(),
              net.tauSquared().isPresent()
                  ? (Double) Math.sqrt(net.tauSquared().getAsDouble())
                  : null,
              net.evidence(models.get(0), models.get(1))
                  .map(split -> Missing.orNull(split.directShare()))
                  .orElse(null),
              net.consistency(),
              net.consistency().words(net.measure()),
              net.hangsOn(evidence).difference(models.get(0), models.get(1), true),
              HeadToHead.of(evidence, net, models.get(0), models.get(1), citations)));
      if (choices.has("discipline")) {
        ModelBySizeWords.of(evidence, net.arms(), models.get(0), models.get(1))
            .ifPresent(bySize::add);
      }
      net.entries().stream()
          .filter(e -> models.contains(evidence.entries().model()[e]))
          .forEach(citations::citeEntry);
    }
    String first = evidence.models().get(models.get(0)).name();
    String second = evidence.models().get(models.get(1)).name();
    return Answer.to(
            new Inquiry(
                kind(),
                "How does " + first + " compare with " + second + filter.words() + "?",
                choices.given()))
        .summary(summary(first, second, rows))
        .columns(columns())
        .rows(rows)
        .excluded(excluded.list())
        .caveats(caveats(rows, bySize, citations))
        .sources(citations.list())
        .build();
  }

  static List<String> disciplines(QueryContext context, Choices choices) {
    if (choices.has("discipline")) {
      return List.of(CommonOptions.comparable(choices, context.catalogue()));
    }
    return context.catalogue().all().stream()
        .map(Discipline::key)
        .filter(key -> !key.equals("overall") && context.evidence().discipline(key) >= 0)
        .toList();
  }

  private static String summary(String first, String second, List<ContrastRow> rows) {
    if (rows.isEmpty()) {
      return "Nothing connects " + first + " and " + second + ".";
    }
    if (rows.size() == 1) {
      Difference d = rows.get(0).difference();
      return "%s against %s in %s: %s%s, %s with both.%s"
          .formatted(
              first,
              second,
              rows.get(0).discipline(),
              DifferenceWords.amount(d),
              DifferenceWords.intervals(d),
              Wording.counted(d.directTests(), "test"),
              HangsOn.telling(rows.get(0).hangsOn())
                  .map(removal -> " " + removal.words(d.unit()))
                  .orElse(""));
    }
    long better =
        rows.stream().filter(r -> r.difference().low() != null && r.difference().low() > 0).count();
    long worse =
        rows.stream()
            .filter(r -> r.difference().high() != null && r.difference().high() < 0)
            .count();
    return "%s against %s: better in %d, worse in %d, not to be told apart in %d of %d disciplines."
        .formatted(first, second, better, worse, rows.size() - better - worse, rows.size());
  }

  private static List<String> caveats(
      List<ContrastRow> rows, List<String> bySize, Citations citations) {
    List<String> caveats = new ArrayList<>();
    if (rows.size() == 1) {
      caveats.add(rows.get(0).inWords());
    }
    caveats.addAll(bySize);
    caveats.add(CompareOptions.PER_CENT);
    CommonOptions.makerCaveat(citations).ifPresent(caveats::add);
    caveats.add(CommonOptions.RESULTS_HOLD);
    return caveats;
  }

  /** The contrast in one discipline; nowhere where it is shown already. */
  private static Lead discipline(ContrastRow row, Inquiry asked) {
    return asked.options().containsKey("discipline")
        ? null
        : Lead.again(asked).with("discipline", row.discipline());
  }

  private static Lead tests(ContrastRow row, Inquiry asked) {
    List<String> models = asked.options().get("model");
    return Lead.to("tests")
        .with("model", models.get(0), models.get(1))
        .with("discipline", row.discipline())
        .under(Filter.given(asked));
  }

  @Override
  public List<Column<ContrastRow>> columns() {
    return List.of(
        Column.of("discipline", "Discipline", Format.DISCIPLINE, ContrastRow::discipline)
            .leadingTo(ContrastQuestion::discipline),
        Column.<ContrastRow>number(
                "difference", "Difference", Format.DELTA, 1, r -> r.difference().difference())
            .inUnitOf("unit")
            .means("The first model less the second, plus is better.")
            .leadingTo(ContrastQuestion::discipline),
        Column.<ContrastRow>of("unit", "in", Format.UNIT, r -> r.difference().unit())
            .means("Unit of the difference."),
        Column.<ContrastRow>number("se", "SE", Format.NUMBER, 1, r -> r.difference().se())
            .inUnitOf("unit")
            .better(Direction.LOW)
            .means("Standard error of the difference.")
            .leadingTo(ContrastQuestion::discipline),
        Column.<ContrastRow>number("low", "from", Format.DELTA, 1, r -> r.difference().low())
            .inUnitOf("unit")
            .means("Lower end of its 95 % interval for another car, size and day.")
            .leadingTo(ContrastQuestion::discipline),
        Column.<ContrastRow>number("high", "to", Format.DELTA, 1, r -> r.difference().high())
            .inUnitOf("unit")
            .means("Upper end of that interval.")
            .leadingTo(ContrastQuestion::discipline),
        Column.<ContrastRow>number(
                "runsLow", "This day from", Format.DELTA, 1, r -> r.difference().runsLow())
            .inUnitOf("unit")
            .means(
                "Lower end of the 95 % interval for this day's sets and car, by their runs alone.")
            .asDetail(),
        Column.<ContrastRow>number(
                "runsHigh", "to", Format.DELTA, 1, r -> r.difference().runsHigh())
            .inUnitOf("unit")
            .means("Upper end of that interval.")
            .asDetail(),
        Column.<ContrastRow>number(
                "predictionLow",
                "New test from",
                Format.DELTA,
                1,
                r -> r.difference().predictionLow())
            .inUnitOf("unit")
            .means("Lower end of the 95 % interval for the difference in a new test.")
            .asDetail(),
        Column.<ContrastRow>number(
                "predictionHigh", "to", Format.DELTA, 1, r -> r.difference().predictionHigh())
            .inUnitOf("unit")
            .means("Upper end of that interval.")
            .asDetail(),
        Column.<ContrastRow>of(
                "directTests", "With both", Format.COUNT, r -> r.difference().directTests())
            .means("Tests that held both.")
            .leadingTo(ContrastQuestion::tests),
        Column.<ContrastRow>number(
                "direct", "Direct", Format.DELTA, 1, r -> r.difference().direct())
            .inUnitOf("unit")
            .means("The difference by tests that held both.")
            .leadingTo(ContrastQuestion::discipline),
        Column.<ContrastRow>number(
                "indirect", "Indirect", Format.DELTA, 1, r -> r.difference().indirect())
            .inUnitOf("unit")
            .means("The difference by tests that held one of them.")
            .leadingTo(ContrastQuestion::discipline),
        Column.<ContrastRow>number(
                "inconsistencyP",
                "P(inconsistent)",
                Format.CHANCE,
                3,
                r -> r.difference().inconsistencyP())
            .means(
                "Probability of so large a disagreement of direct and indirect evidence by chance.")
            .leadingTo(ContrastQuestion::discipline),
        Column.<ContrastRow>number(
                "heterogeneity", "Heterogeneity SD", Format.NUMBER, 4, ContrastRow::heterogeneity)
            .better(Direction.LOW)
            .means(
                "How far a model's result differs from test to test, as a standard deviation on the discipline's scale.")
            .asDetail(),
        Column.<ContrastRow>number(
                "logDifference", "Log", Format.NUMBER, 4, r -> r.difference().logDifference())
            .means("Natural log behind a difference in per cent.")
            .asDetail(),
        Column.<ContrastRow>number("logSe", "Log SE", Format.NUMBER, 4, r -> r.difference().logSe())
            .means("Standard error of that log.")
            .asDetail(),
        Column.<ContrastRow>of(
                "directShare", "Direct share", Format.SHARE, ContrastRow::directShare)
            .means("Share of the evidence from tests that held both, from 0 to 1.")
            .asDetail(),
        Column.<ContrastRow>number("q", "Q", Format.NUMBER, 1, r -> r.consistency().q())
            .means("Scatter of the network's tests over what their runs let expect.")
            .asDetail(),
        Column.<ContrastRow>of("df", "Degrees of freedom", Format.COUNT, r -> r.consistency().df())
            .means(
                "Results beyond those that tests and models need: what tells how far tests differ.")
            .asDetail(),
        Column.<ContrastRow>number("qP", "P(Q)", Format.CHANCE, 3, r -> r.consistency().qP())
            .means("Chance of a larger Q if tests differed by their runs alone.")
            .asDetail(),
        Column.<ContrastRow>of(
                "iSquared", "I squared", Format.SHARE, r -> r.consistency().iSquared())
            .means("Share of the scatter that runs do not explain, from 0 to 1.")
            .asDetail(),
        Column.<ContrastRow>number(
                "withinP", "P(within)", Format.CHANCE, 3, r -> r.consistency().withinP())
            .means("Chance of more scatter among tests of the same tyres.")
            .asDetail(),
        Column.<ContrastRow>number(
                "betweenP", "P(between)", Format.CHANCE, 3, r -> r.consistency().betweenP())
            .means("Chance of more disagreement of fields of different tyres.")
            .asDetail(),
        Column.<ContrastRow>number(
                "residual", "Residual SD", Format.NUMBER, 4, r -> r.consistency().residual())
            .means(
                "Scatter of a result where no spread of runs is known, on the discipline's scale.")
            .asDetail(),
        Column.<ContrastRow>of("consistency", "Consistency", Format.TEXT, ContrastRow::inWords)
            .means("Whether the tests tell the same, in words.")
            .asDetail(),
        Column.rows("hangsOn", "Hangs on", HangsOnColumns.COLUMNS, ContrastRow::hangsOn)
            .means("The test, source and model without which the difference would move most."),
        Column.rows("headToHeads", "Tests with both", HeadToHead.COLUMNS, ContrastRow::headToHeads)
            .means("The tests that held both, oldest first."));
  }
}
