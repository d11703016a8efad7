package org.griplore.query.plan;

import java.util.List;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Format;

/**
 * The runs that one difference needs.
 *
 * @param unit {@code %}, or the unit of difference and scatter
 * @param power the power asked for
 * @param runs runs of each set, the fewest with at least this power
 * @param reached the power of so many runs
 * @param setRuns runs of all sets in the order suggested
 */
public record RunsRow(
    String discipline,
    double difference,
    String unit,
    double cv,
    Double cvLow,
    Double cvHigh,
    String cvSource,
    double power,
    int runs,
    double reached,
    int setRuns,
    String order) {
  static List<Column<RunsRow>> columns(String unit) {
    return List.of(
        Column.<RunsRow>of("discipline", "Discipline", Format.DISCIPLINE, RunsRow::discipline)
            .asDetail(),
        Column.number("difference", "Difference, " + unit, Format.NUMBER, 2, RunsRow::difference),
        Column.<RunsRow>of("unit", "in", Format.TEXT, RunsRow::unit).asDetail(),
        Column.number("cv", "Scatter, " + unit, Format.NUMBER, 2, RunsRow::cv),
        Column.number("cvLow", "from", Format.NUMBER, 2, RunsRow::cvLow),
        Column.number("cvHigh", "to", Format.NUMBER, 2, RunsRow::cvHigh),
        Column.<RunsRow>of("cvSource", "Source", Format.TEXT, RunsRow::cvSource).asDetail(),
        Column.number("power", "Power", Format.CHANCE, 2, RunsRow::power),
        Column.of("runs", "Runs of each set", Format.COUNT, RunsRow::runs),
        Column.number("reached", "Power reached", Format.CHANCE, 3, RunsRow::reached),
        Column.of("setRuns", "Runs in all", Format.COUNT, RunsRow::setRuns),
        Column.<RunsRow>of("order", "Order", Format.TEXT, RunsRow::order).asDetail());
  }
}
