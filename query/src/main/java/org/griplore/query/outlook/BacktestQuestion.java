package org.griplore.query.outlook;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.griplore.query.answer.Answer;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Format;
import org.griplore.query.answer.Inquiry;
import org.griplore.query.answer.Lead;
import org.griplore.query.answer.WholeFigure;
import org.griplore.query.compare.CompareOptions;
import org.griplore.query.discipline.ComparisonScale;
import org.griplore.query.discipline.DisciplineArms;
import org.griplore.query.evidence.Citations;
import org.griplore.query.evidence.Evidence;
import org.griplore.query.evidence.Exclusions;
import org.griplore.query.evidence.Filter;
import org.griplore.query.option.Choices;
import org.griplore.query.option.Option;
import org.griplore.query.question.CommonOptions;
import org.griplore.query.question.QueryContext;
import org.griplore.query.question.Question;
import org.griplore.store.vocabulary.Direction;
import org.griplore.store.vocabulary.Discipline;

/** How well the archive would have predicted its own tests. */
public final class BacktestQuestion implements Question<BacktestQuestion.BacktestRow> {
  /** All disciplines together. */
  public static final WholeFigure<AllTests> ALL =
      new WholeFigure<>(
          "all", "How often results fell within their intervals, all disciplines together.");

  /** Results that were predicted, and the shares of them within their intervals, from 0 to 1. */
  public record AllTests(int results, double coverage50, double coverage80, double coverage95) {}

  /**
   * One discipline.
   *
   * @param tests tests predicted
   * @param results results predicted
   * @param unseen results among them of models that had never been tested
   * @param coverage50 share of results inside their 50 % intervals
   * @param error root mean square error of predicted differences from the field's mean, in unit
   * @param naiveError that of "same as last time"
   * @param steps steps from a model to its successor inside tests that were predicted
   * @param stepCoverage80 share of them inside their 80 % intervals; null without steps
   * @param stepError root mean square error of predicted steps, in unit; null without steps
   * @param naiveStepError that of "same as last time"
   * @param placeCoverage80 share of places in the middle 80 % of those drawn, an equal place
   *     counting half
   * @param rankAgreement Kendall's tau-b over pairs inside tests; null when nothing differs
   */
  public record BacktestRow(
      String discipline,
      String unit,
      int tests,
      int results,
      int unseen,
      double coverage50,
      double coverage80,
      double coverage95,
      double error,
      double naiveError,
      int steps,
      Double stepCoverage80,
      Double stepCoverage95,
      Double stepError,
      Double naiveStepError,
      Double placeCoverage80,
      Double rankAgreement,
      Double naiveRankAgreement) {}

  private record Judged(
      String key, ComparisonScale measure, Exclusions excluded, IntervalTally tally) {}

  @Override
  public String kind() {
    return "backtest";
  }

  @Override
  public String purpose() {
    return "How well the archive would have predicted each of its tests from those before";
  }

  @Override
  public String example() {
    return "backtest --discipline wet-braking";
  }

  @Override
  public List<Option> options() {
    List<Option> options = new ArrayList<>();
    options.add(CommonOptions.discipline(null));
    options.addAll(Filter.OPTIONS);
    return options;
  }

  @Override
  public List<WholeFigure<?>> wholes() {
    return List.of(ALL);
  }

