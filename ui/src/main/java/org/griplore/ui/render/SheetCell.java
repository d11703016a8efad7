package org.griplore.ui.render;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.stream.Collectors;
import org.dhatim.fastexcel.Worksheet;
import org.griplore.query.answer.Column;
import org.griplore.store.text.Snippet;

/** Writes one cell of a sheet with its type and number format; what is missing stays empty. */
final class SheetCell {
  /** The longest text that a cell of a workbook holds. */
  private static final int LONGEST_TEXT = 32_767;

  private SheetCell() {}

  static void write(Worksheet sheet, int row, int at, Column<?> column, Object value) {
    if (value == null) {
      return;
    }
    switch (column.format()) {
      case TEXT, UNIT, MODEL, LINE, TEST, DISCIPLINE -> any(sheet, row, at, value);
      case DATE -> date(sheet, row, at, String.valueOf(value));
      case COUNT, YEAR, RESULT -> number(sheet, row, at, (Number) value, "0");
      case PLACE -> number(sheet, row, at, (Number) value, "General");
      case SHARE -> number(sheet, row, at, (Number) value, "0%");
      case CHANCE, NUMBER -> number(sheet, row, at, (Number) value, decimals(column.decimals()));
      case DELTA -> {
        String digits = decimals(column.decimals());
        number(sheet, row, at, (Number) value, "+" + digits + ";-" + digits + ";" + digits);
      }
      case FLAG -> sheet.value(row, at, (Boolean) value);
      case SNIPPET -> text(sheet, row, at, ((Snippet) value).text());
      case TEXTS ->
          text(
              sheet,
              row,
              at,
              ((List<?>) value).stream().map(String::valueOf).collect(Collectors.joining(", ")));
      case FIGURE, ROWS -> throw new IllegalArgumentException(column.key() + " is no single cell");
    }
  }

  private static String decimals(int count) {
    return count == 0 ? "0" : "0." + "0".repeat(count);
  }

  private static void any(Worksheet sheet, int row, int at, Object value) {
    if (value instanceof Number number) {
      number(sheet, row, at, number, "General");
    } else {
      text(sheet, row, at, String.valueOf(value));
    }
  }

  static void number(Worksheet sheet, int row, int at, Number value, String format) {
    sheet.value(row, at, value);
    if (!format.equals("General")) {
      sheet.style(row, at).format(format).set();
    }
  }

  /**
   * A day or a moment as such; a month or a year only, which a workbook has no type for, as text.
   */
  static void date(Worksheet sheet, int row, int at, String text) {
    if (text == null) {
      return;
    }
    try {
      if (text.matches("\\d{4}-\\d\\d-\\d\\d")) {
        sheet.value(row, at, LocalDate.parse(text));
        sheet.style(row, at).format("yyyy-mm-dd").set();
        return;
      }
      if (text.matches("\\d{4}-\\d\\d-\\d\\dT.*Z")) {
        sheet.value(
            row, at, LocalDateTime.ofInstant(java.time.Instant.parse(text), ZoneOffset.UTC));
        sheet.style(row, at).format("yyyy-mm-dd hh:mm").set();
        return;
      }
    } catch (DateTimeParseException noDate) {
      // told as it stands
    }
    text(sheet, row, at, text);
  }

  /** A text, without the characters that XML 1.0 cannot hold, as long as a cell can be. */
  static void text(Worksheet sheet, int row, int at, String text) {
    if (text == null || text.isEmpty()) {
      return;
    }
    String clean = text.replaceAll("[\\x00-\\x08\\x0B\\x0C\\x0E-\\x1F\\uFFFE\\uFFFF]", " ");
    sheet.value(
        row,
        at,
        clean.length() > LONGEST_TEXT ? clean.substring(0, LONGEST_TEXT - 1) + "\u2026" : clean);
  }

  static void head(Worksheet sheet, int row, int at, String text) {
    text(sheet, row, at, text);
    sheet.style(row, at).bold().wrapText(true).verticalAlignment("bottom").set();
  }
}
