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
  /** What a format says of its own. */
  static Sense of(Format format) {
    return switch (format) {
      case MODEL -> told(null, "The model's full name.");
      case LINE -> told(null, "The line's name, maker first.");
      case TEST -> told(null, "The test's key.");
      case DISCIPLINE -> told(null, "The discipline's key.");
      case DATE -> told(null, "The test's date, as exactly as known.");
      case RESULT -> told(null, "Number of the stored result, which leads to its cell.");
      case UNIT -> told(null, "Its unit.");
      case PLACE -> told(Direction.LOW, "");
      case DELTA -> told(Direction.HIGH, "");
      default -> told(null, "");
    };
  }

  private static Sense told(Direction better, String meaning) {
    return new Sense(null, null, better, meaning);
  }

  /** The better direction in a word: {@code high} or {@code low}; null where neither is. */
  public String betterWord() {
    return better == null ? null : better.name().toLowerCase(Locale.ROOT);
  }
}