  @Override
  public Answer<BacktestRow> answer(QueryContext context, Choices choices) {
    Evidence evidence = context.evidence();
    Filter filter = new Filter(choices, evidence);
    List<String> keys =
        choices.has("discipline")
            ? List.of(CommonOptions.comparable(choices, context.catalogue()))
            : context.catalogue().all().stream()
                .map(Discipline::key)
                .filter(key -> !key.equals("overall") && evidence.discipline(key) >= 0)
                .toList();
    DescentForest descent = DescentForest.of(evidence.models());
    List<Judged> judged =
        keys.parallelStream().map(key -> judge(evidence, descent, key, filter)).toList();
    Exclusions excluded = new Exclusions();
    Citations citations = new Citations(evidence);
    List<BacktestRow> rows = new ArrayList<>();
    int[] covered = new int[IntervalTally.LEVELS.length];
    for (Judged of : judged) {
      of.excluded.list().forEach(left -> excluded.add(left.reason(), left.count()));
      if (of.tally.results() == 0) {
        excluded.add("disciplines without a test that could be predicted");
        continue;
      }
      of.tally.entries().forEach(citations::citeEntry);
      for (int level = 0; level < covered.length; level++) {
        covered[level] += of.tally.covered(level);
      }
      rows.add(row(of));
    }
    return Answer.to(
            new Inquiry(
                kind(),
                "How well would tests have been predicted from those before them"
                    + (choices.has("discipline") ? ", in " + keys.get(0) : "")
                    + filter.words()
                    + "?",
                choices.given()))
        .summary(summary(rows, covered))
        .columns(columns())
        .rows(rows)
        .excluded(excluded.list())
        .caveats(caveats(choices.has("source")))
        .sources(citations.list())
        .whole(ALL, all(rows, covered))
        .build();
  }

  private static Judged judge(Evidence evidence, DescentForest descent, String key, Filter filter) {
    DisciplineArms arms = DisciplineArms.of(evidence, key, filter);
    Exclusions excluded = new Exclusions();
    arms.excluded().list().forEach(left -> excluded.add(left.reason(), left.count()));
    IntervalTally tally = PastPredictions.of(descent, TestBlocks.of(evidence, arms), excluded);
    return new Judged(key, arms.measure(), excluded, tally);
  }

  private static BacktestRow row(Judged of) {
    IntervalTally tally = of.tally;
    double results = tally.results();
    return new BacktestRow(
        of.key,
        of.measure.shownUnit(),
        tally.tests(),
        tally.results(),
        tally.unseen(),
        tally.covered(0) / results,
        tally.covered(1) / results,
        tally.covered(2) / results,
        of.measure.shown(tally.error()),
        of.measure.shown(tally.naiveError()),
        tally.steps(),
        tally.stepCoverage(1),
        tally.stepCoverage(2),
        of.measure.shown(tally.stepError()),
        of.measure.shown(tally.naiveStepError()),
        tally.placeCoverage(),
        tally.rankAgreement(),
        tally.naiveRankAgreement());
  }

  private static int results(List<BacktestRow> rows) {
    return rows.stream().mapToInt(BacktestRow::results).sum();
  }

  private static AllTests all(List<BacktestRow> rows, int[] covered) {
    double results = results(rows);
    return rows.isEmpty()
        ? null
        : new AllTests(
            results(rows), covered[0] / results, covered[1] / results, covered[2] / results);
  }

  private static String summary(List<BacktestRow> rows, int[] covered) {
    if (rows.isEmpty()) {
      return "No test could be predicted: too few dated tests with models tested before.";
    }
    long nearer = rows.stream().filter(row -> row.error() < row.naiveError()).count();
    return String.format(
        Locale.ROOT,
        "Intervals meant to hold 80 %% of results held %.0f %% of %,d (50 %%: %.0f, 95 %%: %.0f);"
            + " the predictions came nearer than \"same as last time\" in %d of %d disciplines.%s",
        100.0 * covered[1] / results(rows),
        results(rows),
        100.0 * covered[0] / results(rows),
        100.0 * covered[2] / results(rows),
        nearer,
        rows.size(),
        steps(rows));
  }

  /** How the steps did, over all disciplines; nothing where there are none. */
  private static String steps(List<BacktestRow> rows) {
    int steps = rows.stream().mapToInt(BacktestRow::steps).sum();
    double held =
        rows.stream()
            .filter(row -> row.stepCoverage80() != null)
            .mapToDouble(row -> row.steps() * row.stepCoverage80())
            .sum();
    return steps == 0
        ? ""
        : String.format(
            Locale.ROOT,
            " Of %,d steps from a model to its successor %.0f %% lay in their 80 %% intervals.",
            steps,
            100 * held / steps);
  }

