package org.griplore.query.log;

import java.util.List;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Format;
import org.griplore.store.vocabulary.Direction;

/**
 * One set of tyres at its place in the order of the day.
 *
 * @param discipline catalogue key
 * @param sequence the log's number of the place
 * @param tyre the model
 * @param role {@code reference} or {@code candidate}
 * @param counted how many runs count
 * @param mean their mean in {@code unit}; null when none counts or the log was not reduced
 * @param unit symbol; null likewise
 * @param variation coefficient of variation of a ratio scale; null for fewer than two runs
 * @param deviation standard deviation in {@code unit}; null likewise
 * @param reference the reference at a candidate's place; null without one
 * @param referenceWords how it is made up; null without one
 * @param difference to that reference, plus is better, in {@code differenceUnit}; null without one
 * @param differenceUnit {@code %} of what was averaged, or the unit
 * @param error standard error of the difference; null when unknown
 * @param logDifference natural logarithm of the ratio, plus is better; null for differences
 * @param logSe its standard error
 * @param standing whether it stands under the limits, with the consequence
 * @param reasons the limits that were broken
 * @param file the log's file
 * @param runs in the log's order
 */
public record LogRow(
    String discipline,
    int sequence,
    String tyre,
    String role,
    int counted,
    Double mean,
    String unit,
    Double variation,
    Double deviation,
    Double reference,
    String referenceWords,
    Double difference,
    String differenceUnit,
    Double error,
    Double logDifference,
    Double logSe,
    String standing,
    List<String> reasons,
    String file,
    List<LogRun> runs) {
  static final List<Column<LogRow>> COLUMNS =
      List.of(
          Column.of("discipline", "Discipline", Format.DISCIPLINE, LogRow::discipline),
          Column.of("sequence", "Sequence", Format.COUNT, LogRow::sequence)
              .means("The set in the order of the day."),
          Column.of("tyre", "Tyre", Format.TEXT, LogRow::tyre)
              .means("The tyre as the log names it."),
          Column.of("role", "Role", Format.TEXT, LogRow::role)
              .means("Whether the set is the reference or a candidate."),
          Column.of("counted", "Runs", Format.COUNT, LogRow::counted)
              .means("How many of its runs count."),
          Column.number("mean", "Mean", Format.NUMBER, 3, LogRow::mean)
              .inUnitOf("unit")
              .means("Mean of the runs that count."),
          Column.of("unit", "Unit", Format.UNIT, LogRow::unit).means("Unit of the mean."),
          Column.number("variation", "CV", Format.NUMBER, 2, LogRow::variationPerCent)
              .in("%")
              .better(Direction.LOW)
              .means("Coefficient of variation of the runs that count."),
          Column.<LogRow>number(
                  "deviation", "Standard deviation", Format.NUMBER, 3, LogRow::deviation)
              .inUnitOf("unit")
              .better(Direction.LOW)
              .means("Standard deviation of the runs that count.")
              .asDetail(),
          Column.number("reference", "Reference there", Format.NUMBER, 3, LogRow::reference)
              .inUnitOf("unit")
              .means("The reference tyre at this set's moment of the day."),
          Column.<LogRow>of(
                  "referenceWords", "Reference made of", Format.TEXT, LogRow::referenceWords)
              .means("How that reference is made up of its measurements.")
              .asDetail(),
          Column.number("difference", "Difference", Format.DELTA, 2, LogRow::difference)
              .inUnitOf("differenceUnit")
              .means("Candidate against the reference at its moment, plus is better."),
          Column.number("error", "Standard error", Format.NUMBER, 2, LogRow::error)
              .inUnitOf("differenceUnit")
              .better(Direction.LOW)
              .means("Standard error of the difference."),
          Column.of("differenceUnit", "in", Format.UNIT, LogRow::differenceUnit)
              .means("Unit of the difference and its error."),
          Column.<LogRow>number(
                  "logDifference", "Log difference", Format.NUMBER, 4, LogRow::logDifference)
              .means("Natural log of the ratio behind a difference in per cent, plus is better.")
              .asDetail(),
          Column.<LogRow>number("logSe", "Log error", Format.NUMBER, 4, LogRow::logSe)
              .means("Standard error of that log.")
              .asDetail(),
          Column.of("standing", "Standing", Format.TEXT, LogRow::standing)
              .means("Whether the set stands under the limits, with the consequence."),
          Column.<LogRow>of("reasons", "Limits broken", Format.TEXTS, row -> told(row.reasons()))
              .means("The limits that were broken."),
          Column.<LogRow>of("file", "File", Format.TEXT, LogRow::file)
              .means("The log's file.")
              .asDetail(),
          Column.rows("runs", "Runs", LogRun.COLUMNS, LogRow::runs)
              .means("The runs of the set in the order of the log."));

  private static List<String> told(List<String> sentences) {
    return sentences.isEmpty() ? null : sentences;
  }

  /** The coefficient of variation in per cent. */
  public Double variationPerCent() {
    return variation == null ? null : (Double) (100 * variation);
  }

  /** Whether it is the reference set. */
  public boolean isReference() {
    return role.equals("reference");
  }
}
