package org.griplore.ingest.tables;

import java.util.regex.Pattern;
import org.griplore.ingest.grid.GridCell;
import org.griplore.ingest.recognise.CellNumber;
import org.griplore.ingest.recognise.DecimalMark;
import org.griplore.ingest.recognise.NumberReader;

/** What a cell looks like, before anything is known of its column. */
enum CellSort {
  EMPTY,
  /** A number, perhaps with its unit. */
  NUMBER,
  /** A mark that there is no value. */
  MISSING,
  /** Begins like a number and is none: a range, a bound. */
  ODD,
  TEXT;

  private static final NumberReader NUMBERS = new NumberReader(DecimalMark.OPEN);
  private static final Pattern ODD_FIGURE = Pattern.compile("[<>~\u2265\u2264]?\\s*\\d.*");
  private static final int LONGEST_FIGURE = 24;

  static CellSort of(GridCell cell) {
    if (cell == null) {
      return EMPTY;
    }
    if (cell.date() != null) {
      return TEXT;
    }
    if (cell.number() != null) {
      return NUMBER;
    }
    if (cell.text().length() > LONGEST_FIGURE) {
      return TEXT;
    }
    NumberReader.Reading read = CellNumber.read(cell, NUMBERS);
    if (read instanceof NumberReader.Reading.Number) {
      return NUMBER;
    }
    if (read instanceof NumberReader.Reading.NotNumber) {
      boolean odd =
          ODD_FIGURE.matcher(cell.text()).matches()
              && SpeedWindow.in(cell.text()).isEmpty()
              && cell.text().chars().filter(Character::isLetter).count() < 4;
      return odd ? ODD : TEXT;
    }
    return MISSING;
  }

  /** Whether it may stand in a column of figures. */
  boolean isFigure() {
    return this == NUMBER || this == ODD;
  }
}
