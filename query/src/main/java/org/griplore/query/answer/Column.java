package org.griplore.query.answer;

import java.util.List;
import java.util.function.Function;

/**
 * One thing told of each row.
 *
 * @param <R> what a row is about
 * @param key the name in JSON and CSV
 * @param label the heading shown to people
 * @param format how the value is to be read
 * @param decimals digits after the point shown to people; JSON has them all
 * @param detail whether it is left out of tables (JSON always has it)
 * @param inner the columns of the rows inside, for {@link Format#ROWS}, or of a figure's parts, the
 *     value first, for {@link Format#FIGURE}; else empty
 * @param value the value, or null when it is missing
 */
public record Column<R>(
    String key,
    String label,
    Format format,
    int decimals,
    boolean detail,
    List<? extends Column<?>> inner,
    Function<R, Object> value) {
  /** A column as shown in tables. */
  public static <R> Column<R> of(
      String key, String label, Format format, Function<R, Object> value) {
    return new Column<>(key, label, format, 0, false, List.of(), value);
  }

  /** A column of numbers with this many digits after the point. */
  public static <R> Column<R> number(
      String key, String label, Format format, int decimals, Function<R, Object> value) {
    return new Column<>(key, label, format, decimals, false, List.of(), value);
  }

  /** A column of lists of rows. */
  public static <R, S> Column<R> rows(
      String key, String label, List<Column<S>> inner, Function<R, List<S>> value) {
    return new Column<>(key, label, Format.ROWS, 0, true, inner, value::apply);
  }

  /** A column of figures; {@code parts} are the columns of a table that has one for each part. */
  public static <R, F extends Figure> Column<R> figure(
      String key, String label, int decimals, List<Column<F>> parts, Function<R, F> value) {
    return new Column<>(key, label, Format.FIGURE, decimals, false, parts, value::apply);
  }

  /** The same column, left out of tables. */
  public Column<R> asDetail() {
    return new Column<>(key, label, format, decimals, true, inner, value);
  }
}
