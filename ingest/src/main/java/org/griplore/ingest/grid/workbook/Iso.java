package org.griplore.ingest.grid.workbook;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.LocalDate;
import org.griplore.ingest.grid.GridCell;

/** Dates and times of day that a workbook keeps as text of ISO 8601. */
final class Iso {
  private static final int DATE = 10;
  private static final BigDecimal DAY = BigDecimal.valueOf(86_400);

  private Iso() {}

  /** The cell with its date; as it is where its text is none. */
  static GridCell date(GridCell cell) {
    String text = cell.text();
    try {
      LocalDate date = LocalDate.parse(text.length() > DATE ? text.substring(0, DATE) : text);
      return new GridCell(cell.row(), cell.column(), date.toString(), null, date, cell.look());
    } catch (DateTimeException e) {
      return cell;
    }
  }

  /** A duration such as {@code PT00H01M23.4S} as a part of a day; null where it is none. */
  static BigDecimal partOfDay(String text) {
    try {
      Duration time = Duration.parse(text);
      BigDecimal seconds =
          BigDecimal.valueOf(time.getSeconds()).add(BigDecimal.valueOf(time.getNano(), 9));
      return seconds.divide(DAY, 15, RoundingMode.HALF_UP);
    } catch (DateTimeException | ArithmeticException e) {
      return null;
    }
  }
}
