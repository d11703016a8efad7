package org.griplore.query.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.griplore.query.answer.Answer;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Inquiry;
import org.griplore.query.discipline.ComparisonScale;
import org.griplore.query.evidence.Citations;
import org.griplore.query.evidence.Evidence;
import org.griplore.query.evidence.Exclusions;
import org.griplore.query.evidence.Filter;
import org.griplore.query.option.Choices;
import org.griplore.query.option.Option;
import org.griplore.query.question.CommonOptions;
import org.griplore.query.question.QueryContext;
import org.griplore.query.question.Question;
import org.griplore.query.statistics.RunsNeeded;
import org.griplore.store.vocabulary.Discipline;
import org.griplore.store.vocabulary.Scale;

/** How many runs of each set a difference needs. */
public final class RunsQuestion implements Question<RunsRow> {
  /** The fewest valid runs of a set (UN Regulation No. 117, annex 5, 3.2.1, on wet grip). */
  private static final int FEWEST_VALID = 6;

  private static final Option DIFFERENCE =
      Option.once(
          "difference",
          "P",
          "the difference to be seen, in per cent of performance, or in dB or points; a table of"
              + " several when not given",
          null);
  private static final Option CV =
      Option.once(
          "cv",
          "C",
          "the scatter of single runs instead of the archive's own: coefficient of variation in"
              + " per cent, or standard deviation in dB or points",
          null);
  private static final Option POWER =
      Option.once("power", "P", "the chance of seeing the difference if it is there", "0.8");
  private static final Option LEVEL =
      Option.once("level", "P", "one less the chance of seeing what is not there", "0.95");
  private static final Option CANDIDATES =
      Option.once("candidates", "N", "candidate sets beside the reference set", "3");

  @Override
  public String kind() {
    return "runs";
  }

  @Override
  public String purpose() {
    return "How many runs of each set it takes to see a difference";
  }

  @Override
  public String example() {
    return "runs --discipline wet-braking --difference 1";
  }

  @Override
  public List<Option> options() {
    List<Option> options =
        new ArrayList<>(
            List.of(
                CommonOptions.discipline("wet-braking"), DIFFERENCE, CV, POWER, LEVEL, CANDIDATES));
    options.addAll(Filter.OPTIONS);
    return options;
  }

  @Override
  public List<Column<RunsRow>> columns() {
    return RunsRow.columns(null);
  }

  @Override
  public Answer<RunsRow> answer(QueryContext context, Choices choices) {
    Evidence evidence = context.evidence();
    Discipline discipline =
        context.catalogue().get(CommonOptions.comparable(choices, context.catalogue()));
    ComparisonScale measure = new ComparisonScale(discipline);
    OptionalDouble difference = choices.number("difference", 0.001, 1000);
    double level = choices.number("level", 0.5, 0.9999).orElseThrow();
    double power = choices.number("power", 0.01, 0.9999).orElseThrow();
    if (power <= 1 - level) {
      throw Choices.refusal(
          "power", choices.text("power"), "more than one less `level`, which chance alone gives");
    }
    int candidates = choices.integer("candidates", 1, 100).orElseThrow();
    Filter filter = new Filter(choices, evidence);
    Exclusions excluded = new Exclusions();
    Citations citations = new Citations(evidence);
    Optional<RunScatter> scatter =
        scatter(choices, evidence, discipline, filter, excluded, citations);
    List<String> order = RunOrder.of(candidates);
    List<RunsRow> rows = new ArrayList<>();
    if (scatter.isPresent()) {
      for (double wanted : difference.isPresent() ? one(difference) : usual(discipline.scale())) {
        rows.add(row(discipline, measure, wanted, scatter.get(), power, level, order));
      }
    }
    return Answer.to(
            new Inquiry(kind(), sentence(discipline, measure, difference, filter), choices.given()))
        .summary(summary(rows, discipline))
        .columns(RunsRow.columns(measure.shownUnit()))
        .rows(rows)
        .excluded(excluded.list())
        .caveats(caveats(rows, discipline))
        .sources(citations.list())
        .build();
  }

