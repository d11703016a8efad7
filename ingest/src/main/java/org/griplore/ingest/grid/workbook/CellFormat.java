package org.griplore.ingest.grid.workbook;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.Locale;
import java.util.regex.Pattern;
import org.griplore.ingest.grid.CellLook;
import org.griplore.ingest.grid.FormatCode;
import org.griplore.ingest.grid.GridCell;

/**
 * How a workbook shows a number, as far as it changes what the number is: a date, a time of day or
 * lap time, a per cent. Decimals that a format leaves out are kept in the text: they were measured.
 * Number formats and serial dates as in ECMA-376 part 1, 18.8.30 and 18.17.4.
 */
final class CellFormat {
  /** Quoted text, colours and locales in brackets, escaped characters, fractions of a second. */
  private static final Pattern NO_CODE =
      Pattern.compile("\"[^\"]*\"|\\[(?!h+\\]|m+\\]|s+\\])[^\\]]*\\]|\\\\.|(?<=s)[.,]0+");

  private static final BigDecimal LAST_SERIAL = BigDecimal.valueOf(2_958_465);
  private static final BigDecimal SECONDS_A_DAY = BigDecimal.valueOf(86_400);

  /** No quantity has more digits than a double holds before or behind its point. */
  private static final int MOST_DIGITS = 300;

  private CellFormat() {}

  /** Whether a number is one that anything can have; others are texts, as they stand. */
  static boolean isMeasurable(BigDecimal number) {
    return Math.abs((long) number.precision() - number.scale()) <= MOST_DIGITS
        && number.precision() <= MOST_DIGITS
        && Math.abs((long) number.scale()) <= 2 * MOST_DIGITS;
  }

  /** A number as a cell: with the date behind it where its format shows one. */
  static GridCell cell(int row, int column, BigDecimal number, String format, boolean from1904) {
    String codes = format == null ? "" : codes(format);
    boolean temporal = !codes.contains("general") && !codes.contains("0") && !codes.contains("#");
    if (temporal && codes.matches(".*[dy].*") && isSerial(number, from1904)) {
      LocalDate date = date(number, from1904);
      return new GridCell(row, column, date.toString(), null, date);
    }
    if (temporal && codes.matches(".*[hs].*") && number.signum() >= 0) {
      return GridCell.of(row, column, time(number));
    }
    boolean perCent = codes.contains("%");
    String text = perCent ? plain(number.movePointRight(2)) + "%" : plain(number);
    CellLook look = CellLook.PLAIN.with(FormatCode.of(format));
    return new GridCell(row, column, text, number.doubleValue(), null, look);
  }

  /** The first section of a format, which is for positive numbers, without literal text. */
  private static String codes(String format) {
    String bare = NO_CODE.matcher(format.toLowerCase(Locale.ROOT)).replaceAll("");
    int end = bare.indexOf(';');
    return end < 0 ? bare : bare.substring(0, end);
  }

  /** Workbooks keep 31.2 as 31.199999999999999: fifteen digits are what was meant. */
  static String plain(BigDecimal number) {
    BigDecimal meant = number.round(new MathContext(15)).stripTrailingZeros();
    return (meant.scale() < 0 ? meant.setScale(0) : meant).toPlainString();
  }

  private static boolean isSerial(BigDecimal number, boolean from1904) {
    boolean missingDay = !from1904 && number.intValue() == 60;
    return !missingDay
        && number.compareTo(from1904 ? BigDecimal.ZERO : BigDecimal.ONE) >= 0
        && number.compareTo(LAST_SERIAL) <= 0;
  }

  /**
   * Days of the 1900 system count a 29 February 1900 that never was: up to day 59 they are one
   * ahead.
   */
  private static LocalDate date(BigDecimal serial, boolean from1904) {
    long day = serial.longValue();
    if (from1904) {
      return LocalDate.of(1904, 1, 1).plusDays(day);
    }
    return LocalDate.of(1899, 12, day < 60 ? 31 : 30).plusDays(day);
  }

  /** A part of a day as {@code 1:23.4} (minutes) or {@code 9:30:00} (an hour and more). */
  private static String time(BigDecimal days) {
    BigDecimal seconds = days.multiply(SECONDS_A_DAY).setScale(3, RoundingMode.HALF_UP);
    long whole = seconds.longValue();
    String rest = plain(seconds.subtract(BigDecimal.valueOf(whole)));
    String fraction = rest.equals("0") ? "" : rest.substring(1);
    return whole < 3600
        ? "%d:%02d%s".formatted(whole / 60, whole % 60, fraction)
        : "%d:%02d:%02d%s".formatted(whole / 3600, whole / 60 % 60, whole % 60, fraction);
  }
}
