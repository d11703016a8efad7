package org.griplore.store.vocabulary;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Recognises units as people write them in headers and cells, in several languages. */
public final class UnitWords {
  /**
   * A unit that was recognised.
   *
   * @param unit the unit
   * @param found the text it was recognised by
   * @param assumed whether the text could mean something else (a bare per cent sign)
   */
  public record Recognised(Unit unit, String found, boolean assumed) {}

  private static final Map<String, Unit> SPELLINGS = new LinkedHashMap<>();

  /** Has brackets of its own, often within others. */
  private static final Pattern DECIBEL = Pattern.compile("(?i)\\bdB\\s?\\(A\\)");

  private static final Pattern BRACKETED =
      Pattern.compile("[(\\[]\\s*(?:in\\s+)?([^)\\]]+?)\\s*[)\\]]");
  private static final Pattern AFTER_WORD =
      Pattern.compile("(?:,|\\bin\\b|/)\\s*([^,/\\s][^,]*)$", Pattern.CASE_INSENSITIVE);
  private static final Pattern AFTER_NUMBER =
      Pattern.compile(
          "^[\\s\\u00a0\\u202f]*[-+\\u2212]?[\\d.,'\\u2019\\u00a0\\u202f ]*\\d[\\s\\u00a0\\u202f]*(\\D.*?)\\s*$");

  static {
    for (Unit unit : Unit.values()) {
      put(unit);
    }
    SPELLINGS.remove("");
    put(Unit.METRE, "m", "metre", "metres", "meter", "meters", "mètre", "mètres");
    put(Unit.KILOMETRE, "km", "kilometre", "kilometres", "kilometer", "kilometers");
    put(Unit.FOOT, "ft", "feet", "foot", "pieds");
    put(Unit.YARD, "yd", "yds", "yard", "yards");
    put(Unit.MILE, "mi", "mile", "miles");
    put(Unit.MILLIMETRE, "mm");
    put(Unit.INCH, "in", "inch", "inches", "zoll", "tum", "pouces");
    put(
        Unit.SECOND,
        "s",
        "sec",
        "secs",
        "second",
        "seconds",
        "sek",
        "sek.",
        "sekunden",
        "secondes",
        "sekunder");
    put(Unit.MINUTE, "min", "minutes", "minuten", "minuter");
    put(Unit.METRE_PER_SECOND, "m/s");
    put(Unit.KILOMETRE_PER_HOUR, "km/h", "kph", "kmh", "km/t", "km/tim");
    put(Unit.MILE_PER_HOUR, "mph", "mi/h");
    put(Unit.METRE_PER_SECOND_SQUARED, "m/s2", "m/s²", "m/s^2", "m/sec2", "ms-2", "m·s-2");
    put(Unit.STANDARD_GRAVITY, "g");
    put(Unit.DECIBEL_A, "db(a)", "dba", "db (a)", "db");
    put(Unit.NEWTON, "n", "newton");
    put(Unit.KILONEWTON, "kn");
    put(Unit.POUND_FORCE, "lbf");
    put(Unit.NEWTON_PER_KILONEWTON, "n/kn");
    put(Unit.KILOGRAM_PER_TONNE, "kg/t", "kg/1000 kg", "kg/ton");
    put(Unit.COEFFICIENT, "coefficient", "koeffizient");
    put(Unit.KILOGRAM, "kg", "kilogram", "kilo");
    put(Unit.GRAM, "gram", "gramm", "grammes");
    put(Unit.POUND, "lb", "lbs", "pound", "pounds");
    put(Unit.KILOWATT_HOUR_PER_100_KM, "kwh/100 km", "kwh/100km");
    put(Unit.WATT_HOUR_PER_KILOMETRE, "wh/km");
    put(Unit.KILOWATT_HOUR_PER_100_MILES, "kwh/100 mi", "kwh/100mi");
    put(Unit.CELSIUS, "°c", "c", "grad", "degc");
    put(Unit.FAHRENHEIT, "°f", "degf");
    put(Unit.EURO, "€", "eur", "euro");
    put(Unit.POUND_STERLING, "£", "gbp");
    put(Unit.KRONA, "kr", "sek (kr)", "kronor", "kr.");
    put(Unit.US_DOLLAR, "$", "usd", "us$");
    put(Unit.SWISS_FRANC, "chf", "fr.");
    put(
        Unit.POINTS_10,
        "points",
        "point",
        "pts",
        "punkte",
        "pkt",
        "pkt.",
        "poäng",
        "p",
        "/10",
        "out of 10",
        "1-10",
        "1–10",
        "points 1-10",
        "punkte 1-10",
        "poäng 1-10",
        "points/10",
        "points /10",
        "/ 10",
        "punkte (1-10)",
        "note sur 10",
        "sur 10",
        "0-10");
    put(
        Unit.POINTS_100,
        "/100",
        "out of 100",
        "0-100",
        "points of 100",
        "points/100",
        "sur 100",
        "av 100",
        "von 100",
        "/ 100",
        "max. 100",
        "max 100");
    put(
        Unit.SCHOOL_MARK,
        "note",
        "schulnote",
        "noten",
        "schulnoten",
        "mark",
        "marks",
        "mark (1 best)",
        "1 = best",
        "1 best",
        "1-6",
        "1–6",
        "note 1-6",
        "noten 1-6",
        "1 = sehr gut");
    put(
        Unit.PERCENT_OF_BEST,
        "% of best",
        "% vom besten",
        "% des besten",
        "% du meilleur",
        "% av bästa",
        "prozent vom besten",
        "per cent of best",
        "percent of best",
        "best = 100",
        "best = 100 %",
        "bester = 100",
        "bester = 100 %",
        "best=100",
        "best=100%",
        "bäst = 100",
        "meilleur = 100");
    put(
        Unit.PERCENT_OF_REFERENCE,
        "% of reference",
        "% of control",
        "% der referenz",
        "% de la référence",
        "% av referens",
        "% of ref",
        "% of ref.",
        "referenz = 100",
        "reference = 100",
        "reference = 100 %",
        "referenz = 100 %",
        "control = 100");
  }

