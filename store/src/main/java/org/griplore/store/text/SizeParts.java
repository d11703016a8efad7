package org.griplore.store.text;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What the index filters a tyre size by.
 *
 * @param key the designation without load index and speed symbol, one way of writing for all
 * @param rim rim diameter code, inch
 * @param width nominal section width, mm
 */
record SizeParts(String key, int rim, int width) {
  private static final Pattern METRIC =
      Pattern.compile("(\\d{3})\\s*/\\s*(\\d{2,3})\\s*(?:ZR|R|B|D|-)\\s*F?\\s*(\\d{2})(?![\\d.,])");

  /** The parts of a metric size; empty for other forms, which are filtered by their text alone. */
  static Optional<SizeParts> of(String size) {
    Matcher parts = METRIC.matcher(size.toUpperCase(Locale.ROOT));
    if (!parts.find()) {
      return Optional.empty();
    }
    String key = parts.group(1) + "/" + parts.group(2) + " R" + parts.group(3);
    return Optional.of(
        new SizeParts(key, Integer.parseInt(parts.group(3)), Integer.parseInt(parts.group(1))));
  }
}
