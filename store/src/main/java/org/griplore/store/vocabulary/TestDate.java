package org.griplore.store.vocabulary;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.Month;
import java.time.format.DateTimeFormatter;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The date of a test as exactly as it is known: a day, a month, or a year only.
 *
 * @param text ISO 8601 in its reduced forms: {@code 2021-05-04}, {@code 2021-05} or {@code 2021}
 */
public record TestDate(String text) implements Comparable<TestDate> {
  private static final Pattern ISO = Pattern.compile("(\\d{4})(?:-(\\d{2})(?:-(\\d{2}))?)?");

  /** Checks the form and that the date exists. */
  public TestDate {
    Matcher parts = ISO.matcher(text);
    if (!parts.matches()) {
      throw new DateTimeException("not a date like 2021-05-04, 2021-05 or 2021: " + text);
    }
    if (parts.group(3) != null) {
      LocalDate.parse(text, DateTimeFormatter.ISO_LOCAL_DATE);
    } else if (parts.group(2) != null) {
      Month.of(Integer.parseInt(parts.group(2)));
    }
  }

  /** The year. */
  public int year() {
    return Integer.parseInt(text.substring(0, 4));
  }

  /** The first day that the date covers: the day itself, or the first of the month or year. */
  public LocalDate firstDay() {
    return switch (text.length()) {
      case 4 -> LocalDate.of(year(), 1, 1);
      case 7 -> LocalDate.parse(text + "-01");
      default -> LocalDate.parse(text);
    };
  }

  @Override
  public int compareTo(TestDate other) {
    return text.compareTo(other.text);
  }

  @Override
  public String toString() {
    return text;
  }
}
