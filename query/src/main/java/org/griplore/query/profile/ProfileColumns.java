package org.griplore.query.profile;

import java.util.ArrayList;
import java.util.List;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Format;

/** What is told of a model in a discipline. */
final class ProfileColumns {
  private static final List<Column<ProfileResult>> RESULTS =
      List.of(
          Column.of("test", "Test", Format.TEST, ProfileResult::test),
          Column.of("date", "Date", Format.DATE, ProfileResult::date),
          Column.of("size", "Size", Format.TEXT, ProfileResult::size),
          Column.number("value", "Value", Format.NUMBER, 2, ProfileResult::value),
          Column.of("unit", "in", Format.TEXT, ProfileResult::unit),
          Column.of("place", "Place", Format.PLACE, ProfileResult::place),
          Column.of("field", "Of", Format.COUNT, ProfileResult::field),
          Column.of("basis", "Basis", Format.TEXT, ProfileResult::basis),
          Column.of("source", "Source", Format.COUNT, ProfileResult::source),
          Column.<ProfileResult>of("result", "Result", Format.RESULT, ProfileResult::result)
              .asDetail());

  private ProfileColumns() {}

  /** With the model first where there are several. */
  static List<Column<ProfileRow>> of(boolean several) {
    List<Column<ProfileRow>> columns = new ArrayList<>();
    columns.add(Column.of("discipline", "Discipline", Format.DISCIPLINE, ProfileRow::discipline));
    Column<ProfileRow> model = Column.of("model", "Model", Format.MODEL, ProfileRow::model);
    columns.add(several ? model : model.asDetail());
    columns.add(Column.number("effect", "Against the mean", Format.DELTA, 1, ProfileRow::effect));
    columns.add(Column.of("unit", "in", Format.TEXT, ProfileRow::unit));
    columns.add(Column.<ProfileRow>number("se", "SE", Format.NUMBER, 1, ProfileRow::se).asDetail());
    columns.add(Column.number("low", "from", Format.DELTA, 1, ProfileRow::low));
    columns.add(Column.number("high", "to", Format.DELTA, 1, ProfileRow::high));
    columns.add(Column.of("tests", "Tests", Format.COUNT, ProfileRow::tests));
    columns.add(Column.of("bestPlace", "Best place", Format.PLACE, ProfileRow::bestPlace));
    columns.add(
        Column.number("medianPlace", "Median place", Format.PLACE, 1, ProfileRow::medianPlace));
    columns.add(Column.of("firstYear", "First", Format.YEAR, ProfileRow::firstYear));
    columns.add(Column.of("lastYear", "Last", Format.YEAR, ProfileRow::lastYear));
    columns.add(
        Column.<ProfileRow>number("logEffect", "Log", Format.NUMBER, 4, ProfileRow::logEffect)
            .asDetail());
    columns.add(
        Column.<ProfileRow>number("logSe", "Log SE", Format.NUMBER, 4, ProfileRow::logSe)
            .asDetail());
    columns.add(Column.rows("results", "Results", RESULTS, ProfileRow::results));
    return List.copyOf(columns);
  }
}
