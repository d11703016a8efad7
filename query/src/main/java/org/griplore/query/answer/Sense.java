package org.griplore.query.answer;

import java.util.Locale;
import org.griplore.store.vocabulary.Direction;

/**
 * What a column's figures mean.
 *
 * @param unit the unit's symbol; null where there is none, or where each row has its own
 * @param unitKey key of the column that tells each row's unit; null where no row has its own
 * @param better which way is better; null where neither is
 * @param meaning what it measures, in one plain sentence; empty until it is said
 */
public record Sense(String unit, String unitKey, Direction better, String meaning) {
  /** What a format says of its own: in a difference plus is better. */
  static Sense of(Format format) {
    return new Sense(null, null, format == Format.DELTA ? Direction.HIGH : null, "");
  }

  /** The better direction in a word: {@code high} or {@code low}; null where neither is. */
  public String betterWord() {
    return better == null ? null : better.name().toLowerCase(Locale.ROOT);
  }
}
