package org.griplore.store.vocabulary;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** Which way is better. */
public enum Direction {
  LOW,
  HIGH;

  /** The word used in files and stored. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The direction with this word. */
  public static Optional<Direction> ofWord(String word) {
    return Arrays.stream(values()).filter(value -> value.word().equals(word)).findFirst();
  }

  /** +1 where more is better, -1 where less is: multiplies a difference so that plus is better. */
  public int sign() {
    return this == HIGH ? 1 : -1;
  }
}
