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

/**
 * Reads dates as people write them in many languages; a day, a month or a year, or the first day of
 * several.
 */
public final class DateReader {
  /**
   * A date that was read.
   *
   * @param assumed whether the day was taken to stand before the month, and it could be otherwise
   * @param range whether it is the first day of several
   */
  public record Reading(TestDate date, boolean assumed, boolean range) {
    Reading(TestDate date, boolean assumed) {
      this(date, assumed, false);
    }
  }

  /** {@code 14.-16.06.2021}, {@code 14-16 June 2021}: the first day, and the rest. */
  private static final Pattern DAYS =
      Pattern.compile(
          "(\\d{1,2})\\.?\\s*(?:-|\u2013|\u2014|/|&|\\+|to|bis|and|und|et|au|till|och|i|a|al|e|tot|en|do|og|ja)\\s*\\d{1,2}"
              + "([./]\\s*\\d{1,2}[./]\\s*\\d{4}|\\.?\\s+(?:de\\s+)?\\p{L}+\\.?,?\\s+(?:de\\s+)?\\d{4})");

  /** {@code June 14-16, 2021}. */
  private static final Pattern MONTH_DAYS =
      Pattern.compile("(\\p{L}+\\.?\\s+\\d{1,2})\\s*(?:-|\u2013|\u2014)\\s*\\d{1,2}(,?\\s+\\d{4})");

  /** {@code 14.06. - 16.06.2021}, {@code 30 June - 2 July 2021}: the year stands at the end. */
  private static final Pattern TWO_DATES =
      Pattern.compile(
          "(\\d{1,2}(?:\\.\\s*\\d{1,2}\\.?|\\.?\\s+\\p{L}+\\.?))\\s*(?:-|\u2013|\u2014|to|bis|au|till|al|tot|do)\\s*"
              + "\\d{1,2}.*?(\\d{4})");

  /** Two whole dates. */
  private static final Pattern FROM_TO =
      Pattern.compile(
          "(\\d{4}-\\d{2}-\\d{2}|.*?[^\\d-]\\d{4})\\s*(?:-|\u2013|\u2014|/|to|bis|au|till|al|tot|do|\u301c|~)\\s*\\d.*");

  private static final Pattern JAPANESE =
      Pattern.compile("(\\d{4})\u5e74(?:\\s*(\\d{1,2})\u6708(?:\\s*(\\d{1,2})\u65e5)?)?.*");

  private static final Pattern SHORT_YEAR =
      Pattern.compile("(\\d{1,2}\\.\\s?\\d{1,2}\\.)\\s?(\\d{2})");

  private static final Pattern WITHIN =
      Pattern.compile(
          "(?<![\\d/.,-])(?:\\d{4}-\\d{2}-\\d{2}|\\d{1,2}\\.\\s?\\d{1,2}\\.\\s?\\d{4}"
              + "|\\d{1,2}(?:st|nd|rd|th|er|\\.)?\\s+(?:de\\s+)?\\p{L}{3,12}\\.?,?\\s+(?:de\\s+)?\\d{4}"
              + "|\\p{L}{3,12}\\.?\\s+\\d{1,2},?\\s+\\d{4}|\\p{L}{3,12}\\.?\\s+(?:19|20)\\d{2}"
              + "|\\d{4}\u5e74\\d{1,2}\u6708(?:\\d{1,2}\u65e5)?)(?![\\d])");

  private static final Pattern YEAR_WITHIN =
      Pattern.compile(
          "(?<![\\d/.,-])((?:19[89]|20[0-4])\\d)(?:[/-](?:20)?\\d{2})?(?![\\d.,]\\d|\\d|\\s*(?:km|mm|kg|kgs|lb|rpm)\\b)");

