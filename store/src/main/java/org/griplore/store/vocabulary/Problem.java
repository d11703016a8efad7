package org.griplore.store.vocabulary;

import java.util.Objects;

/**
 * One thing that was not as it should be: the place, what stood there, what was expected.
 *
 * @param where the place, for example {@code results.csv, row 7, column 3} or an option's name
 * @param found the text found there; empty when something is missing
 * @param expected what would have been understood, in words
 */
public record Problem(String where, String found, String expected) {
  /** Checks that no part is null. */
  public Problem {
    Objects.requireNonNull(where);
    Objects.requireNonNull(found);
    Objects.requireNonNull(expected);
  }
}
