package org.griplore.query.browse;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.griplore.query.answer.Answer;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Format;
import org.griplore.query.answer.Inquiry;
import org.griplore.query.answer.Lead;
import org.griplore.query.answer.WholeFigure;
import org.griplore.query.answer.Wording;
import org.griplore.query.evidence.Evidence;
import org.griplore.query.option.Choices;
import org.griplore.query.option.Option;
import org.griplore.query.question.QueryContext;
import org.griplore.query.question.Question;
import org.griplore.store.vocabulary.TestDate;

/** Says what the archive holds: tests and results by year and discipline. */
public final class HoldingsQuestion implements Question<HoldingsQuestion.HoldingsRow> {
  /** Tests of the archive. */
  public static final WholeFigure<Integer> TESTS =
      new WholeFigure<>("tests", "How many tests the archive holds.");

  /** Models of the archive. */
  public static final WholeFigure<Integer> MODELS =
      new WholeFigure<>("models", "How many models the archive knows.");

  /** Results of the archive. */
  public static final WholeFigure<Integer> RESULTS =
      new WholeFigure<>("results", "How many results the archive holds.");

  /** Notes of the archive. */
  public static final WholeFigure<Long> NOTES =
      new WholeFigure<>("notes", "How many notes the archive holds.");

  /** Files of the archive. */
  public static final WholeFigure<Long> SOURCES =
      new WholeFigure<>("sources", "How many files were added.");

  /** Findings of the archive. */
  public static final WholeFigure<Long> FINDINGS =
      new WholeFigure<>("findings", "How many findings wait for a reader.");

  /**
   * What there is of one discipline in one year.
   *
   * @param year null for undated tests
   */
  public record HoldingsRow(Integer year, String discipline, int tests, int results) {}

  private record Place(Integer year, int discipline) {}

  private static final class Tally {
    final Set<Integer> tests = new HashSet<>();
    int results;
  }

  @Override
  public String kind() {
    return "holdings";
  }

  @Override
  public String purpose() {
    return "What the archive holds, by year and discipline";
  }

  @Override
  public String example() {
    return "holdings";
  }

  @Override
  public List<Option> options() {
    return List.of();
  }

  @Override
  public Answer<HoldingsRow> answer(QueryContext context, Choices choices) {
    Evidence evidence = context.evidence();
    Map<Place, Tally> tallies = new HashMap<>();
    for (int result = 0; result < evidence.results().count(); result++) {
      int test = evidence.entries().test()[evidence.results().entry()[result]];
      TestDate date = evidence.tests().get(test).details().date();
      Place place =
          new Place(date == null ? null : date.year(), evidence.results().discipline()[result]);
      Tally tally = tallies.computeIfAbsent(place, key -> new Tally());
      tally.tests.add(test);
      tally.results++;
    }
    List<HoldingsRow> rows = new ArrayList<>();
    tallies.forEach(
        (place, tally) ->
            rows.add(
                new HoldingsRow(
                    place.year(),
                    evidence.disciplines().get(place.discipline()),
                    tally.tests.size(),
                    tally.results)));
    rows.sort(
        Comparator.comparing(
                HoldingsRow::year, Comparator.nullsLast(Comparator.<Integer>naturalOrder()))
            .thenComparing(HoldingsRow::discipline));
    int tests = evidence.tests().size();
    int models = evidence.tyres();
    int results = evidence.results().count();
    long notes = context.archive().noteCount();
    long sources = context.archive().sourceCount();
    List<String> held =
        List.of(
            Wording.counted(models, "model"),
            Wording.counted(results, "result"),
            Wording.counted(notes, "note"),
            Wording.counted(sources, "file"));
    return Answer.to(new Inquiry(kind(), "What does the archive hold?", choices.given()))
        .summary(
            Wording.counted(tests, "test")
                + "%s of %s, with %s and %s from %s."
                    .formatted(years(evidence), held.get(0), held.get(1), held.get(2), held.get(3)))
        .columns(columns())
        .rows(rows)
        .whole(TESTS, tests)
        .whole(MODELS, models)
        .whole(RESULTS, results)
        .whole(NOTES, notes)
        .whole(SOURCES, sources)
        .whole(FINDINGS, context.archive().findingCount())
        .build();
  }

  private static String years(Evidence evidence) {
    List<Integer> years =
        evidence.tests().stream()
            .map(test -> test.details().date())
            .filter(date -> date != null)
            .map(TestDate::year)
            .sorted()
            .toList();
    return years.isEmpty() ? "" : " from " + years.get(0) + " to " + years.get(years.size() - 1);
  }

  private static Lead behind(HoldingsRow row, Inquiry asked) {
    if (row.year() == null) {
      return null;
    }
    String year = String.valueOf(row.year());
    return Lead.to("tests")
        .with("discipline", row.discipline())
        .with("from", year)
        .with("to", year);
  }

  @Override
  public List<WholeFigure<?>> wholes() {
    return List.of(TESTS, MODELS, RESULTS, NOTES, SOURCES, FINDINGS);
  }

  @Override
  public List<Column<HoldingsRow>> columns() {
    return List.of(
        Column.of("year", "Year", Format.YEAR, HoldingsRow::year)
            .means("The year; missing for undated tests."),
        Column.of("discipline", "Discipline", Format.DISCIPLINE, HoldingsRow::discipline),
        Column.of("tests", "Tests", Format.COUNT, HoldingsRow::tests)
            .means("Tests with a result.")
            .leadingTo(HoldingsQuestion::behind),
        Column.of("results", "Results", Format.COUNT, HoldingsRow::results)
            .means("Results.")
            .leadingTo(HoldingsQuestion::behind));
  }
}
