package org.griplore.query.compare;

import java.util.function.BiFunction;
import org.griplore.query.answer.Inquiry;
import org.griplore.query.answer.Lead;
import org.griplore.query.discipline.StrongestRemoval;
import org.griplore.query.evidence.Filter;

/**
 * How one model stands in a discipline. Figures but model, tests and component are null where they
 * could not be estimated.
 *
 * @param model full name
 * @param effect against the mean of the component, plus is better; in {@code unit}
 * @param se its standard error
 * @param low lower end of its 95 % interval for another car, size and day
 * @param high upper end
 * @param runsLow lower end of its 95 % interval for this day's sets and car, by runs alone
 * @param runsHigh upper end
 * @param rankLow the best rank it may have in its component, in a 95 % interval that holds for all
 *     of them at once
 * @param rankHigh the worst
 * @param score P-score: mean certainty of being better than another model of the component
 * @param tests tests it is in
 * @param component models of different components are never compared
 * @param unit {@code %}, the discipline's unit, or {@link #LOG_WORTH}
 * @param logEffect natural log, for ratio disciplines
 * @param logSe its standard error
 * @param hangsOn the test without which it would move most; null where that is not asked
 * @param places what only places tell; null in a standing by values
 */
public record StandingRow(
    String model,
    Double effect,
    Double se,
    Double low,
    Double high,
    Double runsLow,
    Double runsHigh,
    Integer rankLow,
    Integer rankHigh,
    Double score,
    int tests,
    int component,
    String unit,
    Double logEffect,
    Double logSe,
    StrongestRemoval hangsOn,
    ByPlaces places) {
  /** The unit of a standing by places: the log of a model's worth against the mean. */
  public static final String LOG_WORTH = "log worth";

  /** To a question about the row's model in a discipline, under the same filters. */
  static BiFunction<StandingRow, Inquiry, Lead> leadingTo(String question, String discipline) {
    return (row, asked) ->
        Lead.to(question)
            .with("model", row.model())
            .with("discipline", discipline)
            .under(Filter.given(asked));
  }

  /**
   * What a standing by places tells more.
   *
   * @param ahead chance to be placed before an average model of the component, ties aside
   * @param rank its rank in this standing, within the component
   * @param rankByValues its rank in the standing by values, within the component there; null when
   *     it has no values
   */
  public record ByPlaces(double ahead, int rank, Integer rankByValues) {}
}
