package org.griplore.ui.web.page;

import java.util.ArrayList;
import java.util.List;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Figure;
import org.griplore.query.answer.Format;
import org.griplore.query.answer.Inquiry;
import org.griplore.store.text.Snippet;
import org.griplore.ui.render.Shown;
import org.griplore.ui.web.link.Addresses;
import org.griplore.ui.web.link.Symbols;

/**
 * A table as a page lays it out.
 *
 * @param heads the column heads
 * @param rows cells in the order of the heads
 */
public record TableView(List<Head> heads, List<List<CellView>> rows) {
  /**
   * A column head, shaped like its cells.
   *
   * @param meaning what the column tells; null when that is not said
   */
  public record Head(String label, String shape, String meaning) {}

  /**
   * One cell.
   *
   * @param text what it says
   * @param address where it leads; null when nowhere
   * @param shape how it is set: {@code number}, {@code name}, {@code words}, {@code list} or {@code
   *     whole}
   * @param extra a quieter second text (a place, a difference); null when there is none
   * @param pieces the text in pieces with the hits marked; empty when it is not a snippet
   */
  public record CellView(
      String text, String address, String shape, String extra, List<Snippet.Piece> pieces) {
    public static CellView of(String text, String address, String shape) {
      return new CellView(text, address, shape, null, List.of());
    }
  }

  /**
   * The columns of a table that are not details, laid out; their figures lead on from a question.
   */
  public static <R> TableView of(List<Column<R>> columns, List<R> rows, Inquiry asked) {
    List<Column<R>> shown =
        columns.stream().filter(column -> !column.detail() && isTold(column, rows)).toList();
    List<Head> heads = shown.stream().map(TableView::head).toList();
    List<List<CellView>> cells = new ArrayList<>();
    for (R row : rows) {
      cells.add(shown.stream().map(column -> cell(column, row, asked)).toList());
    }
    return new TableView(heads, cells);
  }

  private static Head head(Column<?> column) {
    String meaning = column.sense().meaning();
    return new Head(
        Symbols.set(column.heading()),
        shape(column.format()),
        meaning.isEmpty() ? null : Symbols.set(meaning));
  }

  /** The tables inside a row, each with its heading. */
  public static <R> List<Inner> inner(List<Column<R>> columns, List<R> rows, Inquiry asked) {
    List<Inner> tables = new ArrayList<>();
    for (Column<R> column : columns) {
      if (column.format() == Format.ROWS) {
        for (R row : rows) {
          String about = Shown.of(columns.get(0), row);
          tables.add(
              new Inner(
                  column.heading() + ": " + about,
                  inside(column.inner(), (List<?>) column.value().apply(row), asked)));
        }
      }
    }
    return tables;
  }

  /** A table inside a row. */
  public record Inner(String heading, TableView table) {}

  /** The inner columns belong to the inner rows: both come from the same {@code Column.rows}. */
  @SuppressWarnings("unchecked")
  private static <S> TableView inside(
      List<? extends Column<?>> columns, List<?> rows, Inquiry asked) {
    return of((List<Column<S>>) columns, (List<S>) rows, asked);
  }

  /** A column without a single value takes no room. */
  private static <R> boolean isTold(Column<R> column, List<R> rows) {
    return rows.isEmpty() || rows.stream().anyMatch(row -> column.value().apply(row) != null);
  }

  private static String shape(Format format) {
    return switch (format) {
      case COUNT, YEAR, PLACE, SHARE, CHANCE, NUMBER, DELTA, FIGURE, RESULT -> "number";
      case DATE, FLAG, DISCIPLINE, UNIT -> "whole";
      case TEXTS -> "list";
      case MODEL, LINE -> "name";
      case TEXT, TEST, SNIPPET, ROWS -> "words";
    };
  }

  private static <R> CellView cell(Column<R> column, R row, Inquiry asked) {
    Object value = column.value().apply(row);
    String shape = shape(column.format());
    if (value == null) {
      return CellView.of(Shown.MISSING, null, shape.equals("words") ? "whole" : shape);
    }
    String text = Shown.value(column, value);
    String address = column.lead(row, asked).map(Addresses::of).orElse(null);
    return switch (column.format()) {
      case RESULT -> CellView.of("cell", address, shape);
      case SNIPPET -> new CellView("", null, shape, null, ((Snippet) value).pieces());
      case FIGURE -> figure((Figure) value, column, address);
      case DATE -> CellView.of(day(text), address, shape);
      case UNIT -> CellView.of(Symbols.set(text), address, shape);
      case TEXT -> CellView.of(text, address, text.length() > 26 ? shape : "whole");
      default -> CellView.of(text, address, shape);
    };
  }

  /** A moment is shown to the minute. */
  private static String day(String text) {
    return text.matches("\\d{4}-\\d\\d-\\d\\dT.*") ? text.substring(0, 16).replace('T', ' ') : text;
  }

  /** A value with its difference and place under it; the unit of both is in the column's head. */
  private static CellView figure(Figure figure, Column<?> column, String address) {
    String value =
        figure.value() == null ? Shown.MISSING : Shown.number(figure.value(), column.decimals());
    List<String> extra = new ArrayList<>();
    if (figure.delta() != null) {
      extra.add(Shown.delta(figure.delta(), 1) + ("%".equals(figure.deltaUnit()) ? " %" : ""));
    }
    if (figure.place() != null) {
      extra.add(ordinal(figure.place()));
    }
    return new CellView(
        value, address, "number", extra.isEmpty() ? null : String.join(" · ", extra), List.of());
  }

  public static String ordinal(int place) {
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
