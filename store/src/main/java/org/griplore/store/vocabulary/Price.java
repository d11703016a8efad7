package org.griplore.store.vocabulary;

import java.util.Arrays;
import java.util.Objects;
import java.util.Optional;

/**
 * What a tyre cost on a day: a fact of that day and size, never a performance.
 *
 * @param amount above 0, in {@code currency}
 * @param currency ISO 4217 code ({@code EUR}); {@code currency} where none is stated
 * @param day when; null when not stated
 * @param per one tyre or a set of four
 * @param size the size it was asked for; null where it is the entry's
 * @param shop where; null when not stated
 * @param cell where it stands; null when it was entered by hand
 */
public record Price(
    double amount, String currency, TestDate day, Per per, String size, String shop, Cell cell) {
  /** What the amount buys. */
  public enum Per {
    TYRE("tyre"),
    SET("set");

    private final String key;

    Per(String key) {
      this.key = key;
    }

    /** The word used in files, options and answers. */
    public String key() {
      return key;
    }

    /** The one with this word. */
    public static Optional<Per> ofKey(String key) {
      return Arrays.stream(values()).filter(value -> value.key.equals(key)).findFirst();
    }
  }

  /** Checks the amount. */
  public Price {
    Objects.requireNonNull(currency);
    Objects.requireNonNull(per);
    if (!(amount > 0) || Double.isInfinite(amount)) {
      throw new IllegalArgumentException("a price is above 0: " + amount);
    }
  }
}
