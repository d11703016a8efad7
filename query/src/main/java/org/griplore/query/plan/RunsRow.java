package org.griplore.query.plan;

import java.util.List;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Format;
import org.griplore.store.vocabulary.Direction;

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
        Column.number("difference", "Difference", Format.NUMBER, 2, RunsRow::difference)
            .in(unit)
            .means("The true difference to be seen."),
        Column.<RunsRow>of("unit", "in", Format.UNIT, RunsRow::unit)
            .means("Unit of difference and scatter.")
            .asDetail(),
        Column.number("cv", "Scatter", Format.NUMBER, 2, RunsRow::cv)
            .in(unit)
            .better(Direction.LOW)
            .means(
                "Scatter of the runs of one set: coefficient of variation, or standard deviation in the unit."),
        Column.number("cvLow", "from", Format.NUMBER, 2, RunsRow::cvLow)
            .in(unit)
            .means("Lower end of its 95 % interval."),
        Column.number("cvHigh", "to", Format.NUMBER, 2, RunsRow::cvHigh)
            .in(unit)
            .means("Upper end of its 95 % interval."),
        Column.<RunsRow>of("cvSource", "Source", Format.TEXT, RunsRow::cvSource)
            .means("Where the scatter is taken from.")
            .asDetail(),
        Column.number("power", "Power", Format.CHANCE, 2, RunsRow::power)
            .better(Direction.HIGH)
            .means("Chance of seeing the difference that was asked for, from 0 to 1."),
        Column.of("runs", "Runs of each set", Format.COUNT, RunsRow::runs)
            .means("The fewest runs of each set with at least this chance."),
        Column.number("reached", "Power reached", Format.CHANCE, 3, RunsRow::reached)
            .better(Direction.HIGH)
            .means("The chance that so many runs reach."),
        Column.of("setRuns", "Runs in all", Format.COUNT, RunsRow::setRuns)
            .means("Runs of all sets in the order suggested."),
        Column.<RunsRow>of("order", "Order", Format.TEXT, RunsRow::order)
            .means("The order of sets suggested, with the reference set.")
            .asDetail());
  }
}
