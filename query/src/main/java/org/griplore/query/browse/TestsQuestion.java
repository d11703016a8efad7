package org.griplore.query.browse;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
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
import org.griplore.store.archive.TestRecord;
import org.griplore.store.vocabulary.Details;
import org.griplore.store.vocabulary.NameKey;

/** Lists the tests, oldest first. */
public final class TestsQuestion implements Question<TestsQuestion.TestRow> {
  /**
   * One test.
   *
   * @param entries models in sizes tested
   * @param disciplines catalogue keys with at least one result
   */
  public record TestRow(
      String test,
      String date,
      String title,
      String publication,
      String kind,
      String size,
      String season,
      String vehicle,
      Double vehicleMass,
      String venue,
      int entries,
      List<String> disciplines,
      int source) {}

  @Override
  public String kind() {
    return "tests";
  }

  @Override
  public String purpose() {
    return "Which tests the archive holds";
  }

  @Override
  public String example() {
    return "tests --model \"Velmora Aurelis 4\" --from 2018";
  }

  @Override
  public List<Option> options() {
    List<Option> options = new ArrayList<>();
    options.add(Option.repeated("model", "MODEL", "only tests that this model was in"));
    options.add(CommonOptions.discipline(null));
    options.add(Option.repeated("venue", "VENUE", "only tests on this ground"));
    options.add(Option.repeated("vehicle", "VEHICLE", "only tests with this vehicle"));
    options.add(Option.repeated("publication", "NAME", "only tests of this publication"));
    options.addAll(Filter.OPTIONS);
    return options;
  }

  @Override
  public Answer<TestRow> answer(QueryContext context, Choices choices) {
    Evidence evidence = context.evidence();
    Filter filter = new Filter(choices, evidence).everyReport();
    String discipline =
        choices.has("discipline") ? CommonOptions.discipline(choices, context.catalogue()) : null;
    List<Integer> models =
        choices.all("model").stream().map(name -> context.names().model("model", name)).toList();
    Exclusions excluded = new Exclusions();
    Citations citations = new Citations(evidence);
    List<TestRow> rows = new ArrayList<>();
    for (int test = 0; test < evidence.tests().size(); test++) {
      int tested = test;
      Details details = evidence.tests().get(test).details();
      Optional<String> reason =
          elsewhere(choices, details)
              .or(() -> reasonAgainst(evidence, tested, filter, models, discipline));
      if (reason.isPresent()) {
        excluded.add(reason.get());
      } else {
        rows.add(row(evidence, test, citations));
      }
    }
    String with =
        models.isEmpty()
            ? ""
            : " with "
                + String.join(
                    " and ", models.stream().map(i -> evidence.models().get(i).name()).toList());
    String of =
        (discipline == null ? "" : " of " + discipline) + with + where(choices) + filter.words();
    return Answer.to(
            new Inquiry(kind(), "Which tests" + of + " does the archive hold?", choices.given()))
        .summary(
            "%d of the archive's %d tests%s."
                .formatted(rows.size(), evidence.tests().size(), of.isEmpty() ? "" : " are" + of))
        .columns(columns())
        .rows(rows)
        .excluded(excluded.list())
        .sources(citations.list())
        .build();
  }

  private static String where(Choices choices) {
    return said(choices, "venue", " on ")
        + said(choices, "vehicle", " with ")
        + said(choices, "publication", " by ");
  }

  private static String said(Choices choices, String option, String before) {
    List<String> given = choices.all(option);
    return given.isEmpty() ? "" : before + String.join(" or ", given);
  }

  /** Why a test is none of the grounds, vehicles or publications asked for. */
  private static Optional<String> elsewhere(Choices choices, Details details) {
    return unlike(choices, "venue", details.venue(), "on other grounds")
        .or(() -> unlike(choices, "vehicle", details.vehicle(), "with other vehicles"))
        .or(() -> unlike(choices, "publication", details.publication(), "of other publications"));
  }

  /** Compared as names are: case, accents and punctuation do not count. */
  private static Optional<String> unlike(Choices choices, String option, String is, String reason) {
    List<String> wanted = choices.all(option);
    boolean found =
        wanted.isEmpty()
            || is != null
                && wanted.stream().anyMatch(name -> NameKey.of(name).equals(NameKey.of(is)));
    return found ? Optional.empty() : Optional.of(reason);
  }

