package org.griplore.query.table;

import java.util.List;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Figure;
import org.griplore.query.answer.Format;
import org.griplore.store.vocabulary.Direction;

/**
 * A cell of a comparison table. All but the discipline, {@code tests} and {@code basis} may be
 * null.
 *
 * @param discipline catalogue key
 * @param value in {@code unit}, on the level of one like test: what the tyre showed there, or would
 *     show by all that is known of it; null when no like test has such values
 * @param unit symbol; null without a value
 * @param measured mean of the tyre's own values in like tests, as they were measured, in {@code
 *     unit}; null when it is not measured, or in other units
 * @param delta difference to the reference, plus is better, in {@code deltaUnit}
 * @param deltaUnit {@code %} or the unit
 * @param low lower end of the difference's 95 % interval for another car, size and day; null for
 *     the reference itself
 * @param high upper end
 * @param predictionLow lower end of the 95 % interval for the difference in a new test
 * @param predictionHigh upper end
 * @param place among the tyres of the table
 * @param placeLow the best place that the evidence allows, in a 95 % interval that holds for all
 *     tyres of the column at once; null where it cannot be said
 * @param placeHigh the worst
 * @param tests like tests for a measured tyre, else all tests that say something of it
 * @param basis {@code measured}, {@code expected} or {@code none}
 * @param to the tyre that the difference is to; null for the mean
 * @param logDelta natural log behind a difference in per cent
 * @param logSe its standard error
 * @param result number of the stored result where one result is all there is; else null
 * @param footnotes numbers of the footnotes on its tests' conditions and of notes on the tyre in
 *     this discipline
 */
public record ComparedFigure(
    String discipline,
    Double value,
    String unit,
    Double measured,
    Double delta,
    String deltaUnit,
    Double low,
    Double high,
    Double predictionLow,
    Double predictionHigh,
    Integer place,
    Integer placeLow,
    Integer placeHigh,
    int tests,
    String basis,
    String to,
    Double logDelta,
    Double logSe,
    Long result,
    List<Integer> footnotes)
    implements Figure {
  /** What a table that takes one column for each figure says of it, the value first. */
  static List<Column<ComparedFigure>> parts(int decimals, String deltaUnit) {
    return List.of(
        Column.number("value", "value", Format.NUMBER, decimals, ComparedFigure::value)
            .means("The value on the level of one like test."),
        Column.number("measured", "as measured", Format.NUMBER, decimals, ComparedFigure::measured)
            .means("Mean of the tyre's own values in like tests."),
        Column.number("delta", "difference", Format.DELTA, 1, ComparedFigure::delta)
            .in(deltaUnit)
            .means("Difference to the reference, plus is better."),
        Column.number("low", "from", Format.DELTA, 1, ComparedFigure::low)
            .in(deltaUnit)
            .means("Lower end of its 95 % interval for another car, size and day."),
        Column.number("high", "to", Format.DELTA, 1, ComparedFigure::high)
            .in(deltaUnit)
            .means("Upper end of that interval."),
        Column.of("place", "place", Format.PLACE, ComparedFigure::place)
            .better(Direction.LOW)
            .means("Place among the tyres of the table."),
        Column.of("placeLow", "place from", Format.PLACE, ComparedFigure::placeLow)
            .better(Direction.LOW)
            .means(
                "The best place that the evidence allows, for all tyres of the column at once (95 %).")
            .asDetail(),
        Column.of("placeHigh", "to", Format.PLACE, ComparedFigure::placeHigh)
            .better(Direction.LOW)
            .means("The worst place that the evidence allows.")
            .asDetail(),
        Column.of("tests", "tests", Format.COUNT, ComparedFigure::tests)
            .means("Like tests of a measured tyre, else all tests that say something of it."),
        Column.of("basis", "basis", Format.TEXT, ComparedFigure::basis)
            .means("Whether it was measured, is expected, or nothing is known."),
        Column.of("footnotes", "notes", Format.TEXTS, ComparedFigure::footnotes)
            .means("Numbers of the footnotes on it."),
        Column.of("discipline", "discipline", Format.DISCIPLINE, ComparedFigure::discipline)
            .asDetail(),
        Column.of("unit", "in", Format.UNIT, ComparedFigure::unit)
            .means("Unit of the values.")
            .asDetail(),
        Column.of("deltaUnit", "in", Format.UNIT, ComparedFigure::deltaUnit)
            .means("Unit of the difference.")
            .asDetail(),
        Column.number("predictionLow", "from", Format.DELTA, 1, ComparedFigure::predictionLow)
            .in(deltaUnit)
            .means("Lower end of the 95 % interval for the difference in a new test.")
            .asDetail(),
        Column.number("predictionHigh", "to", Format.DELTA, 1, ComparedFigure::predictionHigh)
            .in(deltaUnit)
            .means("Upper end of that interval.")
            .asDetail(),
        Column.of("to", "to", Format.MODEL, ComparedFigure::to)
            .means("The tyre that the difference is to; missing for the mean.")
            .asDetail(),
        Column.number("logDelta", "log", Format.NUMBER, 4, ComparedFigure::logDelta)
            .means("Natural log behind a difference in per cent.")
            .asDetail(),
        Column.number("logSe", "log SE", Format.NUMBER, 4, ComparedFigure::logSe)
            .means("Standard error of that log.")
            .asDetail(),
        Column.of("result", "result", Format.RESULT, ComparedFigure::result).asDetail());
  }

  /** The same cell with footnotes. */
  ComparedFigure withFootnotes(List<Integer> numbers) {
    return new ComparedFigureBuilder()
        .discipline(discipline)
        .value(value)
        .unit(unit)
        .measured(measured)
        .delta(delta)
        .deltaUnit(deltaUnit)
        .low(low)
        .high(high)
        .predictionLow(predictionLow)
        .predictionHigh(predictionHigh)
        .place(place)
        .placeLow(placeLow)
        .placeHigh(placeHigh)
        .tests(tests)
        .basis(basis)
        .to(to)
        .logDelta(logDelta)
        .logSe(logSe)
        .result(result)
        .footnotes(List.copyOf(numbers))
        .build();
  }

  /** An expected value is told from a measured one. */
  @Override
  public String mark() {
    return basis.equals(FigureBasis.EXPECTED.key()) ? "\u2248\u00a0" : "";
  }

  static ComparedFigure none(String discipline) {
    return new ComparedFigureBuilder().discipline(discipline).basis(FigureBasis.NONE.key()).build();
  }
}
