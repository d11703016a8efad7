package org.griplore.query.outlook;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.griplore.query.answer.Answer;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Format;
import org.griplore.query.answer.Inquiry;
import org.griplore.query.answer.Lead;
import org.griplore.query.answer.WholeFigure;
import org.griplore.query.discipline.Difference;
import org.griplore.query.evidence.Evidence;
import org.griplore.query.evidence.Exclusions;
import org.griplore.query.evidence.Filter;
import org.griplore.query.evidence.Likeness;
import org.griplore.query.option.Choices;
import org.griplore.query.option.Option;
import org.griplore.query.option.Weights;
import org.griplore.query.question.CommonOptions;
import org.griplore.query.question.QueryContext;
import org.griplore.query.question.Question;
import org.griplore.store.vocabulary.Direction;
import org.griplore.store.vocabulary.Discipline;

/** What to expect of a field of tyres in a new test. */
public final class OutlookQuestion implements Question<OutlookRow> {
  /** Share of new results that the intervals are to hold, from 0 to 1. */
  public static final WholeFigure<Double> LEVEL =
      new WholeFigure<>("level", "Share of new results that the intervals are to hold.");

  /** How far things differ in each discipline. */
  public static final WholeFigure<Map<String, Differing>> VARIANCE_COMPONENTS =
      new WholeFigure<>(
          "varianceComponents",
          "How far things differ in each discipline, as standard deviations on its scale.");

  /**
   * How far things differ in a discipline, as standard deviations on its scale.
   *
   * @param tests tests it was worked out from
   * @param heterogeneity of a model from test to test
   * @param lines of lines from each other
   * @param steps of one generation from the next, about {@code usualStep}
   * @param runs of the runs behind a result; null where the tests tell nothing of it
   * @param usualStep the mean step
   */
  public record Differing(
      int tests, double heterogeneity, double lines, double steps, Double runs, Double usualStep) {}

  private static final int TOP = 3;
  private static final int MOST_MODELS = 60;

  @Override
  public String kind() {
    return "outlook";
  }

  @Override
  public String purpose() {
    return "What to expect of a field of tyres in a new test, and the chance of the first three";
  }

  @Override
  public String example() {
    return "outlook --models \"Velmora Aurelis 6, Kirazumi Hayari S-300, Quillarn Tarvion 12,"
        + " Ostran\u00e9 Corvant III\" --size \"205/55 R16\"";
  }

  @Override
  public List<Option> options() {
    List<Option> options = new ArrayList<>();
    options.add(Option.required("models", "MODEL", "the tyres of the new test, two or more"));
    options.add(
        Option.once(
            "size", "SIZE", "the size of the new test: tests in like sizes are told", null));
    options.add(Option.once("mass", "KG", "mass of the car: tests on like cars are told", null));
    options.add(
        Option.repeated("discipline", "DISCIPLINE", "the disciplines; all with evidence if none"));
    options.add(
        Option.repeated(
            "weights", "D=W,...", "your weights for a total, like wet-braking=3,wear=1"));
    options.add(
        Option.once("level", "P", "share of new results that an interval is to hold", "0.8"));
    options.add(Option.once("seed", "N", "the same seed draws the same tests", "1"));
    Filter.OPTIONS.stream()
        .filter(option -> !Set.of("size", "rim").contains(option.name()))
        .forEach(options::add);
    return options;
  }

  @Override
  public Answer<OutlookRow> answer(QueryContext context, Choices choices) {
    Evidence evidence = context.evidence();
    int[] asked =
        context.names().models("models", choices.all("models")).stream().mapToInt(m -> m).toArray();
    if (asked.length < 2 || asked.length > MOST_MODELS) {
      throw Choices.refusal(
          "models",
          String.join(", ", choices.all("models")),
          "a field of two to " + MOST_MODELS + " models");
    }
    double level = choices.number("level", 0.01, 0.999).orElseThrow();
    int seed = choices.integer("seed", 0, 999_999_999).orElseThrow();
    Likeness likeness = Likeness.of(choices);
    List<String> comparable =
        context.catalogue().all().stream()
            .map(Discipline::key)
            .filter(key -> !key.equals("overall"))
            .toList();
    Map<String, Double> weights = Weights.of(choices, "weights", comparable);
    Filter filter = new Filter(choices.without("size"), evidence);
    Exclusions excluded = new Exclusions();
    OutlookAnswer told =
        new OutlookAnswer(evidence, filter, likeness, asked, level, TOP, seed, excluded);
    told.reckon(disciplines(choices, context, comparable, weights.keySet()));
    told.total(weights);
    return Answer.to(
            new Inquiry(
                kind(),
                "What is to be expected of %d tyres in a new test%s%s?"
                    .formatted(asked.length, likeness.words(), filter.words()),
                choices.given()))
        .summary(told.summary())
        .columns(columns(level, !likeness.isOpen()))
        .rows(told.rows())
        .excluded(excluded.list())
        .caveats(told.caveats(choices.has("source")))
        .sources(told.citations().list())
        .whole(LEVEL, level)
        .whole(VARIANCE_COMPONENTS, told.varianceComponents())
        .build();
  }

