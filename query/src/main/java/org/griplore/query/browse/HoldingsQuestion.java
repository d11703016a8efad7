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
import org.griplore.query.evidence.Evidence;
import org.griplore.query.option.Choices;
import org.griplore.query.option.Option;
import org.griplore.query.question.QueryContext;
import org.griplore.query.question.Question;
import org.griplore.store.vocabulary.TestDate;

/** Says what the archive holds: tests and results by year and discipline. */
public final class HoldingsQuestion implements Question {
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
    Map<String, Object> totals =
        Map.of(
            "tests", evidence.tests().size(),
            "models", evidence.models().size(),
            "results", evidence.results().count(),
            "notes", context.archive().noteCount(),
            "sources", context.archive().sourceCount(),
            "findings", context.archive().findingCount());
    return new Answer<>(
        new Inquiry(kind(), "What does the archive hold?", choices.given()),
        summary(evidence, totals),
        columns(),
        rows,
        List.of(),
        List.of(),
        List.of(),
        totals);
  }

  private static String summary(Evidence evidence, Map<String, Object> totals) {
    List<Integer> years =
        evidence.tests().stream()
            .map(test -> test.details().date())
            .filter(date -> date != null)
            .map(TestDate::year)
            .sorted()
            .toList();
    String when =
        years.isEmpty() ? "" : " from " + years.get(0) + " to " + years.get(years.size() - 1);
    return "%s%s of %s, with %s and %s from %s."
        .formatted(
            counted(totals, "test"),
            when,
            counted(totals, "model"),
            counted(totals, "result"),
            counted(totals, "note"),
            counted(totals, "source"));
  }

  /** A number with its word; sources are files to people. */
  private static String counted(Map<String, Object> totals, String word) {
    Object number = totals.get(word + "s");
    String shown = word.equals("source") ? "file" : word;
    return number + " " + shown + (String.valueOf(number).equals("1") ? "" : "s");
  }

  private static List<Column<HoldingsRow>> columns() {
    return List.of(
        Column.of("year", "Year", Format.YEAR, HoldingsRow::year),
        Column.of("discipline", "Discipline", Format.DISCIPLINE, HoldingsRow::discipline),
        Column.of("tests", "Tests", Format.COUNT, HoldingsRow::tests),
        Column.of("results", "Results", Format.COUNT, HoldingsRow::results));
  }
}