  private static Optional<String> reasonAgainst(
      Evidence evidence, int test, Filter filter, List<Integer> models, String discipline) {
    Stream<Integer> entries =
        java.util.stream.IntStream.range(
                evidence.entriesOfTest().from(test), evidence.entriesOfTest().to(test))
            .mapToObj(i -> evidence.entriesOfTest().rows()[i]);
    List<Integer> its = entries.toList();
    if (its.isEmpty()) {
      return filter.reasonAgainst(evidence.tests().get(test).details());
    }
    List<Integer> passing = its.stream().filter(e -> filter.reasonAgainst(e).isEmpty()).toList();
    if (passing.isEmpty()) {
      return filter.reasonAgainst(its.get(0));
    }
    for (int model : models) {
      if (passing.stream().noneMatch(e -> evidence.entries().model()[e] == model)) {
        return Optional.of("without the models asked for");
      }
    }
    if (discipline != null && !disciplines(evidence, its).contains(discipline)) {
      return Optional.of("without the discipline asked for");
    }
    return Optional.empty();
  }

  private static List<String> disciplines(Evidence evidence, List<Integer> entries) {
    return entries.stream()
        .flatMap(
            entry ->
                java.util.stream.IntStream.range(
                        evidence.resultsOfEntry().from(entry), evidence.resultsOfEntry().to(entry))
                    .mapToObj(i -> evidence.resultsOfEntry().rows()[i]))
        .map(result -> evidence.disciplines().get(evidence.results().discipline()[result]))
        .distinct()
        .sorted()
        .toList();
  }

  private static TestRow row(Evidence evidence, int test, Citations citations) {
    TestRecord record = evidence.tests().get(test);
    Details details = record.details();
    List<Integer> entries =
        java.util.stream.IntStream.range(
                evidence.entriesOfTest().from(test), evidence.entriesOfTest().to(test))
            .mapToObj(i -> evidence.entriesOfTest().rows()[i])
            .toList();
    return new TestRow(
        record.key(),
        details.date() == null ? null : details.date().text(),
        details.title(),
        details.publication(),
        details.kind() == null ? null : details.kind().key(),
        details.size(),
        details.season() == null ? null : details.season().key(),
        details.vehicle(),
        details.vehicleMassKg(),
        details.venue(),
        (int)
            entries.stream()
                .map(
                    entry ->
                        List.of(
                            evidence.entries().model()[entry],
                            String.valueOf(evidence.entries().size()[entry])))
                .distinct()
                .count(),
        disciplines(evidence, entries),
        citations.cite(record.reports().get(0)));
  }

  @Override
  public List<Column<TestRow>> columns() {
    return List.of(
        Column.of("test", "Test", Format.TEST, TestRow::test),
        Column.of("date", "Date", Format.DATE, TestRow::date),
        Column.of("title", "Title", Format.TEXT, TestRow::title).means("The report's title."),
        Column.<TestRow>of("publication", "Published by", Format.TEXT, TestRow::publication)
            .means("Who published it.")
            .asDetail(),
        Column.of("kind", "Source", Format.TEXT, TestRow::kind)
            .means("Whose test it is: own, independent or maker."),
        Column.of("size", "Size", Format.TEXT, TestRow::size).means("The size that was tested."),
        Column.of("season", "Season", Format.TEXT, TestRow::season)
            .means("Season class of the tyres."),
        Column.of("vehicle", "Vehicle", Format.TEXT, TestRow::vehicle).means("The car."),
        Column.<TestRow>number("vehicleMass", "Mass", Format.NUMBER, 0, TestRow::vehicleMass)
            .in("kg")
            .means("Mass of the car.")
            .asDetail(),
        Column.<TestRow>of("venue", "Venue", Format.TEXT, TestRow::venue)
            .means("The proving ground.")
            .asDetail(),
        Column.of("entries", "Tyres", Format.COUNT, TestRow::entries)
            .means("How many tyres were tested, by model and size.")
            .leadingTo((row, asked) -> Lead.to("test").with("test", row.test())),
        Column.of("disciplines", "Disciplines", Format.TEXTS, TestRow::disciplines)
            .means("The disciplines with at least one result."),
        Column.<TestRow>of("source", "Source", Format.COUNT, TestRow::source)
            .means("Number of the report among the sources.")
            .asDetail());
  }
}
