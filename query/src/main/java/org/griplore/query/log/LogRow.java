package org.griplore.query.log;

import java.util.List;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Format;

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
          Column.of("sequence", "Place", Format.COUNT, LogRow::sequence),
          Column.of("tyre", "Tyre", Format.TEXT, LogRow::tyre),
          Column.of("role", "Role", Format.TEXT, LogRow::role),
          Column.of("counted", "Runs", Format.COUNT, LogRow::counted),
          Column.number("mean", "Mean", Format.NUMBER, 3, LogRow::mean),
          Column.of("unit", "Unit", Format.TEXT, LogRow::unit),
          Column.number("variation", "CV, %", Format.NUMBER, 2, LogRow::variationPerCent),
          Column.<LogRow>number(
                  "deviation", "Standard deviation", Format.NUMBER, 3, LogRow::deviation)
              .asDetail(),
          Column.number("reference", "Reference there", Format.NUMBER, 3, LogRow::reference),
          Column.<LogRow>of(
                  "referenceWords", "Reference made of", Format.TEXT, LogRow::referenceWords)
              .asDetail(),
          Column.number("difference", "Difference", Format.DELTA, 2, LogRow::difference),
          Column.number("error", "Standard error", Format.NUMBER, 2, LogRow::error),
          Column.of("differenceUnit", "in", Format.TEXT, LogRow::differenceUnit),
          Column.<LogRow>number(
                  "logDifference", "Log difference", Format.NUMBER, 4, LogRow::logDifference)
              .asDetail(),
          Column.<LogRow>number("logSe", "Log error", Format.NUMBER, 4, LogRow::logSe).asDetail(),
          Column.of("standing", "Standing", Format.TEXT, LogRow::standing),
          Column.of("reasons", "Limits broken", Format.TEXTS, row -> told(row.reasons())),
          Column.<LogRow>of("file", "File", Format.TEXT, LogRow::file).asDetail(),
          Column.rows("runs", "Runs", LogRun.COLUMNS, LogRow::runs));

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
