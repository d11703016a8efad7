package org.griplore.query.discipline;

import java.util.Optional;
import org.griplore.query.answer.Wording;
import org.griplore.query.network.Estimate;
import org.griplore.query.network.Removal;
import org.griplore.query.statistics.Interval;

/**
 * What a difference hangs on most: the test, source or model without which it would move farthest.
 *
 * @param kind {@code test}, {@code source} or {@code model}
 * @param name the test's key, the source's or model's name
 * @param without the difference without it, in the unit shown; null when nothing would connect the
 *     two
 * @param change how far it would move, in the unit shown; null with {@code without}
 * @param low lower end of the 95 % interval without it; null where there is none
 * @param high upper end
 * @param sentenceChanges whether it would read differently: better, worse or not told from zero
 */
public record StrongestRemoval(
    String kind,
    String name,
    Double without,
    Double change,
    Double low,
    Double high,
    boolean sentenceChanges) {

  static StrongestRemoval of(String kind, String name, Removal removal, ComparisonScale scale) {
    Optional<Estimate> after = removal.after();
    Optional<Interval> interval = after.flatMap(a -> a.interval(Difference.LEVEL));
    Double without = after.map(a -> scale.shown(a.value())).orElse(null);
    return new StrongestRemoval(
        kind,
        name,
        without,
        without == null ? null : (Double) (without - scale.shown(removal.before().value())),
        scale.shownLow(interval),
        scale.shownHigh(interval),
        verdict(Optional.of(removal.before())) != verdict(after));
  }

  /** Above zero, below it, or not told from it; 2 where nothing is left. */
  private static int verdict(Optional<Estimate> estimate) {
    if (estimate.isEmpty()) {
      return 2;
    }
    Optional<Interval> interval = estimate.get().interval(Difference.LEVEL);
    return interval.isEmpty() || interval.get().contains(0) ? 0 : interval.get().low() > 0 ? 1 : -1;
  }

  /** A sentence, like "Without gq-2018-1 it could not be told from zero (+0.8 %)." */
  public String words(String unit) {
    if (without == null) {
      return "Without " + name + " nothing would connect the two.";
    }
    String figure = Wording.difference(without, unit);
    if (!sentenceChanges) {
      return "It hangs most on " + kind + " " + name + ": " + figure + " without it.";
    }
    if (low == null || low <= 0 && high >= 0) {
      return "Without " + name + " it could not be told from zero (" + figure + ").";
    }
    return "Without "
        + name
        + " it would be "
        + (low > 0 ? "better" : "worse")
        + " ("
        + figure
        + ").";
  }
}
