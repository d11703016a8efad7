package org.griplore.query.browse;

import java.util.ArrayList;
import java.util.List;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Figure;
import org.griplore.query.answer.Format;
import org.griplore.store.vocabulary.Direction;

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
          Column.number("value", "Value", Format.NUMBER, 2, TestFigure::value)
              .inUnitOf("unit")
              .means("The value as the archive keeps it."),
          Column.of("unit", "Unit", Format.UNIT, TestFigure::unit)
              .means("Unit of value and spread."),
          Column.number("spread", "Spread", Format.NUMBER, 2, TestFigure::spread)
              .inUnitOf("unit")
              .better(Direction.LOW)
              .means("Standard deviation as the report states it."),
          Column.of("runs", "Runs", Format.COUNT, TestFigure::runs).means("Runs behind the value."),
          Column.of("place", "Place", Format.PLACE, TestFigure::place).means("Place in the test."),
          Column.of("basis", "Basis", Format.TEXT, TestFigure::basis)
              .means("Whether the place is published, or computed from totals or values."),
          Column.number("delta", "Difference", Format.DELTA, 1, TestFigure::delta)
              .inUnitOf("deltaUnit")
              .means("Difference to the best or to the reference, plus is better."),
          Column.of("deltaUnit", "in", Format.UNIT, TestFigure::deltaUnit)
              .means("Unit of the difference."),
          Column.<TestFigure>number(
                  "logDifference", "Log difference", Format.NUMBER, 4, TestFigure::logDifference)
              .means("Natural log behind a difference in per cent.")
              .asDetail(),
          Column.of("result", "Result", Format.RESULT, TestFigure::result));

  /** What a table that takes one column for each figure says of it, the value first. */
  static List<Column<TestFigure>> parts(int decimals) {
    List<Column<TestFigure>> parts = new ArrayList<>();
    parts.add(
        Column.number("value", "value", Format.NUMBER, decimals, TestFigure::value)
            .inUnitOf("unit")
            .means("The value as the archive keeps it."));
    parts.add(
        Column.of("place", "place", Format.PLACE, TestFigure::place).means("Place in the test."));
    parts.add(
        Column.number("delta", "difference", Format.DELTA, 1, TestFigure::delta)
            .inUnitOf("deltaUnit")
            .means("Difference to the best or to the reference, plus is better."));
    parts.add(Column.of("result", "result", Format.RESULT, TestFigure::result));
    List<String> shown = parts.stream().map(Column::key).toList();
    COLUMNS.stream()
        .filter(column -> !shown.contains(column.key()))
        .forEach(column -> parts.add(column.asDetail()));
    return List.copyOf(parts);
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
