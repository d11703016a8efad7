package org.griplore.store.text;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.griplore.store.tyre.TyreSize;

/**
 * What the index filters a tyre size by.
 *
 * @param spellings the designation as it is written in one way for all, with and without load index
 *     and speed symbol
 * @param rim rim diameter code, inch, without decimals where it has none
 * @param width nominal section width, whole mm
 */
record SizeParts(Set<String> spellings, String rim, String width) {
  /** The parts of a size; empty for a text that is none, which is filtered by its words alone. */
  static Optional<SizeParts> of(String size) {
    return TyreSize.find(size)
        .map(
            read ->
                new SizeParts(
                    Set.copyOf(List.of(read.key(), read.toString())),
                    number(read.rimCode()),
                    Long.toString(Math.round(read.widthMm()))));
  }

  private static String number(double value) {
    return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
  }

  /** How a size asked for stands in the index: without a service description it means any. */
  static String asked(String size) {
    return TyreSize.find(size)
        .map(read -> read.service().isEmpty() ? read.key() : read.toString())
        .orElseGet(() -> unread(size));
  }

  /** How a text that is no size stands in the index. */
  static String unread(String size) {
    return size.strip().toUpperCase(Locale.ROOT);
  }
}
