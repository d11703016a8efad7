package org.griplore.ingest.tables;

import java.util.Locale;

/**
 * Something that speaks for or against a reading.
 *
 * @param points what it weighs; below 0 it speaks against
 * @param words what it is, in words
 */
public record ReadingReason(double points, String words) {
  /** The points and the words: {@code +30 tyres' names below "Tyre"}. */
  @Override
  public String toString() {
    return String.format(Locale.ROOT, "%+.0f %s", points, words);
  }
}
