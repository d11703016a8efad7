package org.griplore.query.answer;

import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.griplore.store.vocabulary.Direction;

/**
 * One thing told of each row, with all that a reader must know of it: every rendering takes it from
 * here.
 *
 * @param <R> what a row is about
 * @param key the name in JSON and CSV
 * @param title the heading shown to people, without the unit; one in lower case ("from", "to",
 *     "in") goes on from the column before it
 * @param format how the value is to be read
 * @param decimals digits after the point shown to people; JSON has them all
 * @param detail whether it is left out of tables (JSON always has it)
 * @param inner the columns of the rows inside, for {@link Format#ROWS}, or of a figure's parts, the
 *     value first, for {@link Format#FIGURE}; else empty
 * @param value the value, or null when it is missing
 * @param sense its unit, better direction and meaning
 * @param leads where its figures lead; null where the row's figure leads nowhere of its own
 */
public record Column<R>(
    String key,
    String title,
    Format format,
    int decimals,
    boolean detail,
    List<? extends Column<?>> inner,
    Function<R, Object> value,
    Sense sense,
    BiFunction<R, Inquiry, Lead> leads) {

  /** A column as shown in tables. */
  public static <R> Column<R> of(
      String key, String title, Format format, Function<R, Object> value) {
    return plain(key, title, format, 0, List.of(), value);
  }

  /** A column of numbers with this many digits after the point. */
  public static <R> Column<R> number(
      String key, String title, Format format, int decimals, Function<R, Object> value) {
    return plain(key, title, format, decimals, List.of(), value);
  }

  /** A column of lists of rows. */
  public static <R, S> Column<R> rows(
      String key, String title, List<Column<S>> inner, Function<R, List<S>> value) {
    Function<R, Object> rows = value::apply;
    return plain(key, title, Format.ROWS, 0, inner, rows).asDetail();
  }

  /** A column of figures; {@code parts} are the columns of a table that has one for each part. */
  public static <R, F extends Figure> Column<R> figure(
      String key, String title, int decimals, List<Column<F>> parts, Function<R, F> value) {
    return plain(key, title, Format.FIGURE, decimals, parts, value::apply);
  }

  private static <R> Column<R> plain(
      String key,
      String title,
      Format format,
      int decimals,
      List<? extends Column<?>> inner,
      Function<R, Object> value) {
    return new Column<>(
        key, title, format, decimals, false, inner, value, Sense.of(format), (row, asked) -> null);
  }

  /** The same column, left out of tables. */
  public Column<R> asDetail() {
    return new Column<>(key, title, format, decimals, true, inner, value, sense, leads);
  }

  /** The same column with what it measures, in one plain sentence with its full stop. */
  public Column<R> means(String meaning) {
    return with(new Sense(sense.unit(), sense.unitKey(), sense.better(), meaning));
  }

  /** The same column in a unit: its symbol, or null or empty for none. */
  public Column<R> in(String unit) {
    String symbol = unit == null || unit.isEmpty() ? null : unit;
    return with(new Sense(symbol, null, sense.better(), sense.meaning()));
  }

  /** The same column, its unit told by the column with this key in each row. */
  public Column<R> inUnitOf(String column) {
    return with(new Sense(null, column, sense.better(), sense.meaning()));
  }

  /** The same column with the direction that is better; null where none is. */
  public Column<R> better(Direction better) {
    return with(new Sense(sense.unit(), sense.unitKey(), better, sense.meaning()));
  }

  /** The same column with where a row's figure leads; the lead is null where it leads nowhere. */
  public Column<R> leadingTo(BiFunction<R, Inquiry, Lead> lead) {
    return new Column<>(key, title, format, decimals, detail, inner, value, sense, lead);
  }

  private Column<R> with(Sense told) {
    return new Column<>(key, title, format, decimals, detail, inner, value, told, leads);
  }

  /** The heading with its unit, like {@code Effect, %}. */
  public String heading() {
    return sense.unit() == null || title.isEmpty() || Character.isLowerCase(title.charAt(0))
        ? title
        : title + ", " + sense.unit();
  }

  /** The question behind a row's figure: the column's own, else what its format leads to. */
  public Optional<Lead> lead(R row, Inquiry inquiry) {
    Lead own = leads.apply(row, inquiry);
    return own != null ? Optional.of(own) : Lead.of(format, value.apply(row));
  }
}
