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

  /** A size in one way of writing: {@code 205/55R16 91v} becomes {@code 205/55 R16 91V}. */
  static String normal(String size) {
    String upper = size.strip().toUpperCase(Locale.ROOT);
    Matcher parts = METRIC.matcher(upper);
    if (!parts.lookingAt()) {
      return upper;
    }
    String rest = upper.substring(parts.end()).strip().replaceAll("\\s+", " ");
    return (key(parts) + " " + rest).strip();
  }

  private static String key(Matcher parts) {
    return parts.group(1) + "/" + parts.group(2) + " R" + parts.group(3);
  }

  /** The parts of a metric size; empty for other forms, which are filtered by their text alone. */
  static Optional<SizeParts> of(String size) {
    Matcher parts = METRIC.matcher(size.toUpperCase(Locale.ROOT));
    if (!parts.find()) {
      return Optional.empty();
    }
    return Optional.of(
        new SizeParts(
            key(parts), Integer.parseInt(parts.group(3)), Integer.parseInt(parts.group(1))));
  }
}