  private UnitWords() {}

  private static void put(Unit unit, String... spellings) {
    SPELLINGS.put(key(unit.symbol()), unit);
    for (String spelling : spellings) {
      SPELLINGS.put(key(spelling), unit);
    }
  }

  private static String key(String text) {
    return text.strip()
        .toLowerCase(Locale.ROOT)
        .replace('\u00a0', ' ')
        .replace('\u202f', ' ')
        .replaceAll("\\s+", " ");
  }

  /** Whether the whole text is a unit and nothing else. */
  public static boolean isUnit(String text) {
    return ofText(text).isPresent();
  }

  /** The unit that a text on its own means; a bare per cent sign is assumed to be of the best. */
  public static Optional<Recognised> ofText(String text) {
    String key = key(text);
    if (key.equals("%")
        || key.equals("prozent")
        || key.equals("procent")
        || key.equals("per cent")
        || key.equals("percent")
        || key.equals("pour cent")) {
      return Optional.of(new Recognised(Unit.PERCENT_OF_BEST, text.strip(), true));
    }
    Unit unit = SPELLINGS.get(key);
    return unit == null ? Optional.empty() : Optional.of(new Recognised(unit, text.strip(), false));
  }

  /**
   * The unit in a header: in brackets, after a comma, after "in", or at its end ({@code Bremsweg
   * nass [m]}, {@code Wet braking, m}, {@code Prix en €}). The last that is a unit counts.
   */
  public static Optional<Recognised> inHeader(String header) {
    Matcher decibel = DECIBEL.matcher(header);
    if (decibel.find()) {
      return Optional.of(new Recognised(Unit.DECIBEL_A, decibel.group(), false));
    }
    Optional<Recognised> found = Optional.empty();
    Matcher brackets = BRACKETED.matcher(header);
    while (brackets.find()) {
      Optional<Recognised> inside = ofText(brackets.group(1));
      found = inside.isPresent() ? inside : found;
    }
    if (found.isPresent()) {
      return found;
    }
    Matcher after = AFTER_WORD.matcher(header);
    if (after.find()) {
      found = ofText(after.group(1));
      if (found.isPresent()) {
        return found;
      }
    }
    return atEnd(header);
  }

  private static Optional<Recognised> atEnd(String header) {
    String[] words = header.strip().split("\\s+");
    for (int from = 1; from < words.length; from++) {
      String tail = String.join(" ", java.util.Arrays.copyOfRange(words, from, words.length));
      Optional<Recognised> unit = ofText(tail);
      if (unit.isPresent() && !isPlainWord(tail)) {
        return unit;
      }
    }
    return Optional.empty();
  }

  /** Words that also end headers without meaning a unit. */
  private static boolean isPlainWord(String text) {
    return switch (text.toLowerCase(Locale.ROOT)) {
      case "in", "p", "c", "g", "mark", "note", "noten", "grad", "n", "sec", "min", "point" -> true;
      default -> false;
    };
  }

  /** The unit after a number in a cell: {@code 31,2 m}, {@code 71 dB(A)}. */
  public static Optional<Recognised> inCell(String cell) {
    Matcher after = AFTER_NUMBER.matcher(cell);
    return after.matches() ? ofText(after.group(1)) : leading(cell);
  }

  /** Currencies also stand before the number. */
  private static Optional<Recognised> leading(String cell) {
    Matcher before = Pattern.compile("^\\s*([€£$]|EUR|GBP|USD|SEK|CHF)\\s*\\d.*$").matcher(cell);
    return before.matches() ? ofText(before.group(1)) : Optional.empty();
  }
}