  private static List<String> disciplines(
      Choices choices, QueryContext context, List<String> comparable, Set<String> weighted) {
    Set<String> wanted = CommonOptions.comparableAll(choices, context.catalogue());
    if (!wanted.isEmpty()) {
      wanted.addAll(weighted);
    }
    return (wanted.isEmpty() ? comparable : List.copyOf(wanted))
        .stream().filter(key -> context.evidence().discipline(key) >= 0).toList();
  }

  private static Lead behind(String question, OutlookRow row, Inquiry asked) {
    return row.tests() == null
        ? null
        : Lead.to(question)
            .with("model", row.model())
            .with("discipline", row.discipline())
            .under(Lead.to(question).under(Filter.given(asked)).without("size").options());
  }

  @Override
  public List<Column<OutlookRow>> columns() {
    return columns(Difference.LEVEL, true);
  }

  @Override
  public List<WholeFigure<?>> wholes() {
    return List.of(LEVEL, VARIANCE_COMPONENTS);
  }

  /** The filters but the size, which is that of the new test and lets every size count. */
  private static List<Column<OutlookRow>> columns(double level, boolean like) {
    String percent = String.format(Locale.ROOT, "%.0f %% from", 100 * level);
    List<Column<OutlookRow>> columns =
        new ArrayList<>(
            List.of(
                Column.of("discipline", "Discipline", Format.DISCIPLINE, OutlookRow::discipline),
                Column.of("model", "Model", Format.MODEL, OutlookRow::model),
                Column.number("expected", "Expected", Format.DELTA, 1, OutlookRow::expected)
                    .inUnitOf("unit")
                    .means(
                        "Expected result in a new test less the mean of the field, plus is better.")
                    .leadingTo((row, asked) -> behind("model", row, asked)),
                Column.of("unit", "in", Format.UNIT, OutlookRow::unit)
                    .means("Unit of the expected difference."),
                Column.number("low", percent, Format.DELTA, 1, OutlookRow::low)
                    .inUnitOf("unit")
                    .means("Lower end of the prediction interval."),
                Column.number("high", "to", Format.DELTA, 1, OutlookRow::high)
                    .inUnitOf("unit")
                    .means("Upper end of the prediction interval."),
                Column.number("expectedPlace", "Place", Format.NUMBER, 1, OutlookRow::expectedPlace)
                    .better(Direction.LOW)
                    .means("Mean place over what may happen."),
                Column.of("topThree", "First 3", Format.SHARE, OutlookRow::topThree)
                    .better(Direction.HIGH)
                    .means("Chance of the first three, from 0 to 1."),
                Column.of("field", "Of", Format.COUNT, OutlookRow::field)
                    .means("Tyres compared in the discipline."),
                Column.of("tests", "Tests", Format.COUNT, OutlookRow::tests)
                    .means("Tests of the tyre itself in the discipline.")
                    .leadingTo((row, asked) -> behind("tests", row, asked))));
    Column<OutlookRow> likeTests =
        Column.of("likeTests", "Like", Format.COUNT, OutlookRow::likeTests)
            .means("Those among them in a like size and on a like car.");
    columns.add(like ? likeTests : likeTests.asDetail());
    columns.add(
        Column.of("basis", "Rests on", Format.TEXT, OutlookRow::basis)
            .means("What the expectation rests on."));
    columns.add(
        Column.<OutlookRow>number("logExpected", "Log", Format.NUMBER, 4, OutlookRow::logExpected)
            .means("Natural log of the ratio behind an expectation in per cent.")
            .asDetail());
    return columns;
  }
}