  private static List<String> caveats(boolean sourcesChosen) {
    List<String> caveats = new ArrayList<>();
    caveats.add(
        "Each test is predicted from tests that were over before it began: its results less the mean"
            + " of those of its models that they, or tests of a predecessor, tell of.");
    caveats.add(
        "Error is the root mean square; agreement of order is Kendall's tau-b over pairs inside"
            + " tests. \"Same as last time\" is a model's difference from the mean of its last test,"
            + " or its predecessor's where it had none.");
    if (!sourcesChosen) {
      caveats.add(
          "Reports supplied by makers are left out; `--source own independent maker` counts them.");
    }
    caveats.add(CompareOptions.PER_CENT);
    return caveats;
  }

  @Override
  public List<Column<BacktestRow>> columns() {
    return List.of(
        Column.of("discipline", "Discipline", Format.DISCIPLINE, BacktestRow::discipline)
            .leadingTo((row, asked) -> Lead.again(asked).with("discipline", row.discipline())),
        Column.of("tests", "Tests", Format.COUNT, BacktestRow::tests)
            .means("Tests predicted from those before them.")
            .leadingTo(
                (row, asked) ->
                    Lead.to("tests")
                        .with("discipline", row.discipline())
                        .under(Filter.given(asked))),
        Column.of("results", "Results", Format.COUNT, BacktestRow::results)
            .means("Results predicted."),
        Column.<BacktestRow>of("unseen", "Never tested", Format.COUNT, BacktestRow::unseen)
            .means("Results among them of models that had never been tested.")
            .asDetail(),
        Column.of("coverage50", "In 50 %", Format.SHARE, BacktestRow::coverage50)
            .means("Share of results inside their 50 % intervals; 0.5 is right."),
        Column.of("coverage80", "In 80 %", Format.SHARE, BacktestRow::coverage80)
            .means("Share of results inside their 80 % intervals; 0.8 is right."),
        Column.of("coverage95", "In 95 %", Format.SHARE, BacktestRow::coverage95)
            .means("Share of results inside their 95 % intervals; 0.95 is right."),
        Column.number("error", "Error", Format.NUMBER, 2, BacktestRow::error)
            .inUnitOf("unit")
            .better(Direction.LOW)
            .means("Root mean square error of predicted differences from the field's mean."),
        Column.number("naiveError", "Error, last time", Format.NUMBER, 2, BacktestRow::naiveError)
            .inUnitOf("unit")
            .better(Direction.LOW)
            .means("The same error of taking each tyre as it was the last time."),
        Column.of("steps", "Steps", Format.COUNT, BacktestRow::steps)
            .means("Steps from a model to its successor inside tests, predicted likewise."),
        Column.of("stepCoverage80", "Steps in 80 %", Format.SHARE, BacktestRow::stepCoverage80)
            .means("Share of steps inside their 80 % intervals; 0.8 is right."),
        Column.<BacktestRow>of(
                "stepCoverage95", "Steps in 95 %", Format.SHARE, BacktestRow::stepCoverage95)
            .means("Share of steps inside their 95 % intervals; 0.95 is right.")
            .asDetail(),
        Column.<BacktestRow>number(
                "stepError", "Step error", Format.NUMBER, 2, BacktestRow::stepError)
            .inUnitOf("unit")
            .better(Direction.LOW)
            .means("Root mean square error of predicted steps.")
            .asDetail(),
        Column.<BacktestRow>number(
                "naiveStepError",
                "Step error, last time",
                Format.NUMBER,
                2,
                BacktestRow::naiveStepError)
            .inUnitOf("unit")
            .better(Direction.LOW)
            .means("The same error of taking each tyre as it was the last time.")
            .asDetail(),
        Column.of("placeCoverage80", "Places in 80 %", Format.SHARE, BacktestRow::placeCoverage80)
            .means(
                "Share of places in the middle 80 % of those expected; 0.8 or a little more is right."),
        Column.of("unit", "in", Format.UNIT, BacktestRow::unit).means("Unit of both errors."),
        Column.number("rankAgreement", "Order", Format.NUMBER, 2, BacktestRow::rankAgreement)
            .better(Direction.HIGH)
            .means("Kendall's tau-b between predicted and measured order inside tests."),
        Column.number(
                "naiveRankAgreement",
                "Order, last time",
                Format.NUMBER,
                2,
                BacktestRow::naiveRankAgreement)
            .better(Direction.HIGH)
            .means("The same agreement of taking each tyre as it was the last time."));
  }
}
