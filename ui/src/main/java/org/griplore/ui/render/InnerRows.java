package org.griplore.ui.render;

import java.util.ArrayList;
import java.util.List;
import org.griplore.query.answer.Answer;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Format;

/**
 * The rows inside one row, as a table of their own.
 *
 * @param heading what they tell, and of whom
 */
record InnerRows(String heading, Column<?> column, List<?> inside) {
  /** With this many rows or fewer, the rows inside them are shown too. */
  private static final int ROWS_OPENED = 3;

  /** The tables inside the rows of an answer; none when it has many rows. */
  static <R> List<InnerRows> of(Answer<R> answer) {
    List<InnerRows> tables = new ArrayList<>();
    if (answer.rows().size() > ROWS_OPENED) {
      return tables;
    }
    for (Column<R> column : answer.columns()) {
      if (column.format() == Format.ROWS) {
        for (R row : answer.rows()) {
          tables.add(
              new InnerRows(
                  column.heading() + ": " + Shown.of(answer.columns().get(0), row),
                  column,
                  (List<?>) column.value().apply(row)));
        }
      }
    }
    return tables;
  }

  /** The inner columns belong to the inner rows: both come from the same {@code Column.rows}. */
  @SuppressWarnings("unchecked")
  <S> List<Column<S>> columns() {
    return (List<Column<S>>) (List<?>) column.inner();
  }

  /** The rows, of what the columns tell. */
  @SuppressWarnings("unchecked")
  <S> List<S> rows() {
    return (List<S>) inside;
  }
}
