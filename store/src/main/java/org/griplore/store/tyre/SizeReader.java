package org.griplore.store.tyre;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads size designations; what a mark means depends on where it stands. */
final class SizeReader {
  /** RF inside the structure is a run-flat; behind the rim diameter it is extra load. */
  private static final String STRUCTURE = "(?<structure>ZRF|RF|ZR|R|D|B|-)";

  private static final String SERVICE =
      "(?:\\s*(?<open>\\()?(?<load>\\d{2,3})(?:/(?<dual>\\d{2,3}))?\\s?(?<speed>[B-HJ-NP-WY])\\)?)?";
  private static final String LOAD_WORDS = "XL|RF|REINF(?:ORCED)?|EXTRA\\s?LOAD";

  private static final Pattern METRIC =
      Pattern.compile(
          "(?<![\\w./])(?<prefix>LT|HL|P|T)?\\s?(?<width>[1-3]\\d{2})(?:/(?<aspect>\\d{2}))?\\s*/?\\s*"
              + STRUCTURE
              + "\\s?(?<rim>1\\d(?:\\.5)?|2\\d(?:\\.5)?)(?<commercial>C)?"
              + "(?:\\s?(?<before>"
              + LOAD_WORDS
              + ")\\b)?"
              + SERVICE
              + "(?:\\s*(?<after>"
              + LOAD_WORDS
              + ")\\b)?(?![\\d/])");

  private static final Pattern FLOTATION =
      Pattern.compile(
          "(?<![\\w./])(?<diameter>\\d{2}(?:\\.\\d{1,2})?)\\s?X\\s?(?<width>\\d{1,2}(?:\\.\\d{1,2})?)\\s*"
              + "(?<structure>R|D|B|-)\\s?(?<rim>1\\d|2\\d)(?:LT)?"
              + SERVICE
              + "(?![\\d/])");

  private SizeReader() {}

  static Optional<TyreSize> whole(String text) {
    String upper = upper(text).strip();
    Matcher metric = METRIC.matcher(upper);
    if (metric.find() && isOnlyMarks(upper, metric)) {
      return Optional.of(metric(metric, upper));
    }
    Matcher flotation = FLOTATION.matcher(upper);
    return flotation.matches() ? Optional.of(flotation(flotation)) : Optional.empty();
  }

  /** Winter marks may follow a designation; anything else means that it is not one. */
  private static boolean isOnlyMarks(String text, Matcher size) {
    return size.start() == 0
        && text.substring(size.end()).replaceAll("M\\s?[+&]\\s?S|3PMSF|[,\\s]", "").isEmpty();
  }

  static Optional<TyreSize> first(String text) {
    String upper = upper(text);
    Matcher metric = METRIC.matcher(upper);
    if (metric.find()) {
      return Optional.of(metric(metric, upper));
    }
    Matcher flotation = FLOTATION.matcher(upper);
    return flotation.find() ? Optional.of(flotation(flotation)) : Optional.empty();
  }

  private static String upper(String text) {
    return text.replace('\u00a0', ' ')
        .replace('\u202f', ' ')
        .replace('\u00d7', 'x')
        .toUpperCase(Locale.ROOT);
  }

  private static TyreSize metric(Matcher found, String text) {
    String tail = text.substring(found.end());
    boolean laterXl = tail.matches("\\s*,?\\s*(" + LOAD_WORDS + ")\\b.*");
    return new TyreSize(
        found.group("prefix") == null ? "" : found.group("prefix"),
        Double.parseDouble(found.group("width")),
        number(found, "aspect"),
        structure(found),
        Double.parseDouble(found.group("rim")),
        found.group("commercial") != null,
        number(found, "load"),
        number(found, "dual"),
        speed(found),
        found.group("open") != null,
        found.group("before") != null || found.group("after") != null || laterXl,
        null);
  }

  private static TyreSize flotation(Matcher found) {
    return new TyreSize(
        "",
        Double.parseDouble(found.group("width")) * 25.4,
        null,
        structure(found),
        Double.parseDouble(found.group("rim")),
        false,
        number(found, "load"),
        number(found, "dual"),
        speed(found),
        found.group("open") != null,
        false,
        Double.parseDouble(found.group("diameter")));
  }

  private static String structure(Matcher found) {
    return found.group("structure").equals("-") ? "D" : found.group("structure");
  }

  private static SpeedSymbol speed(Matcher found) {
    return found.group("speed") == null ? null : SpeedSymbol.of(found.group("speed")).orElseThrow();
  }

  private static Integer number(Matcher found, String group) {
    return found.group(group) == null ? null : Integer.valueOf(found.group(group));
  }
}
