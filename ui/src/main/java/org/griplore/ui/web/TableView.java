package org.griplore.ui.web;

import java.util.ArrayList;
import java.util.List;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Figure;
import org.griplore.query.answer.Format;
import org.griplore.store.text.Snippet;
import org.griplore.ui.render.Shown;

/**
 * A table as a page lays it out.
 *
 * @param heads the column heads
 * @param rows cells in the order of the heads
 */
public record TableView(List<Head> heads, List<List<CellView>> rows) {
  /** A column head; numbers stand to the right. */
  public record Head(String label, boolean number) {}

  /**
   * One cell.
   *
   * @param text what it says
   * @param address where it leads; null when nowhere
   * @param number whether it stands to the right
   * @param extra a quieter second text (a place, a difference); null when there is none
   * @param pieces the text in pieces with the hits marked; empty when it is not a snippet
   */
  public record CellView(
      String text, String address, boolean number, String extra, List<Snippet.Piece> pieces) {}

  /** The columns of a table that are not details, laid out. */
  public static <R> TableView of(List<Column<R>> columns, List<R> rows) {
    List<Column<R>> shown = columns.stream().filter(column -> !column.detail()).toList();
    List<Head> heads =
        shown.stream().map(column -> new Head(column.label(), isNumber(column.format()))).toList();
    List<List<CellView>> cells = new ArrayList<>();
    for (R row : rows) {
      cells.add(shown.stream().map(column -> cell(column, row)).toList());
    }
    return new TableView(heads, cells);
  }

  /** The tables inside a row, each with its heading. */
  public static <R> List<Inner> inner(List<Column<R>> columns, List<R> rows) {
    List<Inner> tables = new ArrayList<>();
    for (Column<R> column : columns) {
      if (column.format() == Format.ROWS) {
        for (R row : rows) {
          String about = Shown.of(columns.get(0), row);
          tables.add(
              new Inner(
                  column.label() + ": " + about,
                  inside(column.inner(), (List<?>) column.value().apply(row))));
        }
      }
    }
    return tables;
  }

  /** A table inside a row. */
  public record Inner(String heading, TableView table) {}

  /** The inner columns belong to the inner rows: both come from the same {@code Column.rows}. */
  @SuppressWarnings("unchecked")
  private static <S> TableView inside(List<? extends Column<?>> columns, List<?> rows) {
    return of((List<Column<S>>) columns, (List<S>) rows);
  }

  private static boolean isNumber(Format format) {
    return switch (format) {
      case COUNT, YEAR, PLACE, SHARE, CHANCE, NUMBER, DELTA, FIGURE, RESULT -> true;
      case TEXT, MODEL, LINE, TEST, DISCIPLINE, DATE, FLAG, SNIPPET, ROWS, TEXTS -> false;
    };
  }

  private static <R> CellView cell(Column<R> column, R row) {
    Object value = column.value().apply(row);
    boolean number = isNumber(column.format());
    if (value == null) {
      return new CellView(Shown.MISSING, null, number, null, List.of());
    }
    String text = Shown.value(column, value);
    return switch (column.format()) {
      case MODEL -> new CellView(text, Addresses.model(text), false, null, List.of());
      case LINE -> new CellView(text, Addresses.line(text), false, null, List.of());
      case TEST -> new CellView(text, Addresses.test(text), false, null, List.of());
      case DISCIPLINE -> new CellView(text, Addresses.discipline(text), false, null, List.of());
      case RESULT -> new CellView("cell", Addresses.result((Long) value), true, null, List.of());
      case SNIPPET -> new CellView("", null, false, null, ((Snippet) value).pieces());
      case FIGURE -> figure((Figure) value, column.decimals());
      default -> new CellView(text, null, number, null, List.of());
    };
  }

  private static CellView figure(Figure figure, int decimals) {
    String value = figure.value() == null ? Shown.MISSING : Shown.number(figure.value(), decimals);
    StringBuilder extra = new StringBuilder();
    if (figure.delta() != null) {
      extra.append(Shown.delta(figure.delta(), 1)).append(' ').append(figure.deltaUnit());
    }
    if (figure.place() != null) {
      extra.append(extra.isEmpty() ? "" : ", ").append(ordinal(figure.place()));
    }
    return new CellView(
        value,
        Addresses.result(figure.result()),
        true,
        extra.isEmpty() ? null : extra.toString(),
        List.of());
  }

  private static String ordinal(int place) {
    int tens = place % 100;
    String ending =
        tens >= 11 && tens <= 13
            ? "th"
            : switch (place % 10) {
              case 1 -> "st";
              case 2 -> "nd";
              case 3 -> "rd";
              default -> "th";
            };
    return place + ending;
  }
}
