package org.griplore.query.compare;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import org.griplore.query.answer.Answer;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Format;
import org.griplore.query.answer.Inquiry;
import org.griplore.query.answer.Lead;
import org.griplore.query.answer.Wording;
import org.griplore.query.discipline.Difference;
import org.griplore.query.discipline.PlacesStanding;
import org.griplore.query.evidence.Citations;
import org.griplore.query.evidence.Evidence;
import org.griplore.query.evidence.Filter;
import org.griplore.query.network.ModelStanding;
import org.griplore.query.option.Choices;
import org.griplore.query.question.CommonOptions;
import org.griplore.query.question.QueryContext;
import org.griplore.query.statistics.RankCorrelation;
import org.griplore.query.statistics.Tails;
import org.griplore.store.vocabulary.Direction;

/** The standing by places alone, beside that by values where there is one. */
public final class StandingsByPlaces {
  private final QueryContext context;
  private final Choices choices;
  private final Evidence evidence;
  private final String discipline;
  private final Filter filter;

  StandingsByPlaces(QueryContext context, Choices choices) {
    this.context = context;
    this.choices = choices;
    this.evidence = context.evidence();
    this.discipline = CommonOptions.discipline(choices, context.catalogue());
    this.filter = new Filter(choices, evidence);
  }

  Answer<StandingRow> answer() {
    String sentence = "How do models stand by places in " + discipline + filter.words() + "?";
    Inquiry inquiry = new Inquiry("standings", sentence, choices.given());
    PlacesStanding standing;
    try {
      standing = context.networks().byPlaces(evidence, discipline, filter);
    } catch (IllegalArgumentException unidentified) {
      return Answer.to(inquiry)
          .summary(
              "The places in " + discipline + " set no scale: " + unidentified.getMessage() + ".")
          .columns(columns(discipline))
          .build();
    }
    Map<Integer, Integer> byValues = ranksByValues();
    List<StandingRow> rows = new ArrayList<>();
    int rank = 0;
    int component = -1;
    for (PlacesStanding.Row row : standing.rows()) {
      rank = row.component() == component ? rank + 1 : 1;
      component = row.component();
      rows.add(row(row, rank, byValues.get(row.model())));
    }
    Optional<Double> agreement = agreement(standing);
    Citations citations = new Citations(evidence);
    standing.entries().forEach(citations::citeEntry);
    return Answer.to(inquiry)
        .summary(summary(rows, standing, agreement))
        .columns(columns(discipline))
        .rows(rows)
        .excluded(standing.excluded().list())
        .caveats(caveats(standing, citations))
        .sources(citations.list())
        .whole(StandingsQuestion.AGREEMENT, agreement.orElse(null))
        .whole(StandingsQuestion.TESTS_AGREEMENT, standing.agreement())
        .build();
  }

  private StandingRow row(PlacesStanding.Row row, int rank, Integer rankByValues) {
    double reach = Tails.normal(Difference.LEVEL) * row.se();
    return new StandingRow(
        evidence.models().get(row.model()).name(),
        row.effect(),
        row.se(),
        row.effect() - reach,
        row.effect() + reach,
        null,
        null,
        row.rankLow(),
        row.rankHigh(),
        row.score(),
        row.tests(),
        row.component() + 1,
        StandingRow.LOG_WORTH,
        null,
        null,
        null,
        new StandingRow.ByPlaces(1 / (1 + Math.exp(-row.effect())), rank, rankByValues));
  }

  private List<ModelStanding> measured() {
    return discipline.equals("overall")
        ? List.of()
        : context
            .networks()
            .of(evidence, discipline, filter, CompareOptions.variance(choices))
            .map(network -> network.standings())
            .orElse(List.of());
  }

  private Map<Integer, Integer> ranksByValues() {
    Map<Integer, Integer> ranks = new HashMap<>();
    int rank = 0;
    int component = -1;
    for (ModelStanding row : measured()) {
      rank = row.component() == component ? rank + 1 : 1;
      component = row.component();
      ranks.put(row.model(), rank);
    }
    return ranks;
  }

  /**
   * Kendall's tau-b of the two standings over the models of the largest component that both have.
   */
  private Optional<Double> agreement(PlacesStanding standing) {
    Map<Integer, ModelStanding> values = new HashMap<>();
    measured().forEach(row -> values.put(row.model(), row));
    Map<List<Integer>, List<PlacesStanding.Row>> together = new HashMap<>();
    for (PlacesStanding.Row row : standing.rows()) {
      if (values.containsKey(row.model())) {
        together
            .computeIfAbsent(
                List.of(row.component(), values.get(row.model()).component()),
                components -> new ArrayList<>())
            .add(row);
      }
    }
    return together.values().stream()
        .max((a, b) -> Integer.compare(a.size(), b.size()))
        .filter(rows -> rows.size() > 2)
        .flatMap(
            rows ->
                RankCorrelation.kendall(
                    rows.stream().mapToDouble(PlacesStanding.Row::effect).toArray(),
                    rows.stream()
                        .mapToDouble(row -> values.get(row.model()).effect().value())
                        .toArray()));
  }

