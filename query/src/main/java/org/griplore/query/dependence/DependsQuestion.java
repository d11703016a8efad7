package org.griplore.query.dependence;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.griplore.query.answer.Answer;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Inquiry;
import org.griplore.query.answer.Wording;
import org.griplore.query.compare.CompareOptions;
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

/** Whether a contrast changes with size, car, temperature or year. */
public final class DependsQuestion implements Question<DependsRow> {
  @Override
  public String kind() {
    return "depends";
  }

  @Override
  public String purpose() {
    return "Whether a contrast changes with rim, width, vehicle mass, temperature or year";
  }

  @Override
  public String example() {
    return "depends all-season summer --on temperature --discipline wet-braking";
  }

  @Override
  public List<Option> options() {
    List<Option> options = new ArrayList<>();
    options.add(
        Option.arguments(
            Side.OPTION,
            "SIDE",
            "two sides, the first less the second: models, lines or season classes, as in all-season : summer",
            true));
    options.add(
        Option.once("on", "WHAT", "what it may depend on; all of them when not given", null)
            .oneOf(Moderator.keys()));
    options.add(CommonOptions.discipline("wet-braking"));
    options.addAll(Filter.OPTIONS);
    return options;
  }

  @Override
  public List<Column<DependsRow>> columns() {
    return DependsColumns.of();
  }

  @Override
  public Answer<DependsRow> answer(QueryContext context, Choices choices) {
    Evidence evidence = context.evidence();
    String discipline = CommonOptions.comparable(choices, context.catalogue());
    List<Side> sides = Side.two(choices.all(Side.OPTION), context.names(), evidence);
    Filter filter = new Filter(choices, evidence);
    List<Moderator> moderators =
        Arrays.stream(Moderator.values())
            .filter(m -> !choices.has("on") || m.key().equals(choices.text("on")))
            .toList();
    DisciplineArms arms = DisciplineArms.of(evidence, discipline, filter);
    Exclusions excluded = new Exclusions();
    arms.excluded().list().forEach(left -> excluded.add(left.reason(), left.count()));
    List<TestContrast> contrasts = TestContrast.of(evidence, arms, sides, excluded);
    String versus = sides.get(0).name() + " against " + sides.get(1).name() + " in " + discipline;
    Inquiry inquiry =
        new Inquiry(
            kind(),
            "Does %s depend on %s%s?"
                .formatted(
                    versus,
                    choices.has("on") ? choices.text("on") : "size, car, temperature or year",
                    filter.words()),
            choices.given());
    if (contrasts.isEmpty()) {
      return Answer.to(inquiry)
          .summary(
              "No test holds both "
                  + sides.get(0).name()
                  + " and "
                  + sides.get(1).name()
                  + " in "
                  + discipline
                  + ".")
          .columns(DependsColumns.of())
          .excluded(excluded.list())
          .build();
    }
    Citations citations = new Citations(evidence);
    Dependence dependence =
        new Dependence(evidence, arms.measure(), sides, contrasts, excluded, citations);
    List<DependsRow> rows = moderators.stream().map(dependence::on).toList();
    return Answer.to(inquiry)
        .summary(summary(versus, rows, contrasts.size()))
        .columns(DependsColumns.of())
        .rows(rows)
        .excluded(excluded.list())
        .caveats(
            caveats(
                MovingTogether.words(evidence, contrasts, moderators),
                contrasts.stream()
                    .filter(c -> evidence.testSeries().of(c.test()) != c.test())
                    .count(),
                arms,
                rows,
                sides.stream().anyMatch(Side::isMany),
                citations))
        .sources(citations.list())
        .build();
  }

  private static String summary(String versus, List<DependsRow> rows, int tests) {
    String held = versus + ": " + tests + (tests == 1 ? " test holds" : " tests hold") + " both; ";
    if (rows.size() == 1) {
      DependsRow row = rows.get(0);
      String slope =
          row.slope() == null
              ? ""
              : ", %s %s%s"
                  .formatted(
                      Wording.signed(row.slope(), 2),
                      row.unit(),
                      Wording.interval(row.low(), row.high(), 2));
      String same =
          row.sameModels() == null
              ? ""
              : "; by the same models "
                  + Wording.signed(row.sameModels(), 2)
                  + Wording.interval(row.sameModelsLow(), row.sameModelsHigh(), 2);
      return "%son %s, %s%s%s, by %d tests."
          .formatted(held, row.measuredAs(), row.verdict(), slope, same, row.tests());
    }
    List<String> told = rows.stream().filter(DependsRow::isTold).map(DependsRow::verdict).toList();
    return held
        + (told.isEmpty()
            ? "a dependence on none of " + rows.size() + " looked at can be told."
            : String.join("; ", told) + " (of " + rows.size() + " looked at).");
  }

  private static List<String> caveats(
      List<String> together,
      long repeats,
      DisciplineArms arms,
      List<DependsRow> rows,
      boolean composed,
      Citations citations) {
    List<String> caveats = new ArrayList<>();
    if (rows.stream().anyMatch(row -> row.df() != null && row.df() < Slope.FEW)) {
      caveats.add(
          "Where fewer than four degrees of freedom carry a slope, its interval may be too narrow.");
    }
    caveats.addAll(together);
    if (repeats > 0) {
      caveats.add(
          "%s another on the same car and ground within 30 days: such a series counts as one day."
              .formatted(repeats == 1 ? "1 test repeats" : repeats + " tests repeat"));
    }
    if (rows.size() > 1) {
      caveats.add(
          "Rim, width and mass go together, so their slopes are not effects apart; and of five"
              + " looked at, one in twenty differs from zero by chance.");
    }
    if (composed) {
      caveats.add(
          "Which models stand for a side changes from test to test, and can make or hide a slope;"
              + " `same models` compares each with itself only.");
    }
    caveats.add("A slope over tests says what goes together, not what causes it.");
    if (arms.measure().isRatio()) {
      caveats.add(CompareOptions.PER_CENT);
    }
    CommonOptions.makerCaveat(citations).ifPresent(caveats::add);
    caveats.add(CommonOptions.RESULTS_HOLD);
    return caveats;
  }
}
