package org.griplore.store.vocabulary;

import java.time.Instant;
import java.util.Arrays;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/**
 * What was decided on two tests that look like one told twice. The newest decision on a pair
 * stands.
 *
 * @param test key of the test that comes first in the order of keys
 * @param other key of the other
 * @param verdict how
 * @param decidedAt when
 * @param reason why, in the user's words; may be empty
 */
public record TestDecision(
    String test, String other, Verdict verdict, Instant decidedAt, String reason) {
  /** What two tests are. */
  public enum Verdict {
    /** One test that was told twice. */
    SAME,
    /** Two tests. */
    APART,
    /** Not decided any more. */
    OPEN;

    /** The word used in files and stored. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }

    /** The verdict with this word. */
    public static Optional<Verdict> ofWord(String word) {
      return Arrays.stream(values()).filter(value -> value.word().equals(word)).findFirst();
    }
  }

  /** Puts the keys in their order. */
  public TestDecision {
    Objects.requireNonNull(verdict);
    Objects.requireNonNull(decidedAt);
    Objects.requireNonNull(reason);
    if (test.equals(other)) {
      throw new IllegalArgumentException("two tests differ: " + test);
    }
    if (test.compareTo(other) > 0) {
      String first = other;
      other = test;
      test = first;
    }
  }
}
