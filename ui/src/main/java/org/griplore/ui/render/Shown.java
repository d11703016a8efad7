package org.griplore.ui.render;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Figure;
import org.griplore.store.text.Snippet;

/** Writes a value for people: the digits its column asks for, an en dash where it is missing. */
public final class Shown {
  /** What stands where there is no value. */
  public static final String MISSING = "\u2013";

  private static final MathContext DIGITS = new MathContext(10);
  private static final String MINUS = "\u2212";
  private static final String RAISED =
      "\u2070\u00b9\u00b2\u00b3\u2074\u2075\u2076\u2077\u2078\u2079";

  private static final Pattern CODES =
      Pattern.compile("[\\p{Cc}&&[^\n\t]]|[\u202a-\u202e\u2066-\u2069]");

  private Shown() {}

  /** The value of a row in a column, as people read it. */
  public static <R> String of(Column<R> column, R row) {
    return value(column, column.value().apply(row));
  }

  /** A value of a column, as people read it. */
  public static String value(Column<?> column, Object value) {
    return value == null ? MISSING : harmless(worded(column, value));
  }

  /**
   * A text whose codes for terminals and for the direction of writing are replaced: what a file
   * holds may neither steer a terminal nor make a name look like another one.
   */
  public static String harmless(String text) {
    return CODES.matcher(text).replaceAll("\ufffd");
  }

  private static String worded(Column<?> column, Object value) {
    return switch (column.format()) {
      case TEXT, UNIT, MODEL, LINE, TEST, DISCIPLINE, DATE -> text(value);
      case COUNT, YEAR, RESULT -> String.valueOf(value);
      case PLACE -> place(value);
      case SHARE -> String.format(Locale.ROOT, "%.0f %%", 100 * (Double) value);
      case CHANCE -> chance((Double) value, column.decimals());
      case NUMBER -> number((Double) value, column.decimals());
      case DELTA -> delta((Double) value, column.decimals());
      case FLAG -> Boolean.TRUE.equals(value) ? "yes" : "no";
      case FIGURE -> String.join("\n", lines((Figure) value, column.decimals()));
      case SNIPPET -> snippet((Snippet) value);
      case TEXTS ->
          ((List<?>) value).stream().map(String::valueOf).collect(Collectors.joining(", "));
      case ROWS -> String.valueOf(((List<?>) value).size());
    };
  }

  private static String text(Object value) {
    String text = value instanceof Double number ? plain(number) : String.valueOf(value);
    return text.isEmpty() ? MISSING : text;
  }

  /** Ten digits of a number, without a needless point: 31.2, 7, 0.0341. */
  public static String plain(double number) {
    if (number == Math.rint(number) && Math.abs(number) < 1e15) {
      return signed(String.valueOf((long) number));
    }
    return signed(String.valueOf(new BigDecimal(number).round(DIGITS).doubleValue()));
  }

  /** A number with fixed digits and a true minus sign. */
  public static String number(double value, int decimals) {
    return signed(String.format(Locale.ROOT, "%." + decimals + "f", value));
  }

  /** A difference: always with its sign. */
  public static String delta(double value, int decimals) {
    String digits = number(value, decimals);
    return digits.startsWith(MINUS) || isZero(digits) ? digits : "+" + digits;
  }

  private static boolean isZero(String digits) {
    return digits.chars().allMatch(c -> c == '0' || c == '.');
  }

  private static String signed(String digits) {
    if (!digits.startsWith("-")) {
      return digits;
    }
    String unsigned = digits.substring(1);
    return isZero(unsigned) ? unsigned : MINUS + unsigned;
  }

  private static String place(Object value) {
    if (value instanceof Double number) {
      return number == Math.rint(number)
          ? String.valueOf(Math.round(number))
          : String.format(Locale.ROOT, "%.1f", number);
    }
    return String.valueOf(value);
  }

  private static String chance(double value, int decimals) {
    double least = Math.pow(10, -decimals);
    return value > 0 && value < least ? "<" + number(least, decimals) : number(value, decimals);
  }

  /**
   * A figure in one or two lines: the value with its place, then the difference with its interval.
   */
  public static List<String> lines(Figure figure, int decimals) {
    String value = figure.value() == null ? "" : number(figure.value(), decimals);
    if (figure.place() != null) {
      value = value.isEmpty() ? "place " + figure.place() : value + " (" + figure.place() + ")";
    }
    if (value.isEmpty()) {
      return List.of(MISSING + marks(figure.footnotes()));
    }
    value += marks(figure.footnotes());
    String difference = difference(figure);
    return difference.isEmpty()
        ? List.of(figure.mark() + value)
        : List.of(figure.mark() + value, difference);
  }

  /**
   * Footnote numbers as raised digits, neighbours as a range; a space keeps them from the value.
   */
  static String marks(List<Integer> numbers) {
    return numbers.isEmpty() ? "" : "\u00a0" + raised(ranges(numbers));
  }

  /** Numbers in a row as ranges: {@code 1-3,7}. */
  public static String ranges(List<Integer> numbers) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < numbers.size(); i++) {
      int from = i;
      while (i + 1 < numbers.size() && numbers.get(i + 1) == numbers.get(i) + 1) {
        i++;
      }
      text.append(text.isEmpty() ? "" : ",").append(numbers.get(from));
      if (i > from) {
        text.append(i > from + 1 ? "-" : ",").append(numbers.get(i));
      }
    }
    return text.toString();
  }

  private static String raised(String text) {
    return text.chars()
        .mapToObj(
            c -> c == ',' ? "," : c == '-' ? "\u207b" : RAISED.substring(c - '0', c - '0' + 1))
        .collect(Collectors.joining());
  }

  /** The difference of a figure with its interval; empty without one. */
  public static String difference(Figure figure) {
    if (figure.delta() == null) {
      return "";
    }
    String unit = "%".equals(figure.deltaUnit()) ? "\u00a0%" : "";
    String interval =
        figure.low() == null || figure.high() == null
            ? ""
            : " [%s, %s]".formatted(delta(figure.low(), 1), delta(figure.high(), 1));
    return delta(figure.delta(), 1) + unit + interval;
  }

  private static String snippet(Snippet snippet) {
    return snippet.pieces().stream()
        .map(piece -> piece.hit() ? "*" + piece.text() + "*" : piece.text())
        .collect(Collectors.joining())
        .replaceAll("\\s+", " ");
  }
}
