package org.griplore.query.profile;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Format;
import org.griplore.query.answer.Inquiry;
import org.griplore.query.answer.Lead;
import org.griplore.query.evidence.Filter;
import org.griplore.store.vocabulary.Direction;

/** What is told of a model in a discipline. */
final class ProfileColumns {
  private static final List<Column<ProfileResult>> RESULTS =
      List.of(
          Column.of("test", "Test", Format.TEST, ProfileResult::test),
          Column.of("date", "Date", Format.DATE, ProfileResult::date),
          Column.of("size", "Size", Format.TEXT, ProfileResult::size)
              .means("The size that was tested."),
          Column.number("value", "Value", Format.NUMBER, 2, ProfileResult::value)
              .inUnitOf("unit")
              .means("The value as the archive keeps it.")
              .leadingTo((row, asked) -> Lead.result(row.result())),
          Column.of("unit", "in", Format.UNIT, ProfileResult::unit).means("Unit of the value."),
          Column.of("place", "Place", Format.PLACE, ProfileResult::place)
              .means("Place in the test.")
              .leadingTo((row, asked) -> Lead.result(row.result())),
          Column.of("field", "Of", Format.COUNT, ProfileResult::field)
              .means("How many were ranked."),
          Column.of("basis", "Basis", Format.TEXT, ProfileResult::basis)
              .means("Whether the place is published, or computed from totals or values."),
          Column.of("source", "Source", Format.COUNT, ProfileResult::source)
              .means("Number of the report among the sources."),
          Column.<ProfileResult>of("result", "Result", Format.RESULT, ProfileResult::result)
              .asDetail());

  private ProfileColumns() {}

  /** With the model first where there are several. */
  static List<Column<ProfileRow>> of(boolean several) {
    BiFunction<ProfileRow, Inquiry, Lead> behind =
        (row, asked) ->
            !several && asked.options().containsKey("discipline")
                ? null
                : lead("model", row, asked);
    List<Column<ProfileRow>> columns = new ArrayList<>();
    columns.add(
        Column.of("discipline", "Discipline", Format.DISCIPLINE, ProfileRow::discipline)
            .leadingTo((row, asked) -> Lead.again(asked).with("discipline", row.discipline())));
    Column<ProfileRow> model = Column.of("model", "Model", Format.MODEL, ProfileRow::model);
    columns.add(several ? model : model.asDetail());
    columns.add(
        Column.number("effect", "Against the mean", Format.DELTA, 1, ProfileRow::effect)
            .inUnitOf("unit")
            .means(
                "Difference to the mean of the models that tests connect with it, plus is better.")
            .leadingTo(behind));
    columns.add(
        Column.of("unit", "in", Format.UNIT, ProfileRow::unit)
            .means("Unit of the difference to the mean."));
    columns.add(
        Column.<ProfileRow>number("se", "SE", Format.NUMBER, 1, ProfileRow::se)
            .inUnitOf("unit")
            .better(Direction.LOW)
            .means("Standard error of that difference.")
            .leadingTo(behind)
            .asDetail());
    columns.add(
        Column.number("low", "from", Format.DELTA, 1, ProfileRow::low)
            .inUnitOf("unit")
            .means("Lower end of its 95 % interval.")
            .leadingTo(behind));
    columns.add(
        Column.number("high", "to", Format.DELTA, 1, ProfileRow::high)
            .inUnitOf("unit")
            .means("Upper end of its 95 % interval.")
            .leadingTo(behind));
    columns.add(
        Column.of("tests", "Tests", Format.COUNT, ProfileRow::tests)
            .means("Tests with a result in the discipline.")
            .leadingTo((row, asked) -> lead("tests", row, asked)));
    columns.add(
        Column.of("bestPlace", "Best place", Format.PLACE, ProfileRow::bestPlace)
            .better(Direction.LOW)
            .means("Best place.")
            .leadingTo(behind));
    columns.add(
        Column.number("medianPlace", "Median place", Format.PLACE, 1, ProfileRow::medianPlace)
            .better(Direction.LOW)
            .means("Median place.")
            .leadingTo(behind));
    columns.add(
        Column.of("firstYear", "First", Format.YEAR, ProfileRow::firstYear)
            .means("Year of the first dated test."));
    columns.add(
        Column.of("lastYear", "Last", Format.YEAR, ProfileRow::lastYear)
            .means("Year of the last dated test."));
    columns.add(
        Column.<ProfileRow>number("logEffect", "Log", Format.NUMBER, 4, ProfileRow::logEffect)
            .means("Natural log of the ratio behind a difference in per cent.")
            .asDetail());
    columns.add(
        Column.<ProfileRow>number("logSe", "Log SE", Format.NUMBER, 4, ProfileRow::logSe)
            .means("Standard error of that log.")
            .asDetail());
    columns.add(
        Column.rows("results", "Results", RESULTS, ProfileRow::results)
            .means("Every result, oldest first."));
    return List.copyOf(columns);
  }

  private static Lead lead(String question, ProfileRow row, Inquiry asked) {
    return Lead.to(question)
        .with("model", row.model())
        .with("discipline", row.discipline())
        .under(Filter.given(asked));
  }
}
