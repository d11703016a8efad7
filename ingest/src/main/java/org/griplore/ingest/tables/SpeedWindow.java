package org.griplore.ingest.tables;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Speeds between which a set was braked, as a header names them: {@code 80-20}, {@code 100 to 0
 * km/h}, {@code from 100 km/h}, {@code 60-0 mph}.
 *
 * @param fromKmh initial speed, km/h
 * @param toKmh final speed, km/h
 * @param text the words that name them
 */
public record SpeedWindow(double fromKmh, double toKmh, String text) {
  private static final double KMH_PER_MPH = 1.609344;
  private static final Pattern BOTH =
      Pattern.compile(
          "(?<![\\d.,/])(?<from>\\d{1,3})\\s*(?:km/h|kmh|kph|mph)?\\s*"
              + "(?:-|\u2013|\u2014|\u2192|->|=>|/|\\bto\\b|\\bbis\\b|\\bauf\\b|\\b\u00e0\\b|\\btill\\b"
              + "|\\bdo\\b|\\ba\\b|\\bnaar\\b|\\btot\\b|\\btil\\b|\u0434\u043e|\u2192|\u301c|~)\\s*"
              + "(?<to>\\d{1,3})(?![\\d.,/])\\s*(?<unit>mph|km/h|kmh|kph|km/st)?",
          Pattern.CASE_INSENSITIVE);
  private static final Pattern FROM =
      Pattern.compile(
          "(?:(?:from|ab|aus|de|depuis|fr\u00e5n|@|\u0441)\\s*)?(?<![\\d.,/-])(?<from>\\d{2,3})\\s*(?<unit>km/h|kmh|kph|mph|km/st)",
          Pattern.CASE_INSENSITIVE);

  /** The speeds that a text names. */
  public static Optional<SpeedWindow> in(String text) {
    Matcher both = BOTH.matcher(text);
    while (both.find()) {
      double from = Double.parseDouble(both.group("from"));
      double to = Double.parseDouble(both.group("to"));
      if (from > to && from >= 15 && from <= 200) {
        return Optional.of(of(from, to, both.group("unit"), both.group()));
      }
    }
    Matcher from = FROM.matcher(text);
    if (from.find()) {
      double speed = Double.parseDouble(from.group("from"));
      if (speed >= 15 && speed <= 200) {
        return Optional.of(of(speed, 0, from.group("unit"), from.group()));
      }
    }
    return Optional.empty();
  }

  private static SpeedWindow of(double from, double to, String unit, String text) {
    double factor = unit != null && unit.equalsIgnoreCase("mph") ? KMH_PER_MPH : 1;
    return new SpeedWindow(from * factor, to * factor, text.strip());
  }

  /** As written in answers: {@code 80-20}. */
  @Override
  public String toString() {
    return plain(fromKmh) + "-" + plain(toKmh);
  }

  private static String plain(double speed) {
    double tenth = Math.round(speed * 10) / 10.0;
    return tenth == Math.rint(tenth) ? String.valueOf((long) tenth) : String.valueOf(tenth);
  }
}
