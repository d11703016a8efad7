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
        .columns(columns(top, ties))
        .rows(rows)
        .excluded(excluded.list())
        .caveats(caveats(citations, top, minField))
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

  private static List<String> caveats(Citations citations, int top, int minField) {
    List<String> caveats = new ArrayList<>();
    if (minField <= top) {
      caveats.add(
          "Fields of %d or fewer put every model among the first %d; they are counted here."
              .formatted(top, top));
    }
    CommonOptions.makerCaveat(citations).ifPresent(caveats::add);
    caveats.add(CommonOptions.RESULTS_HOLD);
    return caveats;
  }

  private static List<Column<PlacingRow>> columns(int top, TopShare ties) {
    List<Column<Placing>> inner =
        List.of(
            Column.of("test", "Test", Format.TEST, Placing::test),
            Column.of("date", "Date", Format.DATE, Placing::date),
            Column.of("place", "Place", Format.PLACE, Placing::place),
            Column.of("field", "Of", Format.COUNT, Placing::field),
            Column.of("tied", "Tied", Format.FLAG, Placing::tied),
            Column.of("basis", "Basis", Format.TEXT, Placing::basis),
            Column.of("source", "Source", Format.COUNT, Placing::source),
            Column.of("result", "Result", Format.RESULT, Placing::result));
    return List.of(
        Column.of("model", "Model", Format.MODEL, PlacingRow::model),
        Column.of("tests", "Tests", Format.COUNT, PlacingRow::tests),
        ties == TopShare.WHOLE
            ? Column.of("within", "First " + top, Format.COUNT, PlacingRow::within)
            : Column.number("within", "First " + top, Format.NUMBER, 1, PlacingRow::within),
        Column.of("share", "Share", Format.SHARE, PlacingRow::share),
        Column.of("shareLow", "from", Format.SHARE, PlacingRow::shareLow),
        Column.of("shareHigh", "to", Format.SHARE, PlacingRow::shareHigh),
        Column.number(
            "expectedByChance", "By chance", Format.NUMBER, 1, PlacingRow::expectedByChance),
        Column.number(
            "chanceOfAtLeast", "P(at least)", Format.CHANCE, 3, PlacingRow::chanceOfAtLeast),
        Column.of("bestPlace", "Best", Format.PLACE, PlacingRow::bestPlace),
        Column.number("medianPlace", "Median", Format.PLACE, 1, PlacingRow::medianPlace),
        Column.of("firstYear", "First", Format.YEAR, PlacingRow::firstYear),
        Column.of("lastYear", "Last", Format.YEAR, PlacingRow::lastYear),
        Column.rows("places", "Places", inner, PlacingRow::places));
  }
}
