package org.griplore.ingest.grid.text;

import java.util.ArrayList;
import java.util.List;
import org.griplore.ingest.grid.GridCell;
import org.griplore.store.vocabulary.Finding;

/** Names of an aligned table that stand in two lines, put together. */
public final class SplitNames {
  private SplitNames() {}

  /**
   * The rows with such names in one: a line that is a text in the first column only, above a row
   * that has none there.
   *
   * @param findings takes one for each name
   */
  public static List<List<GridCell>> joined(List<List<GridCell>> rows, List<Finding> findings) {
    List<List<GridCell>> joined = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      List<GridCell> row = rows.get(i);
      boolean alone = row.size() == 1 && row.get(0).column() == 1;
      List<GridCell> next = i + 1 < rows.size() ? rows.get(i + 1) : List.of();
      if (alone && isHeadless(next) && next.get(0).row() == row.get(0).row() + 1) {
        List<GridCell> whole = new ArrayList<>(row);
        whole.addAll(next);
        String name = row.get(0).text();
        List<GridCell> below = i + 2 < rows.size() ? rows.get(i + 2) : List.of();
        boolean goesOn =
            below.size() == 1
                && below.get(0).column() == 1
                && below.get(0).row() == next.get(0).row() + 1
                && !isHeadless(i + 3 < rows.size() ? rows.get(i + 3) : List.of());
        if (goesOn) {
          name += " " + below.get(0).text();
          i++;
        }
        GridCell cell = new GridCell(row.get(0).row(), 1, name, null, null, row.get(0).look());
        whole.set(0, cell);
        findings.add(FixedWidthText.joined(cell));
        joined.add(whole);
        i++;
      } else {
        joined.add(row);
      }
    }
    return joined;
  }

  /** Whether a row holds figures and no name. */
  private static boolean isHeadless(List<GridCell> row) {
    return !row.isEmpty()
        && row.get(0).column() > 1
        && row.stream().anyMatch(cell -> AlignedTable.isFigure(cell.text()));
  }
}
