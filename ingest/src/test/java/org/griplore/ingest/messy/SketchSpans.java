package org.griplore.ingest.messy;

import java.util.List;

/** How far a cell of a sketch's table reaches over the cells that are one with it. */
record SketchSpans(List<List<String>> table) {

  /** Whether the cell belongs to one at its left or above. */
  boolean covered(int r, int c) {
    String cell = table.get(r).get(c);
    return cell.equals(Sketch.LEFT) || cell.equals(Sketch.UP);
  }

  /** Columns that the cell takes, 1 for a plain one. */
  int across(int r, int c) {
    List<String> row = table.get(r);
    int across = 1;
    while (c + across < row.size() && row.get(c + across).equals(Sketch.LEFT)) {
      across++;
    }
    return across;
  }

  /** Rows that the cell takes, 1 for a plain one. */
  int down(int r, int c) {
    int down = 1;
    while (r + down < table.size()
        && c < table.get(r + down).size()
        && table.get(r + down).get(c).equals(Sketch.UP)) {
      down++;
    }
    return down;
  }
}
