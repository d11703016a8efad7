package org.griplore.query.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiFunction;
import org.griplore.query.answer.Answer;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Format;
import org.griplore.query.answer.Inquiry;
import org.griplore.query.answer.Lead;
import org.griplore.query.answer.Missing;
import org.griplore.query.answer.WholeFigure;
import org.griplore.query.answer.Wording;
import org.griplore.query.discipline.ComparisonScale;
import org.griplore.query.discipline.ComponentRanks;
import org.griplore.query.discipline.Consistency;
import org.griplore.query.discipline.Difference;
import org.griplore.query.discipline.HangsOn;
import org.griplore.query.discipline.Network;
import org.griplore.query.discipline.PlacesStanding;
import org.griplore.query.discipline.StrongestRemoval;
import org.griplore.query.discipline.TestsAgreement;
import org.griplore.query.evidence.Citations;
import org.griplore.query.evidence.Evidence;
import org.griplore.query.evidence.Filter;
import org.griplore.query.network.ModelStanding;
import org.griplore.query.option.Choices;
import org.griplore.query.option.Option;
import org.griplore.query.question.CommonOptions;
import org.griplore.query.question.QueryContext;
import org.griplore.query.question.Question;
import org.griplore.query.statistics.Interval;
import org.griplore.store.vocabulary.Direction;

/** How all models stand in one discipline, by every test that connects them. */
public final class StandingsQuestion implements Question<StandingRow> {
  /** Kendall's tau-b of the standing by places with that by values. */
  public static final WholeFigure<Double> AGREEMENT =
      new WholeFigure<>(
          "agreementWithValues",
          "How well the order by places agrees with that by values (Kendall's tau-b).");

  /** How far the tests agree on places. */
  public static final WholeFigure<TestsAgreement> TESTS_AGREEMENT =
      new WholeFigure<>(
          "agreementOfTests",
          "How far tests agree on the order of models that all of them placed (Kendall's W).");

  /** Whether the tests tell the same. */
  public static final WholeFigure<Consistency> CONSISTENCY =
      new WholeFigure<>(
          "consistency",
          "Whether the tests tell the same: Q, I squared, within and between designs, spreads.");

  /** How surely the first is first. */
  public static final WholeFigure<Double> FIRST =
      new WholeFigure<>(
          "firstIsFirst", "Chance that the first model of the first group is truly its best.");

  /** Results that fit no other. */
  public static final WholeFigure<List<HangsOn.MisfitResult>> MISFITS =
      new WholeFigure<>(
          "misfits", "Results that lie farther from where all others put them than by chance.");

  /** With more results times models it is not asked what each standing hangs on. */
  private static final long MOST_WORK = 5_000_000;

  @Override
  public String kind() {
    return "standings";
  }

  @Override
  public String purpose() {
    return "How all models stand in one discipline, across tests that never shared a field";
  }

  @Override
  public String example() {
    return "standings --discipline wet-braking --season summer";
  }

  @Override
  public List<Option> options() {
    List<Option> options = new ArrayList<>();
    options.add(CommonOptions.discipline("wet-braking"));
    options.add(
        Option.once(
                "by",
                "FIGURES",
                "by measured values, or by places alone, which join tests that give nothing else",
                "values")
            .oneOf(List.of("values", "places")));
    options.addAll(Filter.OPTIONS);
    options.add(CompareOptions.VARIANCE);
    return options;
  }

  @Override
  public Answer<StandingRow> answer(QueryContext context, Choices choices) {
    Evidence evidence = context.evidence();
    if (choices.text("by").equals("places")) {
      return new StandingsByPlaces(context, choices).answer();
    }
    String discipline = CommonOptions.comparable(choices, context.catalogue());
    Filter filter = new Filter(choices, evidence);
    Optional<Network> network =
        context.networks().of(evidence, discipline, filter, CompareOptions.variance(choices));
    Inquiry inquiry =
        new Inquiry(
            kind(), "How do models stand in " + discipline + filter.words() + "?", choices.given());
    if (network.isEmpty()) {
      return Answer.to(inquiry)
          .summary("No test has two models with comparable values in " + discipline + ".")
          .columns(columns(discipline, ""))
          .build();
    }
    ComparisonScale measure = network.get().measure();
    List<StandingRow> rows =
        network.get().standings().stream().map(s -> row(evidence, network.get(), s)).toList();
    Citations citations = new Citations(evidence);
    network.get().entries().forEach(citations::citeEntry);
    return Answer.to(inquiry)
        .summary(summary(rows, network.get(), discipline))
        .columns(columns(discipline, measure.shownUnit()))
        .rows(rows)
        .excluded(network.get().excluded().list())
        .caveats(
            caveats(
                evidence,
                network.get(),
                PlacesStanding.placesAlone(evidence, discipline, filter),
                citations))
        .sources(citations.list())
        .whole(CONSISTENCY, network.get().consistency())
        .whole(FIRST, network.get().ranks().get(0).firstIsFirst())
        .whole(MISFITS, network.get().hangsOn(evidence).misfits())
        .build();
  }

