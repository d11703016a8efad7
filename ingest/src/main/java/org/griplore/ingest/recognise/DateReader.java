package org.griplore.ingest.recognise;

import java.text.Normalizer;
import java.time.DateTimeException;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.griplore.store.vocabulary.TestDate;

/** Reads dates as people write them in four languages; a day, a month or a year. */
public final class DateReader {
  /**
   * A date that was read.
   *
   * @param assumed whether the day was taken to stand before the month, and it could be otherwise
   */
  public record Reading(TestDate date, boolean assumed) {}

  private static final Pattern ISO =
      Pattern.compile("(\\d{4})-(\\d{1,2})(?:-(\\d{1,2}))?(?:[T ].*)?");
  private static final Pattern NUMBERS =
      Pattern.compile("(\\d{1,2})\\s*([./-])\\s*(\\d{1,2})\\s*[./-]\\s*(\\d{4})");
  private static final Pattern MONTH_YEAR = Pattern.compile("(\\d{1,2})\\s*[./]\\s*(\\d{4})");
  private static final Pattern DAY_MONTH_YEAR =
      Pattern.compile(
          "(\\d{1,2})(?:st|nd|rd|th|er|\\.|:e)?\\s+(?:de\\s+)?([a-z]+)\\.?,?\\s+(\\d{4})");
  private static final Pattern MONTH_DAY_YEAR =
      Pattern.compile("([a-z]+)\\.?\\s+(\\d{1,2})(?:st|nd|rd|th)?,?\\s+(\\d{4})");
  private static final Pattern NAMED_MONTH = Pattern.compile("([a-z]+)\\.?,?\\s+(\\d{4})");
  private static final Pattern YEAR = Pattern.compile("(19|20)\\d{2}");

  private static final Map<String, Integer> MONTHS = new HashMap<>();

  static {
    String[] months = {
      "january jan januar janvier januari",
      "february feb februar fevrier fevr februari",
      "march mar marz mrz maerz mars",
      "april apr avril avr",
      "may mai maj",
      "june jun juni juin",
      "july jul juli juillet juil",
      "august aug aout augusti",
      "september sep sept septembre",
      "october oct oktober okt octobre",
      "november nov novembre",
      "december dec dezember dez decembre"
    };
    for (int month = 1; month <= 12; month++) {
      for (String name : months[month - 1].split(" ")) {
        MONTHS.put(name, month);
      }
    }
  }

  private DateReader() {}

  /** The date that a text is; empty when it is none, or one that does not exist. */
  public static Optional<Reading> read(String text) {
    return read(text, null);
  }

  /**
   * The date that a text is.
   *
   * @param monthFirst whether the month stands first in 6/7/2021; null when nobody says so
   */
  public static Optional<Reading> read(String text, Boolean monthFirst) {
    String plain =
        Normalizer.normalize(text.strip().toLowerCase(Locale.ROOT), Normalizer.Form.NFD)
            .replaceAll("\\p{M}+", "")
            .replace('\u00a0', ' ');
    try {
      return Optional.ofNullable(reading(plain, monthFirst));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  private static Reading reading(String text, Boolean said) {
    Matcher iso = ISO.matcher(text);
    if (iso.matches()) {
      return certain(iso.group(1), number(iso.group(2)), iso.group(3));
    }
    Matcher numbers = NUMBERS.matcher(text);
    if (numbers.matches()) {
      int first = number(numbers.group(1));
      int second = number(numbers.group(3));
      boolean either = first <= 12 && second <= 12 && first != second;
      boolean monthFirst = first <= 12 && second > 12 || either && Boolean.TRUE.equals(said);
      boolean open = said == null && !numbers.group(2).equals(".") && either;
      return new Reading(
          date(
              numbers.group(4),
              monthFirst ? first : second,
              String.valueOf(monthFirst ? second : first)),
          open);
    }
    Matcher monthYear = MONTH_YEAR.matcher(text);
    if (monthYear.matches()) {
      return certain(monthYear.group(2), number(monthYear.group(1)), null);
    }
    if (YEAR.matcher(text).matches()) {
      return new Reading(new TestDate(text), false);
    }
    return named(text);
  }

  private static Reading named(String text) {
    Matcher dayFirst = DAY_MONTH_YEAR.matcher(text);
    if (dayFirst.matches() && MONTHS.containsKey(dayFirst.group(2))) {
      return certain(dayFirst.group(3), MONTHS.get(dayFirst.group(2)), dayFirst.group(1));
    }
    Matcher monthFirst = MONTH_DAY_YEAR.matcher(text);
    if (monthFirst.matches() && MONTHS.containsKey(monthFirst.group(1))) {
      return certain(monthFirst.group(3), MONTHS.get(monthFirst.group(1)), monthFirst.group(2));
    }
    Matcher month = NAMED_MONTH.matcher(text);
    if (month.matches() && MONTHS.containsKey(month.group(1))) {
      return certain(month.group(2), MONTHS.get(month.group(1)), null);
    }
    return null;
  }

  private static Reading certain(String year, int month, String day) {
    return new Reading(date(year, month, day), false);
  }

  private static TestDate date(String year, int month, String day) {
    String yearAndMonth = String.format(Locale.ROOT, "%s-%02d", year, month);
    return new TestDate(
        day == null
            ? yearAndMonth
            : String.format(Locale.ROOT, "%s-%02d", yearAndMonth, number(day)));
  }

  private static int number(String digits) {
    return Integer.parseInt(digits);
  }
}
