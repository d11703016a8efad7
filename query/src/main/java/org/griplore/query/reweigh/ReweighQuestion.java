package org.griplore.query.reweigh;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import org.griplore.query.answer.Answer;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Inquiry;
import org.griplore.query.answer.WholeFigure;
import org.griplore.query.evidence.Evidence;
import org.griplore.query.evidence.Exclusions;
import org.griplore.query.evidence.Filter;
import org.griplore.query.option.Choices;
import org.griplore.query.option.Option;
import org.griplore.query.option.Weights;
import org.griplore.query.question.CommonOptions;
import org.griplore.query.question.QueryContext;
import org.griplore.query.question.Question;
import org.griplore.store.vocabulary.Discipline;

/** How models would have ranked in past tests under other weights, and under all weights. */
public final class ReweighQuestion implements Question<ReweighRow> {
  /** The last place that counts as being among the first. */
  public static final WholeFigure<Integer> TOP =
      new WholeFigure<>("top", "The last place that counts as being among the first.");

  private static final Option WEIGHTS =
      Option.repeated(
          "weights",
          "D=W,...",
          "your weights, like wet-braking=3,wear=1; when none, those of each test alike");
  private static final Option DRAWS =
      Option.once(
          "draws",
          "N",
          "weightings drawn; up to 5,000, fewer in large archives, when not given",
          null);
  private static final Option SEED =
      Option.once("seed", "N", "the same seed draws the same weightings", "1");

  @Override
  public String kind() {
    return "reweigh";
  }

  @Override
  public String purpose() {
    return "How models would have ranked in past tests under your weights, and under all weights";
  }

  @Override
  public String example() {
    return "reweigh \"Velmora Aurelis 4\" --weights wet-braking=3,rolling-resistance=1,wear=1";
  }

  @Override
  public List<Option> options() {
    List<Option> options = new ArrayList<>();
    options.add(CommonOptions.MODELS);
    options.addAll(List.of(WEIGHTS, CommonOptions.TOP, CommonOptions.MIN_FIELD, DRAWS, SEED));
    options.addAll(Filter.OPTIONS);
    return options;
  }

  @Override
  public List<Column<ReweighRow>> columns() {
    return ReweighRow.columns("K");
  }

  @Override
  public List<WholeFigure<?>> wholes() {
    return List.of(TOP);
  }

  @Override
  public Answer<ReweighRow> answer(QueryContext context, Choices choices) {
    Evidence evidence = context.evidence();
    int top = choices.integer("top", 1, 1000).orElseThrow();
    int minField = choices.integer("min-field", 2, 1000).orElse(top + 1);
    int seed = choices.integer("seed", 0, 999_999_999).orElseThrow();
    Integer draws =
        choices.has("draws") ? (Integer) choices.integer("draws", 100, 100_000).getAsInt() : null;
    Map<String, Double> weights = weights(context, choices);
    List<Integer> named = context.names().models("model", choices.all("model"));
    Filter filter = new Filter(choices, evidence);
    Exclusions excluded = new Exclusions();
    TestScores scores =
        new TestScores(evidence, weights, !choices.has("weights"), filter, excluded);
    List<ScoredTest> tests =
        scores.tests(minField, excluded).stream()
            .filter(test -> named.isEmpty() || holds(scores, test, named))
            .toList();
    Reweighed reweighed = new Reweighed(evidence, scores.disciplines(), tests, top, draws, seed);
    List<ReweighRow> rows =
        (named.isEmpty() ? reweighed.models() : named)
            .stream().map(reweighed::row).filter(Objects::nonNull).toList();
    if (named.isEmpty()) {
      rows =
          rows.stream()
              .sorted(
                  Comparator.comparingDouble(ReweighRow::acceptable)
                      .reversed()
                      .thenComparing(ReweighRow::model))
              .toList();
    }
    String who =
        named.isEmpty()
            ? "each model"
            : named.stream().map(i -> evidence.models().get(i).name()).collect(joining(", "));
    return Answer.to(
            new Inquiry(
                kind(),
                "How often would %s have been among the first %d with %s%s?"
                    .formatted(who, top, words(choices, weights), filter.words()),
                choices.given()))
        .summary(summary(rows, who, top, !named.isEmpty()))
        .columns(ReweighRow.columns(String.valueOf(top)))
        .rows(rows)
        .excluded(excluded.list())
        .caveats(caveats(reweighed, seed))
        .sources(reweighed.sources())
        .whole(TOP, top)
        .build();
  }

