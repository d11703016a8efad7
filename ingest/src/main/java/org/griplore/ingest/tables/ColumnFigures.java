package org.griplore.ingest.tables;

import java.util.Arrays;
import org.griplore.ingest.recognise.CellNumber;
import org.griplore.ingest.recognise.DecimalMark;
import org.griplore.ingest.recognise.NumberReader;

/** What the cells of a block's column look like, below the header. */
final class ColumnFigures {
  private final CellBlock block;
  private final int body;
  private final NumberReader numbers;

  ColumnFigures(CellBlock block, int body) {
    this.block = block;
    this.body = body;
    this.numbers = new NumberReader(DecimalMark.OPEN);
  }

  /** The share of cells that are figures among those that are not empty or missing; 0 for none. */
  double share(int column) {
    int figures = 0;
    int filled = 0;
    for (int r = body; r < block.rows(); r++) {
      CellSort sort = block.sort(r, column);
      figures += sort.isFigure() ? 1 : 0;
      filled += sort.isFigure() || sort == CellSort.TEXT ? 1 : 0;
    }
    return filled == 0 ? 0 : (double) figures / filled;
  }

  /** The unit that all number formats of a column show; empty where they show none or several. */
  String formatUnit(int column) {
    String unit = "";
    for (int r = body; r < block.rows(); r++) {
      if (block.at(r, column) != null && !block.at(r, column).formatUnit().isEmpty()) {
        String here = block.at(r, column).formatUnit();
        if (!unit.isEmpty() && !unit.equals(here)) {
          return "";
        }
        unit = here;
      }
    }
    return unit;
  }

  /** The share of cells for whose text something holds; 0 for an empty column. */
  double all(int column, java.util.function.Predicate<String> is) {
    int filled = 0;
    int fitting = 0;
    for (int r = body; r < block.rows(); r++) {
      if (block.at(r, column) != null) {
        filled++;
        fitting += is.test(block.text(r, column)) ? 1 : 0;
      }
    }
    return filled == 0 ? 0 : (double) fitting / filled;
  }

  /** The share of texts for which something holds among all cells; 0 for an empty column. */
  double texts(int column, java.util.function.Predicate<String> is) {
    int filled = 0;
    int fitting = 0;
    for (int r = body; r < block.rows(); r++) {
      if (block.at(r, column) != null) {
        filled++;
        boolean text = block.sort(r, column) == CellSort.TEXT;
        fitting += text && is.test(block.text(r, column)) ? 1 : 0;
      }
    }
    return filled == 0 ? 0 : (double) fitting / filled;
  }

  /** Whether all figures are 1, 2, 3 ... from the first on, in order. */
  boolean counts(int column) {
    int expected = 1;
    for (int r = body; r < block.rows(); r++) {
      if (block.sort(r, column) == CellSort.NUMBER) {
        if (!(value(r, column) == expected)) {
          return false;
        }
        expected++;
      }
    }
    return expected > 2;
  }

  /** The median of the figures; NaN where there is none. */
  double typical(int column) {
    double[] values = new double[Math.min(block.rows() - body, 200)];
    int count = 0;
    for (int r = body; r < block.rows() && count < values.length; r++) {
      double value = value(r, column);
      if (!Double.isNaN(value)) {
        values[count++] = value;
      }
    }
    if (count == 0) {
      return Double.NaN;
    }
    Arrays.sort(values, 0, count);
    return values[count / 2];
  }

  /** The figure of a cell as it reads by itself; NaN where there is none. */
  double value(int row, int column) {
    return block.sort(row, column) == CellSort.NUMBER
            && CellNumber.read(block.at(row, column), numbers)
                instanceof NumberReader.Reading.Number number
        ? number.value()
        : Double.NaN;
  }
}