  private static StandingRow row(Evidence evidence, Network network, ModelStanding standing) {
    ComparisonScale measure = network.measure();
    boolean small = (long) network.models() * network.arms().size() <= MOST_WORK;
    Optional<Interval> runs =
        small
            ? network.effectByRunsAlone(standing.model()).flatMap(r -> r.interval(Difference.LEVEL))
            : Optional.empty();
    ComponentRanks ranks = network.ranks().get(standing.component());
    double effect = standing.effect().value();
    Double se = Missing.orNull(standing.effect().se());
    Optional<Interval> interval = standing.effect().interval(Difference.LEVEL);
    return new StandingRow(
        evidence.models().get(standing.model()).name(),
        measure.shown(effect),
        measure.shownSe(effect, se),
        measure.shownLow(interval),
        measure.shownHigh(interval),
        measure.shownLow(runs),
        measure.shownHigh(runs),
        ranks.low(standing.model()),
        ranks.high(standing.model()),
        Missing.orNull(standing.score()),
        standing.tests(),
        standing.component() + 1,
        measure.shownUnit(),
        measure.log(effect),
        measure.isRatio() ? se : null,
        small ? network.hangsOn(evidence).effect(standing.model()).orElse(null) : null,
        null);
  }

  private static String summary(List<StandingRow> rows, Network network, String discipline) {
    StandingRow first = rows.get(0);
    String components =
        network.components() > 1
            ? " The tests fall into " + network.components() + " groups that no test connects."
            : "";
    return "%s leads %d models in %s, %s against their mean%s, by %d tests.%s%s%s"
        .formatted(
            first.model(),
            rows.size(),
            discipline,
            Wording.difference(first.effect(), first.unit()),
            interval(first),
            network.tests(),
            rank(first, network.ranks().get(0)),
            hangsOn(first, rows),
            components);
  }

  private static String interval(StandingRow row) {
    return row.low() == null
        ? " (no interval for " + DifferenceWords.ANOTHER + ": nothing tells how far tests differ)"
        : " (95 % interval for "
            + DifferenceWords.ANOTHER
            + ": "
            + Wording.signed(row.low(), 1)
            + " to "
            + Wording.signed(row.high(), 1)
            + ")";
  }

  private static String rank(StandingRow first, ComponentRanks ranks) {
    if (first.rankHigh() == null || ranks.size() < 2) {
      return "";
    }
    return first.rankHigh() == 1
        ? " It is first beyond doubt of 95 %."
        : String.format(
            Locale.ROOT,
            " Its rank is 1 to %d of %d (95 %%); it is truly first with a chance of %.0f %%.",
            first.rankHigh(),
            ranks.size(),
            100 * ranks.firstIsFirst());
  }

  private static String hangsOn(StandingRow first, List<StandingRow> rows) {
    StrongestRemoval test = first.hangsOn();
    if (test == null || test.without() == null || rows.size() < 2) {
      return "";
    }
    return test.sentenceChanges() || test.without() < rows.get(1).effect()
        ? " Without "
            + test.name()
            + " it would stand at "
            + Wording.difference(test.without(), first.unit())
            + "."
        : "";
  }

  private static List<String> caveats(
      Evidence evidence, Network network, int placesAlone, Citations citations) {
    List<String> caveats = new ArrayList<>();
    caveats.add(network.consistency().words(network.measure()));
    for (HangsOn.MisfitResult misfit : network.hangsOn(evidence).misfits()) {
      caveats.add(misfit.words());
    }
    if (placesAlone > 0) {
      caveats.add(
          (placesAlone == 1 ? "1 test gives" : placesAlone + " tests give")
              + " places without comparable values; `--by places` sets places on a scale of their"
              + " own.");
    }
    if (network.measure().isRatio()) {
      caveats.add(CompareOptions.PER_CENT);
    }
    CommonOptions.makerCaveat(citations).ifPresent(caveats::add);
    caveats.add(CommonOptions.RESULTS_HOLD);
    return caveats;
  }

