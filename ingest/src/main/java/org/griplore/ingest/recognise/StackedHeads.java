package org.griplore.ingest.recognise;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.griplore.ingest.grid.GridCell;
import org.griplore.store.vocabulary.UnitWords;

/**
 * Headers in two rows, the tyres named in the upper one only, as a merged cell or over a blank one:
 * {@code Tyre | Wet | | Dry} over {@code | Braking | Handling | Braking}. Neither row alone is a
 * header; the two are joined to one that stands in the lower row.
 */
final class StackedHeads {
  private final HeaderReader headers;

  StackedHeads(HeaderReader headers) {
    this.headers = headers;
  }

  /**
   * The lower row with the words of the upper one before its own.
   *
   * @return null when the two rows are no header in two rows
   */
  List<GridCell> joined(List<GridCell> upper, List<GridCell> lower) {
    int row = lower.get(0).row();
    if (upper.get(0).row() != row - 1 || hasFigures(upper) || hasFigures(lower)) {
      return null;
    }
    TreeMap<Integer, String> over = texts(upper);
    TreeMap<Integer, String> under = texts(lower);
    boolean named =
        over.entrySet().stream()
            .anyMatch(head -> isTyre(head.getValue()) && !under.containsKey(head.getKey()));
    if (!named) {
      return null;
    }
    List<GridCell> heads = new ArrayList<>();
    int figures = 0;
    TreeMap<Integer, String> all = new TreeMap<>(over);
    all.putAll(under);
    for (int column : all.keySet()) {
      String own = under.getOrDefault(column, "");
      String text = (group(over, column, own) + " " + own).strip();
      figures += !own.isEmpty() && isNew(over.get(column), own) && isFigure(text) ? 1 : 0;
      heads.add(GridCell.of(row, column, text));
    }
    return figures > 0 ? heads : null;
  }

  /**
   * The words above a column; over a blank cell those to its left, where its own say too little.
   */
  private String group(TreeMap<Integer, String> over, int column, String own) {
    String above = over.get(column);
    if (above != null) {
      return above;
    }
    var left = isFigure(own) ? null : over.lowerEntry(column);
    return left == null || isTyre(left.getValue()) ? "" : left.getValue();
  }

  private static TreeMap<Integer, String> texts(List<GridCell> row) {
    TreeMap<Integer, String> texts = new TreeMap<>();
    row.forEach(cell -> texts.put(cell.column(), cell.text()));
    return texts;
  }

  private static boolean hasFigures(List<GridCell> row) {
    return row.stream()
        .anyMatch(cell -> cell.number() != null || Character.isDigit(cell.text().charAt(0)));
  }

  /** Whether the lower row says more than the unit or the part of what the upper one names. */
  private boolean isNew(String above, String own) {
    return (above == null || !isFigure(above))
        && UnitWords.ofText(own).isEmpty()
        && ColumnWords.topic(own).isEmpty();
  }

  private boolean isTyre(String text) {
    ColumnRole role = headers.role(text, null);
    return role instanceof ColumnRole.Tyre || role instanceof ColumnRole.Model;
  }

  private boolean isFigure(String text) {
    ColumnRole role = headers.role(text, null);
    return role instanceof ColumnRole.Value || role instanceof ColumnRole.Place;
  }
}