  private String summary(
      List<StandingRow> rows, PlacesStanding standing, Optional<Double> agreement) {
    if (rows.isEmpty()) {
      return "No test places two models in " + discipline + ".";
    }
    String alone =
        standing.placesAlone() == 0 || discipline.equals("overall")
            ? ""
            : " (" + standing.placesAlone() + " give places alone)";
    StandingRow first = rows.get(0);
    long component = rows.stream().filter(row -> row.component() == first.component()).count();
    return "%s stands first of %d models by places (itself in %s, %s) in %s, in %d tests%s.%s"
        .formatted(
            first.model(),
            rows.size(),
            Wording.counted(first.tests(), "test"),
            first.rankHigh() == 1
                ? "surely first"
                : "rank %d to %d of %d in a 95 %% interval"
                    .formatted(first.rankLow(), first.rankHigh(), component),
            discipline,
            standing.tests(),
            alone,
            agreement
                .map(
                    tau ->
                        " Rank agreement with the standing by values: "
                            + Wording.signed(tau, 2)
                            + " (Kendall's tau).")
                .orElse(""));
  }

  private List<String> caveats(PlacesStanding standing, Citations citations) {
    List<String> caveats = new ArrayList<>();
    caveats.add(
        "A place says who was ahead and not by how much: log worths are no per cent, and a model is"
            + " only as strong as the fields it met.");
    if (standing.agreement() != null) {
      caveats.add(standing.agreement().words());
    }
    if (discipline.equals("overall")) {
      caveats.add("Each place by total holds its tester's weights and choice of disciplines.");
    }
    if (standing.separated() > 0) {
      caveats.add(
          "Some models never came behind others, so their distance has no estimate; it was bounded"
              + " by setting each against an average model, half a win and half a loss.");
    }
    CommonOptions.makerCaveat(citations).ifPresent(caveats::add);
    caveats.add(CommonOptions.RESULTS_HOLD);
    return caveats;
  }

  static List<Column<StandingRow>> columns(String discipline) {
    BiFunction<StandingRow, Inquiry, Lead> model = StandingRow.leadingTo("model", discipline);
    BiFunction<StandingRow, Inquiry, Lead> tests = StandingRow.leadingTo("tests", discipline);
    return List.of(
        Column.<StandingRow>of("rank", "Rank", Format.COUNT, row -> row.places().rank())
            .better(Direction.LOW)
            .means("Rank within its group."),
        Column.of("model", "Model", Format.MODEL, StandingRow::model),
        Column.number("effect", "Log worth", Format.DELTA, 2, StandingRow::effect)
            .in(StandingRow.LOG_WORTH)
            .means("Log of its worth less the mean of its group, plus is better.")
            .leadingTo(model),
        Column.number("se", "SE", Format.NUMBER, 2, StandingRow::se)
            .in(StandingRow.LOG_WORTH)
            .better(Direction.LOW)
            .means("Standard error of the log worth.")
            .leadingTo(model),
        Column.number("low", "from", Format.DELTA, 2, StandingRow::low)
            .in(StandingRow.LOG_WORTH)
            .means("Lower end of its 95 % interval.")
            .leadingTo(model),
        Column.number("high", "to", Format.DELTA, 2, StandingRow::high)
            .in(StandingRow.LOG_WORTH)
            .means("Upper end of its 95 % interval.")
            .leadingTo(model),
        Column.of("rankLow", "Rank from", Format.COUNT, StandingRow::rankLow)
            .better(Direction.LOW)
            .means("The best rank it may have, in a 95 % interval that holds for the whole list.")
            .leadingTo(model),
        Column.of("rankHigh", "to", Format.COUNT, StandingRow::rankHigh)
            .better(Direction.LOW)
            .means("The worst rank it may have.")
            .leadingTo(model),
        Column.number("score", "P-score", Format.NUMBER, 2, StandingRow::score)
            .better(Direction.HIGH)
            .means(
                "P-score: mean certainty of being better than another model of the group, from 0 to 1.")
            .leadingTo(model),
        Column.<StandingRow>number(
                "ahead", "Ahead of average", Format.CHANCE, 3, row -> row.places().ahead())
            .better(Direction.HIGH)
            .means("Chance to be placed before an average model of its group, from 0 to 1.")
            .asDetail(),
        Column.of("tests", "Tests", Format.COUNT, StandingRow::tests)
            .means("Tests it is in.")
            .leadingTo(tests),
        Column.of("component", "Group", Format.COUNT, StandingRow::component)
            .means("Models of different groups are never compared: no test connects them."),
        Column.<StandingRow>of(
                "rankByValues", "By values", Format.COUNT, row -> row.places().rankByValues())
            .better(Direction.LOW)
            .means("Its rank in the standing by values, within its group there."));
  }
}