  private static Optional<RunScatter> scatter(
      Choices choices,
      Evidence evidence,
      Discipline discipline,
      Filter filter,
      Exclusions excluded,
      Citations citations) {
    OptionalDouble stated = choices.number("cv", 0.001, 100);
    boolean ratio = new ComparisonScale(discipline).isRatio();
    if (stated.isPresent()) {
      return Optional.of(
          RunScatter.stated(ratio ? stated.getAsDouble() / 100 : stated.getAsDouble()));
    }
    Optional<RunScatter> measured =
        RunScatter.measured(evidence, discipline.key(), filter, excluded, citations);
    return measured.isPresent() ? measured : RunScatter.typical(evidence, discipline, filter);
  }

  private static double[] one(OptionalDouble difference) {
    return new double[] {difference.getAsDouble()};
  }

  private static double[] usual(Scale scale) {
    return scale == Scale.RATIO
        ? new double[] {0.5, 1, 1.5, 2, 3, 5}
        : new double[] {0.1, 0.2, 0.3, 0.5, 1};
  }

  private static RunsRow row(
      Discipline discipline,
      ComparisonScale measure,
      double difference,
      RunScatter scatter,
      double power,
      double level,
      List<String> order) {
    boolean ratio = measure.isRatio();
    double shown = ratio ? 100 : 1;
    double on = ratio ? Math.log1p(difference / 100) : difference;
    double spread =
        ratio ? Math.sqrt(Math.log1p(scatter.value() * scatter.value())) : scatter.value();
    RunsNeeded needed = new RunsNeeded(RunsNeeded.Design.TWO_SAMPLES, 1 - level);
    int runs;
    try {
      runs = needed.runs(on, spread, power);
    } catch (IllegalArgumentException e) {
      throw Choices.refusal(
          "difference",
          String.valueOf(difference),
          "a difference that a million runs can show at this scatter");
    }
    return new RunsRow(
        discipline.key(),
        difference,
        measure.shownUnit(),
        shown * scatter.value(),
        scatter.low() == null ? null : (Double) (shown * scatter.low()),
        scatter.high() == null ? null : (Double) (shown * scatter.high()),
        scatter.source(),
        power,
        runs,
        needed.power(runs, on, spread),
        runs * order.size(),
        String.join(" ", order));
  }

  private static String sentence(
      Discipline discipline, ComparisonScale measure, OptionalDouble difference, Filter filter) {
    String what =
        difference.isPresent()
            ? "a difference of " + plain(difference.getAsDouble()) + " " + measure.shownUnit()
            : "a difference";
    return "How many runs of each set does it take to see %s in %s%s?"
        .formatted(what, discipline.key(), filter.words());
  }

  private static String summary(List<RunsRow> rows, Discipline discipline) {
    if (rows.isEmpty()) {
      return "Nothing is known of the scatter of runs in "
          + discipline.key()
          + "; state it with --cv.";
    }
    RunsRow row = rows.size() > 1 ? rows.get(1) : rows.get(0);
    return String.format(
        Locale.ROOT,
        "%s of each set show a difference of %s %s in %s with power %.2f, at a scatter of %.2f %s"
            + " (%s). Order: %s.",
        row.runs() + " runs",
        plain(row.difference()),
        row.unit(),
        row.discipline(),
        row.power(),
        row.cv(),
        row.unit(),
        row.cvSource().replaceFirst("\\.$", ""),
        row.order());
  }

  private static String plain(double number) {
    return number == Math.rint(number)
        ? String.valueOf((long) number)
        : String.format(Locale.ROOT, "%s", number);
  }

  private static List<String> caveats(List<RunsRow> rows, Discipline discipline) {
    List<String> caveats = new ArrayList<>();
    caveats.add(
        "Taken as independent runs of two sets on an unchanging track; the correction against the"
            + " reference set adds its own scatter, and what differs from car to car or size to"
            + " size is in no number of runs.");
    if (discipline.key().equals("wet-braking")
        && rows.stream().anyMatch(row -> row.runs() < FEWEST_VALID)) {
      caveats.add(
          "The wet-grip method asks for at least six valid runs of each set (UN Regulation No."
              + " 117, annex 5, 3.2.1), however few the power needs.");
    }
    return caveats;
  }
}
