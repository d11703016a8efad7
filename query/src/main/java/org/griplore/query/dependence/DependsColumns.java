package org.griplore.query.dependence;

import java.util.List;
import java.util.function.Function;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Format;

/** What is told of each moderator. */
final class DependsColumns {
  private DependsColumns() {}

  static List<Column<DependsRow>> of() {
    return List.of(
        Column.<DependsRow>of("moderator", "Moderator", Format.TEXT, DependsRow::moderator)
            .asDetail(),
        Column.of("measuredAs", "Over", Format.TEXT, DependsRow::measuredAs),
        number("slope", "Slope", Format.DELTA, 2, DependsRow::slope),
        Column.of("unit", "in", Format.TEXT, DependsRow::unit),
        number("se", "SE", Format.NUMBER, 2, DependsRow::se),
        number("low", "from", Format.DELTA, 2, DependsRow::low),
        number("high", "to", Format.DELTA, 2, DependsRow::high),
        number("p", "P", Format.CHANCE, 3, DependsRow::p),
        Column.of("tests", "Tests", Format.COUNT, DependsRow::tests),
        number("sameModels", "Same models", Format.DELTA, 2, DependsRow::sameModels),
        number("sameModelsLow", "from", Format.DELTA, 2, DependsRow::sameModelsLow),
        number("sameModelsHigh", "to", Format.DELTA, 2, DependsRow::sameModelsHigh),
        number("lowest", "Lowest", Format.NUMBER, 0, DependsRow::lowest).asDetail(),
        number("highest", "Highest", Format.NUMBER, 0, DependsRow::highest).asDetail(),
        Column.of("verdict", "In words", Format.TEXT, DependsRow::verdict),
        number("df", "df", Format.NUMBER, 1, DependsRow::df).asDetail(),
        number("at", "Mean", Format.NUMBER, 1, DependsRow::at).asDetail(),
        number("contrast", "Contrast there", Format.DELTA, 1, DependsRow::contrast).asDetail(),
        number("contrastLow", "from", Format.DELTA, 1, DependsRow::contrastLow).asDetail(),
        number("contrastHigh", "to", Format.DELTA, 1, DependsRow::contrastHigh).asDetail(),
        number("logSlope", "Log", Format.NUMBER, 4, DependsRow::logSlope).asDetail(),
        number("logSe", "Log SE", Format.NUMBER, 4, DependsRow::logSe).asDetail(),
        Column.rows("points", "Tests", points(), DependsRow::points));
  }

  private static List<Column<ContrastPoint>> points() {
    return List.of(
        Column.of("test", "Test", Format.TEST, ContrastPoint::test),
        Column.of("date", "Date", Format.DATE, ContrastPoint::date),
        Column.number("at", "At", Format.NUMBER, 1, ContrastPoint::at),
        Column.number("difference", "Contrast", Format.DELTA, 1, ContrastPoint::difference),
        Column.of("first", "Tyres first", Format.COUNT, ContrastPoint::first),
        Column.of("second", "second", Format.COUNT, ContrastPoint::second),
        Column.<ContrastPoint>number("weight", "Weight", Format.NUMBER, 2, ContrastPoint::weight)
            .asDetail(),
        Column.of("source", "Source", Format.COUNT, ContrastPoint::source));
  }

  private static Column<DependsRow> number(
      String key, String label, Format format, int decimals, Function<DependsRow, Object> value) {
    return Column.number(key, label, format, decimals, value);
  }
}
