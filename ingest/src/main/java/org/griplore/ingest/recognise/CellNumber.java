package org.griplore.ingest.recognise;

import java.util.Optional;
import org.griplore.ingest.grid.GridCell;
import org.griplore.store.vocabulary.UnitWords;

/**
 * The number of a cell: the one behind the text where the source keeps numbers, else the text's.
 */
public final class CellNumber {
  private CellNumber() {}

  /** The reading of a cell; {@code numbers} reads its text. */
  public static NumberReader.Reading read(GridCell cell, NumberReader numbers) {
    if (cell.number() == null) {
      return numbers.read(cell.text());
    }
    boolean perCent = cell.text().endsWith("%");
    Optional<UnitWords.Recognised> unit = perCent ? UnitWords.ofText("%") : Optional.empty();
    double value = perCent ? 100 * cell.number() : cell.number();
    return new NumberReader.Reading.Number(
        Math.round(value * 1e10) / 1e10, unit, perCent ? "cell shown in per cent" : "", false);
  }
}
