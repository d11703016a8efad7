package org.griplore.ingest.grid;

import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;

/**
 * Counts the cells of a source that is held in memory whole. Only a long table, which is read row
 * by row, may be of any length.
 */
public final class CellCount {
  /** Cells take some 100 bytes each. */
  private static final int MOST = 5_000_000;

  private final String name;
  private int cells;

  public CellCount(String name) {
    this.name = name;
  }

  /**
   * Counts more cells.
   *
   * @throws Refusal when they are too many for the memory
   */
  public void add(int more) {
    cells += more;
    if (cells > MOST) {
      throw tooMany();
    }
  }

  /** The refusal of a source that is too large to be held in memory. */
  public Refusal tooMany() {
    return new Refusal(
        "%s holds more than %d cells: part it, or write it as one row a result, which may be of any length."
            .formatted(name, MOST),
        new Problem(name, "too many cells", "at most " + MOST + " cells"));
  }
}
