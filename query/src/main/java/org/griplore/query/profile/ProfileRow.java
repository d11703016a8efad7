package org.griplore.query.profile;

import java.util.List;
import org.griplore.query.answer.Wording;

/**
 * A model in one discipline.
 *
 * @param model full name
 * @param discipline catalogue key
 * @param effect difference to the mean of the models that tests connect with it, plus is better;
 *     null where none can be estimated, as for {@code overall}
 * @param se its standard error
 * @param low lower end of the 95 % interval
 * @param high upper end
 * @param unit {@code %} or the discipline's unit; null without an effect
 * @param logEffect the natural log of the ratio, for ratio disciplines
 * @param logSe its standard error
 * @param tests tests with a result
 * @param bestPlace best place; null when there is none
 * @param medianPlace median place
 * @param firstYear year of the first dated test; null when none is dated
 * @param lastYear year of the last
 * @param results every result, oldest first
 */
public record ProfileRow(
    String model,
    String discipline,
    Double effect,
    Double se,
    Double low,
    Double high,
    String unit,
    Double logEffect,
    Double logSe,
    int tests,
    Integer bestPlace,
    Double medianPlace,
    Integer firstYear,
    Integer lastYear,
    List<ProfileResult> results) {
  /** How it stands in its one discipline, for a sentence. */
  String told() {
    return Wording.difference(effect, unit) + Wording.interval(low, high, 1);
  }

  /** Whether the interval lies above the mean (1), below it (-1) or holds it (0). */
  public int side() {
    if (low != null && low > 0) {
      return 1;
    }
    return high != null && high < 0 ? -1 : 0;
  }
}