  @Override
  public List<Column<StandingRow>> columns() {
    List<Column<StandingRow>> all = new ArrayList<>(columns(DISCIPLINE, null));
    StandingsByPlaces.columns(DISCIPLINE).stream()
        .filter(column -> all.stream().noneMatch(told -> told.key().equals(column.key())))
        .forEach(all::add);
    return List.copyOf(all);
  }

  @Override
  public List<WholeFigure<?>> wholes() {
    return List.of(AGREEMENT, TESTS_AGREEMENT, CONSISTENCY, FIRST, MISFITS);
  }

  private static List<Column<StandingRow>> columns(String discipline, String unit) {
    BiFunction<StandingRow, Inquiry, Lead> model = StandingRow.leadingTo("model", discipline);
    BiFunction<StandingRow, Inquiry, Lead> tests = StandingRow.leadingTo("tests", discipline);
    return List.of(
        Column.of("model", "Model", Format.MODEL, StandingRow::model),
        Column.number("effect", "Effect", Format.DELTA, 1, StandingRow::effect)
            .in(unit)
            .means("Difference to the mean of its group, plus is better.")
            .leadingTo(model),
        Column.number("se", "SE", Format.NUMBER, 1, StandingRow::se)
            .in(unit)
            .better(Direction.LOW)
            .means("Standard error of the difference.")
            .leadingTo(model),
        Column.number("low", "from", Format.DELTA, 1, StandingRow::low)
            .in(unit)
            .means("Lower end of its 95 % interval for another car, size and day.")
            .leadingTo(model),
        Column.number("high", "to", Format.DELTA, 1, StandingRow::high)
            .in(unit)
            .means("Upper end of that interval.")
            .leadingTo(model),
        Column.of("rankLow", "Rank from", Format.COUNT, StandingRow::rankLow)
            .means(
                "The best rank in its group that the evidence allows, for all ranks at once (95 %)."),
        Column.of("rankHigh", "to", Format.COUNT, StandingRow::rankHigh)
            .means("The worst rank in its group that the evidence allows."),
        Column.<StandingRow>number(
                "runsLow", "This day from", Format.DELTA, 1, StandingRow::runsLow)
            .in(unit)
            .means(
                "Lower end of the 95 % interval for this day's sets and car, by their runs alone.")
            .asDetail(),
        Column.<StandingRow>number("runsHigh", "to", Format.DELTA, 1, StandingRow::runsHigh)
            .in(unit)
            .means("Upper end of that interval.")
            .asDetail(),
        Column.<StandingRow>of(
                "hangsOn",
                "Hangs on",
                Format.TEST,
                row -> row.hangsOn() == null ? null : row.hangsOn().name())
            .means("The test without which it would move most.")
            .asDetail(),
        Column.<StandingRow>number(
                "withoutIt",
                "Without it",
                Format.DELTA,
                1,
                row -> row.hangsOn() == null ? null : row.hangsOn().without())
            .in(unit)
            .means("The effect without that test.")
            .asDetail(),
        Column.number("score", "P-score", Format.NUMBER, 2, StandingRow::score)
            .better(Direction.HIGH)
            .means(
                "P-score: mean certainty of being better than another model of the group, from 0 to 1.")
            .leadingTo(model),
        Column.of("tests", "Tests", Format.COUNT, StandingRow::tests)
            .means("Tests it is in.")
            .leadingTo(tests),
        Column.of("component", "Group", Format.COUNT, StandingRow::component)
            .means("Models of different groups are never compared: no test connects them."),
        Column.<StandingRow>of("unit", "Unit", Format.UNIT, StandingRow::unit)
            .means("Unit of the difference.")
            .asDetail(),
        Column.<StandingRow>number("logEffect", "Log", Format.NUMBER, 4, StandingRow::logEffect)
            .means("Natural log behind a difference in per cent.")
            .asDetail(),
        Column.<StandingRow>number("logSe", "Log SE", Format.NUMBER, 4, StandingRow::logSe)
            .means("Standard error of that log.")
            .asDetail());
  }
}
