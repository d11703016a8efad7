package org.griplore.query.browse;

import java.util.List;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Figure;
import org.griplore.query.answer.Format;

/**
 * One figure of a test.
 *
 * @param discipline catalogue key
 * @param value null when only a place is known
 * @param unit symbol; null without a value
 * @param spread null when not stated
 * @param runs null when not stated
 * @param place null when neither published nor computable
 * @param basis how the place was come by; null without one
 * @param delta difference to the best or the reference, plus is better; per cent for ratio
 *     disciplines, else in the unit; null when there is nothing to compare
 * @param deltaUnit {@code %} or the unit; null without a delta
 * @param logDifference the natural-log difference behind a per-cent delta; else null
 * @param result number of the stored result
 */
public record TestFigure(
    String discipline,
    Double value,
    String unit,
    Double spread,
    Integer runs,
    Integer place,
    String basis,
    Double delta,
    String deltaUnit,
    Double logDifference,
    Long result)
    implements Figure {
  static final List<Column<TestFigure>> COLUMNS =
      List.of(
          Column.of("discipline", "Discipline", Format.DISCIPLINE, TestFigure::discipline),
          Column.number("value", "Value", Format.NUMBER, 2, TestFigure::value),
          Column.of("unit", "Unit", Format.TEXT, TestFigure::unit),
          Column.number("spread", "Spread", Format.NUMBER, 2, TestFigure::spread),
          Column.of("runs", "Runs", Format.COUNT, TestFigure::runs),
          Column.of("place", "Place", Format.PLACE, TestFigure::place),
          Column.of("basis", "Basis", Format.TEXT, TestFigure::basis),
          Column.number("delta", "Difference", Format.DELTA, 1, TestFigure::delta),
          Column.of("deltaUnit", "in", Format.TEXT, TestFigure::deltaUnit),
          Column.<TestFigure>number(
                  "logDifference", "Log difference", Format.NUMBER, 4, TestFigure::logDifference)
              .asDetail(),
          Column.of("result", "Result", Format.RESULT, TestFigure::result));

  /** What a table that takes one column for each figure says of it, the value first. */
  static List<Column<TestFigure>> parts(int decimals) {
    return List.of(
        Column.number("value", "value", Format.NUMBER, decimals, TestFigure::value),
        Column.of("place", "place", Format.PLACE, TestFigure::place),
        Column.number("delta", "difference", Format.DELTA, 1, TestFigure::delta),
        Column.of("result", "result", Format.RESULT, TestFigure::result));
  }

  /** Digits after the point as testers print them. */
  public static int decimals(String unit) {
    if (unit == null) {
      return 0;
    }
    return switch (unit) {
      case "s", "N/kN", "m/s2", "g", "kg" -> 2;
      case "km", "N", "currency", "EUR", "GBP", "SEK", "USD", "CHF" -> 0;
      default -> 1;
    };
  }
}
