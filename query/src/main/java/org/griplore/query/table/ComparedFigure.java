package org.griplore.query.table;

import java.util.List;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Figure;
import org.griplore.query.answer.Format;

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
 * @param low lower end of the difference's 95 % interval; null for the reference itself
 * @param high upper end
 * @param predictionLow lower end of the 95 % interval for the difference in a new test
 * @param predictionHigh upper end
 * @param place among the tyres of the table
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
        Column.number("value", "value", Format.NUMBER, decimals, ComparedFigure::value),
        Column.number("measured", "as measured", Format.NUMBER, decimals, ComparedFigure::measured),
        Column.number("delta", "difference, " + deltaUnit, Format.DELTA, 1, ComparedFigure::delta),
        Column.number("low", "from", Format.DELTA, 1, ComparedFigure::low),
        Column.number("high", "to", Format.DELTA, 1, ComparedFigure::high),
        Column.of("place", "place", Format.PLACE, ComparedFigure::place),
        Column.of("tests", "tests", Format.COUNT, ComparedFigure::tests),
        Column.of("basis", "basis", Format.TEXT, ComparedFigure::basis),
        Column.of("footnotes", "notes", Format.TEXTS, ComparedFigure::footnotes));
  }

  /** The same cell with footnotes. */
  ComparedFigure withFootnotes(List<Integer> numbers) {
    return new ComparedFigure(
        discipline,
        value,
        unit,
        measured,
        delta,
        deltaUnit,
        low,
        high,
        predictionLow,
        predictionHigh,
        place,
        tests,
        basis,
        to,
        logDelta,
        logSe,
        result,
        List.copyOf(numbers));
  }

  /** An expected value is told from a measured one. */
  @Override
  public String mark() {
    return basis.equals(FigureBasis.EXPECTED.key()) ? "\u2248\u00a0" : "";
  }

  static ComparedFigure none(String discipline) {
    return new ComparedFigure(
        discipline,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        0,
        FigureBasis.NONE.key(),
        null,
        null,
        null,
        null,
        List.of());
  }
}
