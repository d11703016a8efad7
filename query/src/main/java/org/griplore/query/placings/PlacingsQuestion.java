package org.griplore.query.placings;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.griplore.query.answer.Answer;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Format;
import org.griplore.query.answer.Inquiry;
import org.griplore.query.answer.Lead;
import org.griplore.query.evidence.Citations;
import org.griplore.query.evidence.Evidence;
import org.griplore.query.evidence.Exclusions;
import org.griplore.query.evidence.Filter;
import org.griplore.query.option.Choices;
import org.griplore.query.option.Option;
import org.griplore.query.question.CommonOptions;
import org.griplore.query.question.QueryContext;
import org.griplore.query.question.Question;
import org.griplore.query.ranking.TopShare;
import org.griplore.store.vocabulary.Direction;

/**
 * How often models were among the first in their tests, and how often chance would put them there.
 */
public final class PlacingsQuestion implements Question<PlacingRow> {
  private static final Option TIES =
      Option.once(
              "ties",
              "HOW",
              "whether entries that share the last counted places count whole or share the credit",
              "whole")
          .oneOf(List.of("whole", "shared"));

  @Override
  public String kind() {
    return "placings";
  }

  @Override
  public String purpose() {
    return "How models ranked across past tests, against chance";
  }

  @Override
  public String example() {
    return "placings \"Velmora Aurelis 4\" --discipline wet-braking --from 2018";
  }

  @Override
  public List<Option> options() {
    List<Option> options = new ArrayList<>();
    options.add(CommonOptions.MODELS);
    options.add(CommonOptions.TOP);
    options.add(CommonOptions.discipline("overall"));
    options.add(CommonOptions.MIN_FIELD);
    options.add(TIES);
    options.addAll(Filter.OPTIONS);
    return options;
  }

  @Override
  public List<Column<PlacingRow>> columns() {
    return columns("K", TopShare.WHOLE);
  }

  @Override
  public Answer<PlacingRow> answer(QueryContext context, Choices choices) {
    Evidence evidence = context.evidence();
    int top = choices.integer("top", 1, 1000).orElseThrow();
    int minField = choices.integer("min-field", 1, 1000).orElse(top + 1);
    String discipline = CommonOptions.discipline(choices, context.catalogue());
    TopShare ties = choices.text("ties").equals("shared") ? TopShare.SHARED : TopShare.WHOLE;
    Filter filter = new Filter(choices, evidence);
    List<Integer> models =
        choices.has("model")
            ? context.names().models("model", choices.all("model"))
            : IntStream.range(0, evidence.models().size()).boxed().toList();
    Exclusions excluded = new Exclusions();
    Citations citations = new Citations(evidence);
    int position = evidence.discipline(discipline);
    List<PlacingRow> rows = new ArrayList<>();
    if (position >= 0) {
      PlacingCounter counter =
          new PlacingCounter(evidence, position, filter, top, minField, ties, excluded, citations);
      for (int model : models) {
        counter.count(model).ifPresent(rows::add);
      }
    }
    if (!choices.has("model")) {
      rows.sort(
          Comparator.comparingDouble(PlacingRow::shareLow)
              .reversed()
              .thenComparing(PlacingRow::model));
    }
    List<String> names = models.stream().map(i -> evidence.models().get(i).name()).toList();
    return Answer.to(
            new Inquiry(kind(), sentence(choices, names, top, discipline, filter), choices.given()))
        .summary(summary(rows, names, choices, top, ties, discipline))
        .columns(columns(String.valueOf(top), ties))
        .rows(rows)
        .excluded(excluded.list())
        .caveats(caveats(citations, top, minField, rows))
        .sources(citations.list())
        .build();
  }

  private static String sentence(
      Choices choices, List<String> names, int top, String discipline, Filter filter) {
    String who = choices.has("model") ? String.join(", ", names) : "each model";
    return "How often was %s among the first %d in %s%s?"
        .formatted(who, top, discipline, filter.words());
  }

  private static String summary(
      List<PlacingRow> rows,
      List<String> names,
      Choices choices,
      int top,
      TopShare ties,
      String discipline) {
    if (rows.isEmpty()) {
      return choices.has("model")
          ? "No test that counts ranked %s in %s.".formatted(String.join(", ", names), discipline)
          : "No test that counts ranked any model in %s.".formatted(discipline);
    }
    if (choices.has("model")) {
      return rows.stream().map(row -> sentence(row, top, ties)).collect(joining(" "));
    }
    PlacingRow first = rows.get(0);
    return String.format(
        Locale.ROOT,
        "%d models have counted tests; %s has the highest share of first %d places allowing for"
            + " chance: %s of %d, where chance alone would give %.1f.",
        rows.size(),
        first.model(),
        top,
        counted(first),
        first.tests(),
        first.expectedByChance());
  }

  private static String counted(PlacingRow row) {
    return row.within() instanceof Integer whole
        ? String.valueOf(whole)
        : String.format(Locale.ROOT, "%.1f", row.within().doubleValue());
  }

  private static String sentence(PlacingRow row, int top, TopShare ties) {
    return String.format(
        Locale.ROOT,
        "%s was among the first %d in %s of %d tests%s (%.0f %%, 95 %% interval %.0f to %.0f %%);"
            + " chance alone would give %.1f, and at least %s with probability %s.",
        row.model(),
        top,
        counted(row),
        row.tests(),
        ties == TopShare.SHARED ? ", shared places counting in part" : "",
        100 * row.share(),
        100 * row.shareLow(),
        100 * row.shareHigh(),
        row.expectedByChance(),
        counted(row),
        probability(row.chanceOfAtLeast()));
  }