  private static final Pattern ISO =
      Pattern.compile("(\\d{4})-(\\d{1,2})(?:-(\\d{1,2}))?(?:[T ]\\d{1,2}:.*)?");
  private static final Pattern NUMBERS =
      Pattern.compile("(\\d{1,2})\\s*([./-])\\s*(\\d{1,2})\\s*[./-]\\s*(\\d{4})");
  private static final Pattern MONTH_YEAR = Pattern.compile("(\\d{1,2})\\s*[./]\\s*(\\d{4})");
  private static final Pattern DAY_MONTH_YEAR =
      Pattern.compile(
          "(\\d{1,2})(?:st|nd|rd|th|er|\\.|:e)?\\s+(?:de\\s+)?(\\p{L}+)\\.?,?\\s+(?:de\\s+)?(\\d{4})");
  private static final Pattern MONTH_DAY_YEAR =
      Pattern.compile("(\\p{L}+)\\.?\\s+(\\d{1,2})(?:st|nd|rd|th)?,?\\s+(\\d{4})");
  private static final Pattern NAMED_MONTH = Pattern.compile("(\\p{L}+)\\.?,?\\s+(\\d{4})");
  private static final Pattern YEAR = Pattern.compile("(19|20)\\d{2}");

  private static final Map<String, Integer> MONTHS = new HashMap<>();

  static {
    String[] months = {
      "january jan januar janvier januari stycznia styczen sty enero ene gennaio gen januari leden ledna tammikuu tammikuuta janeiro января январь",
      "february feb februar fevrier fevr februari lutego luty febrero febbraio februari unor unora helmikuu helmikuuta fevereiro февраля февраль",
      "march mar marz mrz maerz mars marca marzec marzo maart brezen brezna marts maaliskuu maaliskuuta marco марта март",
      "april apr avril avr kwietnia kwiecien abril aprile duben dubna huhtikuu huhtikuuta апреля апрель",
      "may mai maj maja mayo maggio mei kveten kvetna toukokuu toukokuuta maio мая маи",
      "june jun juni juin czerwca czerwiec junio giugno cerven cervna kesakuu kesakuuta junho июня июнь",
      "july jul juli juillet juil lipca lipiec julio luglio cervenec cervence heinakuu heinakuuta julho июля июль",
      "august aug aout augusti sierpnia sierpien agosto augustus srpen srpna elokuu elokuuta августа август",
      "september sep sept septembre wrzesnia wrzesien septiembre settembre zari syyskuu syyskuuta setembro сентября сентябрь",
      "october oct oktober okt octobre pazdziernika pazdziernik octubre ottobre rijen rijna lokakuu lokakuuta outubro октября октябрь",
      "november nov novembre listopada listopad noviembre novembre marraskuu marraskuuta novembro ноября ноябрь",
      "december dec dezember dez decembre grudnia grudzien diciembre dicembre prosinec prosince joulukuu joulukuuta dezembro декабря декабрь"
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
      Reading whole = reading(plain, monthFirst);
      return Optional.ofNullable(whole == null ? first(plain, monthFirst) : whole);
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  /** A date or a year that stands in a longer text, such as a title. */
  static Optional<Reading> within(String text) {
    Matcher date = WITHIN.matcher(text);
    while (date.find()) {
      Optional<Reading> read = read(date.group());
      if (read.isPresent()) {
        return read;
      }
    }
    Matcher year = YEAR_WITHIN.matcher(text);
    return year.find() ? read(year.group(1)) : Optional.empty();
  }

  /** The first day of several; null when the text tells none. */
  private static Reading first(String text, Boolean said) {
    Matcher japanese = JAPANESE.matcher(text);
    if (japanese.matches()) {
      return japanese.group(2) == null
          ? new Reading(new TestDate(japanese.group(1)), false)
          : certain(japanese.group(1), number(japanese.group(2)), japanese.group(3));
    }
    Matcher year = SHORT_YEAR.matcher(text);
    if (year.matches()) {
      return reading(year.group(1) + "20" + year.group(2), said);
    }
    String begin = null;
    Matcher days = DAYS.matcher(text);
    Matcher month = MONTH_DAYS.matcher(text);
    Matcher dates = TWO_DATES.matcher(text);
    Matcher both = FROM_TO.matcher(text);
    if (days.matches()) {
      begin = days.group(1) + days.group(2);
    } else if (month.matches()) {
      begin = month.group(1) + month.group(2);
    } else if (dates.matches()) {
      String day = dates.group(1).strip();
      begin =
          day
              + (Character.isDigit(day.charAt(day.length() - 1))
                  ? "."
                  : day.endsWith(".") ? "" : " ")
              + dates.group(2);
    } else if (both.matches()) {
      begin = both.group(1).strip();
    }
    Reading read = begin == null ? null : reading(begin, said);
    return read == null ? null : new Reading(read.date(), read.assumed(), true);
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