  /** The user's weights, else every discipline that occurs alike. */
  private static Map<String, Double> weights(QueryContext context, Choices choices) {
    List<String> known =
        context.catalogue().all().stream()
            .map(Discipline::key)
            .filter(key -> !key.equals("overall"))
            .toList();
    if (choices.has("weights")) {
      return Weights.of(choices, "weights", known);
    }
    Map<String, Double> alike = new LinkedHashMap<>();
    known.stream()
        .filter(key -> context.evidence().discipline(key) >= 0)
        .forEach(key -> alike.put(key, 1.0));
    return alike;
  }

  private static boolean holds(TestScores scores, ScoredTest test, List<Integer> models) {
    for (int entry : test.entries()) {
      if (models.contains(scores.model(entry))) {
        return true;
      }
    }
    return false;
  }

  private static String words(Choices choices, Map<String, Double> weights) {
    if (!choices.has("weights")) {
      return "the disciplines of each test weighted alike";
    }
    double sum = weights.values().stream().mapToDouble(w -> w).sum();
    return weights.entrySet().stream()
        .filter(of -> of.getValue() > 0)
        .map(of -> String.format(Locale.ROOT, "%s %.0f %%", of.getKey(), 100 * of.getValue() / sum))
        .collect(joining(", ", "the weights ", ""));
  }

  private static String summary(List<ReweighRow> rows, String who, int top, boolean named) {
    if (rows.isEmpty()) {
      return "No test that counts ranks " + (named ? who : "any model") + " under these weights.";
    }
    if (!named) {
      ReweighRow first = rows.get(0);
      return String.format(
          Locale.ROOT,
          "%d models have counted tests; over all weightings %s is most often among the first %d"
              + " (%.0f %%), and in %d of %d tests under these.",
          rows.size(),
          first.model(),
          top,
          100 * first.acceptable(),
          first.within(),
          first.tests());
    }
    return rows.stream().map(row -> sentence(row, top)).collect(joining(" "));
  }

  private static String sentence(ReweighRow row, int top) {
    String reports =
        row.reported() == null
            ? ""
            : " (by the reports' own totals in %d of %d)"
                .formatted(row.reported(), row.reportedTests());
    return String.format(
        Locale.ROOT,
        "%s would have been among the first %d in %d of %d tests%s; over all weightings in %.0f %%"
            + " of cases, give or take %.1f.",
        row.model(),
        top,
        row.within(),
        row.tests(),
        reports,
        100 * row.acceptable(),
        100 * row.acceptableError());
  }

  private static List<String> caveats(Reweighed reweighed, int seed) {
    List<String> caveats = new ArrayList<>();
    caveats.add(
        "Each result is taken less the mean of its test, over the usual spread within tests; a"
            + " discipline that a test or a tyre does not have is left out, and the other weights"
            + " stand in for it.");
    caveats.add(
        String.format(
            Locale.ROOT,
            "All weightings: %,d drawn alike over the weighted disciplines (seed %d); shares are"
                + " off by at most %.1f points (one standard error). Errors of the results"
                + " themselves are not in them.",
            reweighed.draws(),
            seed,
            50 / Math.sqrt(reweighed.draws())));
    CommonOptions.makerCaveat(reweighed.citations()).ifPresent(caveats::add);
    caveats.add(CommonOptions.RESULTS_HOLD);
    return caveats;
  }
}