  private static String probability(double chance) {
    return chance < 0.001 ? "below 0.001" : String.format(Locale.ROOT, "%.3f", chance);
  }

  private static List<String> caveats(
      Citations citations, int top, int minField, List<PlacingRow> rows) {
    List<String> caveats = new ArrayList<>();
    if (minField <= top) {
      caveats.add(
          "Fields of %d or fewer put every model among the first %d; they are counted here."
              .formatted(top, top));
    }
    List<Placing> cut =
        rows.stream()
            .flatMap(row -> row.places().stream())
            .filter(placing -> placing.named() < placing.field())
            .toList();
    if (!cut.isEmpty()) {
      Placing first = cut.get(0);
      caveats.add(
          "%s named by reports that name fewer than they ranked (%s: %d of %d): such fields are often"
                  .formatted(
                      cut.size() == 1 ? "1 place is" : cut.size() + " places are",
                      first.test(),
                      first.named(),
                      first.field())
              + " cut to the best, so that a model is missing where it did badly.");
    }
    CommonOptions.makerCaveat(citations).ifPresent(caveats::add);
    caveats.add(CommonOptions.RESULTS_HOLD);
    return caveats;
  }

  private static Lead alone(PlacingRow row, Inquiry asked) {
    return asked.options().getOrDefault("model", List.of()).size() == 1
        ? null
        : Lead.again(asked).with("model", row.model());
  }

  private static List<Column<PlacingRow>> columns(String top, TopShare ties) {
    List<Column<Placing>> inner =
        List.of(
            Column.of("test", "Test", Format.TEST, Placing::test),
            Column.of("date", "Date", Format.DATE, Placing::date),
            Column.of("place", "Place", Format.PLACE, Placing::place)
                .means("Place in the test.")
                .leadingTo((row, asked) -> Lead.result(row.result())),
            Column.of("field", "Of", Format.COUNT, Placing::field).means("How many were ranked."),
            Column.of("named", "Named", Format.COUNT, Placing::named)
                .means("How many of them the reports name with a result."),
            Column.of("tied", "Tied", Format.FLAG, Placing::tied)
                .means("Whether others share the place."),
            Column.of("basis", "Basis", Format.TEXT, Placing::basis)
                .means("Whether the place is published, or computed from totals or values."),
            Column.of("source", "Source", Format.COUNT, Placing::source)
                .means("Number of the report among the sources."),
            Column.of("result", "Result", Format.RESULT, Placing::result));
    return List.of(
        Column.of("model", "Model", Format.MODEL, PlacingRow::model),
        Column.of("tests", "Tests", Format.COUNT, PlacingRow::tests)
            .means("Tests counted.")
            .leadingTo(PlacingsQuestion::alone),
        ties == TopShare.WHOLE
            ? Column.of("within", "First " + top, Format.COUNT, PlacingRow::within)
                .better(Direction.HIGH)
                .means("Tests in which its place was within the first.")
                .leadingTo(PlacingsQuestion::alone)
            : Column.number("within", "First " + top, Format.NUMBER, 1, PlacingRow::within)
                .better(Direction.HIGH)
                .means("Tests in which its place was within the first, shared places in part.")
                .leadingTo(PlacingsQuestion::alone),
        Column.of("share", "Share", Format.SHARE, PlacingRow::share)
            .better(Direction.HIGH)
            .means("Share of the tests counted that were within the first, from 0 to 1.")
            .leadingTo(PlacingsQuestion::alone),
        Column.of("shareLow", "from", Format.SHARE, PlacingRow::shareLow)
            .better(Direction.HIGH)
            .means("Lower end of its 95 % interval.")
            .leadingTo(PlacingsQuestion::alone),
        Column.of("shareHigh", "to", Format.SHARE, PlacingRow::shareHigh)
            .better(Direction.HIGH)
            .means("Upper end of its 95 % interval.")
            .leadingTo(PlacingsQuestion::alone),
        Column.number(
                "expectedByChance", "By chance", Format.NUMBER, 1, PlacingRow::expectedByChance)
            .means("Tests within the first if places were drawn.")
            .leadingTo(PlacingsQuestion::alone),
        Column.number(
                "chanceOfAtLeast", "P(at least)", Format.CHANCE, 3, PlacingRow::chanceOfAtLeast)
            .better(Direction.LOW)
            .means("Chance of at least so many then, from 0 to 1.")
            .leadingTo(PlacingsQuestion::alone),
        Column.of("bestPlace", "Best", Format.PLACE, PlacingRow::bestPlace)
            .better(Direction.LOW)
            .means("Best place.")
            .leadingTo(PlacingsQuestion::alone),
        Column.number("medianPlace", "Median", Format.PLACE, 1, PlacingRow::medianPlace)
            .better(Direction.LOW)
            .means("Median place.")
            .leadingTo(PlacingsQuestion::alone),
        Column.of("firstYear", "First", Format.YEAR, PlacingRow::firstYear)
            .means("Year of the first dated test."),
        Column.of("lastYear", "Last", Format.YEAR, PlacingRow::lastYear)
            .means("Year of the last dated test."),
        Column.<PlacingRow>of("makerTests", "Makers' tests", Format.COUNT, PlacingRow::makerTests)
            .means("Tests told by a maker's report alone, which are not counted.")
            .asDetail(),
        Column.<PlacingRow>of(
                "makerWithin", "Makers' first " + top, Format.COUNT, PlacingRow::makerWithin)
            .means("Those of them in which its place was within the first.")
            .asDetail(),
        Column.rows("places", "Places", inner, PlacingRow::places)
            .means("Each place, oldest first."));
  }
}
