package org.griplore.ui.render;

import java.util.ArrayList;
import java.util.List;
import org.dhatim.fastexcel.Worksheet;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Figure;
import org.griplore.query.answer.Format;

/**
 * Rows going onto a sheet under a header that stays in view. A figure takes a column for each of
 * its parts; rows inside rows are left to sheets of their own.
 */
final class SheetRows<R> {
  private static final int NARROWEST = 9;
  private static final int WIDEST = 48;

  private final Worksheet sheet;
  private final List<Column<R>> columns;
  private final List<Integer> widths = new ArrayList<>();
  private int row = 1;

  /**
   * @param from how many columns stand before those of the rows
   */
  SheetRows(Worksheet sheet, List<Column<R>> columns, int from) {
    this.sheet = sheet;
    this.columns = columns.stream().filter(column -> column.format() != Format.ROWS).toList();
    int at = from;
    for (Column<R> column : this.columns) {
      head(at++, column.heading());
      if (column.format() == Format.FIGURE) {
        for (Column<?> part : shown(column.inner()).subList(1, shown(column.inner()).size())) {
          head(at++, column.title() + ": " + part.title() + unit(part));
        }
      }
    }
  }

  private static List<? extends Column<?>> shown(List<? extends Column<?>> parts) {
    return parts.stream().filter(part -> !part.detail()).toList();
  }

  private static String unit(Column<?> part) {
    return part.sense().unit() == null ? "" : ", " + part.sense().unit();
  }

  /** Writes the head of a column. */
  void head(int column, String label) {
    SheetCell.head(sheet, 0, column, label);
    wide(column, Math.min(label.length(), 20));
  }

  private void wide(int column, int characters) {
    while (widths.size() <= column) {
      widths.add(NARROWEST);
    }
    widths.set(column, Math.max(widths.get(column), Math.min(WIDEST, characters + 2)));
  }

  /** Writes a row behind these texts. */
  void add(List<String> before, R values) {
    int at = 0;
    for (String text : before) {
      SheetCell.text(sheet, row, at, text);
      wide(at++, text.length());
    }
    for (Column<R> column : columns) {
      Object value = column.value().apply(values);
      if (column.format() == Format.FIGURE) {
        at = figure(shown(column.inner()), (Figure) value, at);
      } else {
        at = cell(column, value, at);
      }
    }
    row++;
  }

  /** The parts belong to the figure: both come from the same {@code Column.figure}. */
  @SuppressWarnings("unchecked")
  private <F> int figure(List<? extends Column<?>> parts, Figure figure, int from) {
    int at = from;
    for (Column<?> part : parts) {
      at = cell(part, figure == null ? null : ((Column<F>) part).value().apply((F) figure), at);
    }
    return at;
  }

  private int cell(Column<?> column, Object value, int at) {
    SheetCell.write(sheet, row, at, column, value);
    if (value != null) {
      wide(at, Shown.value(column, value).length());
    }
    return at + 1;
  }

  /** Sets widths, and keeps the header and the first column in view. */
  void finish() {
    for (int i = 0; i < widths.size(); i++) {
      sheet.width(i, widths.get(i));
    }
    sheet.freezePane(1, 1);
  }
}
