package org.griplore.query.dependence;

import java.util.List;
import java.util.function.Function;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Format;
import org.griplore.store.vocabulary.Direction;

/** What is told of each moderator. */
final class DependsColumns {
  private DependsColumns() {}

  static List<Column<DependsRow>> of() {
    return List.of(
        Column.<DependsRow>of("moderator", "Moderator", Format.TEXT, DependsRow::moderator)
            .means("What the contrast may hang on: rim, width, mass, temperature or year.")
            .asDetail(),
        Column.of("measuredAs", "Over", Format.TEXT, DependsRow::measuredAs)
            .means("The same in words."),
        number("slope", "Slope", Format.DELTA, 2, DependsRow::slope)
            .inUnitOf("unit")
            .better(null)
            .means(
                "Change of the contrast; plus: with more of it the first side gains on the second."),
        Column.of("unit", "in", Format.UNIT, DependsRow::unit).means("Unit of the slope."),
        number("se", "SE", Format.NUMBER, 2, DependsRow::se)
            .inUnitOf("unit")
            .better(Direction.LOW)
            .means("Standard error of the slope."),
        number("low", "from", Format.DELTA, 2, DependsRow::low)
            .inUnitOf("unit")
            .better(null)
            .means("Lower end of its 95 % interval."),
        number("high", "to", Format.DELTA, 2, DependsRow::high)
            .inUnitOf("unit")
            .better(null)
            .means("Upper end of its 95 % interval."),
        number("p", "P", Format.CHANCE, 3, DependsRow::p)
            .means("Probability of so large a slope by chance."),
        Column.of("tests", "Tests", Format.COUNT, DependsRow::tests)
            .means("Tests with both sides that state the moderator."),
        number("sameModels", "Same models", Format.DELTA, 2, DependsRow::sameModels)
            .inUnitOf("unit")
            .better(null)
            .means("The slope with each model compared with itself only."),
        number("sameModelsLow", "from", Format.DELTA, 2, DependsRow::sameModelsLow)
            .inUnitOf("unit")
            .better(null)
            .means("Lower end of its 95 % interval."),
        number("sameModelsHigh", "to", Format.DELTA, 2, DependsRow::sameModelsHigh)
            .inUnitOf("unit")
            .better(null)
            .means("Upper end of its 95 % interval."),
        number("lowest", "Lowest", Format.NUMBER, 0, DependsRow::lowest)
            .means("The lowest value of the moderator in those tests.")
            .asDetail(),
        number("highest", "Highest", Format.NUMBER, 0, DependsRow::highest)
            .means("The highest.")
            .asDetail(),
        Column.of("verdict", "In words", Format.TEXT, DependsRow::verdict)
            .means("The row in words."),
        number("df", "df", Format.NUMBER, 1, DependsRow::df)
            .means("Degrees of freedom that the interval rests on.")
            .asDetail(),
        number("at", "Mean", Format.NUMBER, 1, DependsRow::at)
            .means("The weighted mean of the moderator in those tests.")
            .asDetail(),
        number("contrast", "Contrast there", Format.DELTA, 1, DependsRow::contrast)
            .means("The contrast at that mean, plus: the first side is better.")
            .asDetail(),
        number("contrastLow", "from", Format.DELTA, 1, DependsRow::contrastLow)
            .means("Lower end of its 95 % interval.")
            .asDetail(),
        number("contrastHigh", "to", Format.DELTA, 1, DependsRow::contrastHigh)
            .means("Upper end of its 95 % interval.")
            .asDetail(),
        number("logSlope", "Log", Format.NUMBER, 4, DependsRow::logSlope)
            .means("Natural log behind a slope in per cent.")
            .asDetail(),
        number("logSe", "Log SE", Format.NUMBER, 4, DependsRow::logSe)
            .means("Standard error of that log.")
            .asDetail(),
        Column.rows("points", "Tests", points(), DependsRow::points).means("The tests."));
  }

  private static List<Column<ContrastPoint>> points() {
    return List.of(
        Column.of("test", "Test", Format.TEST, ContrastPoint::test),
        Column.of("date", "Date", Format.DATE, ContrastPoint::date),
        Column.number("at", "At", Format.NUMBER, 1, ContrastPoint::at)
            .means("The test's value of the moderator."),
        Column.number("difference", "Contrast", Format.DELTA, 1, ContrastPoint::difference)
            .means("The contrast in the test, plus: the first side is better."),
        Column.of("first", "Tyres first", Format.COUNT, ContrastPoint::first)
            .means("Tyres of the first side."),
        Column.of("second", "second", Format.COUNT, ContrastPoint::second)
            .means("Tyres of the second side."),
        Column.<ContrastPoint>number("weight", "Weight", Format.NUMBER, 2, ContrastPoint::weight)
            .means("Weight of the test in the fit.")
            .asDetail(),
        Column.of("source", "Source", Format.COUNT, ContrastPoint::source)
            .means("Number of the report among the sources."));
  }

  private static Column<DependsRow> number(
      String key, String label, Format format, int decimals, Function<DependsRow, Object> value) {
    return Column.number(key, label, format, decimals, value);
  }
}
