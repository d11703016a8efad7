package org.griplore.store.vocabulary;

/**
 * Where the parts of a result stand; each is null where the part is absent. A value that was
 * computed (a reduced set of runs, say) names the first cell that it was computed from.
 */
public record ResultCells(Cell value, Cell spread, Cell runs, Cell place) {
  /** A result that is a value only. */
  public static ResultCells ofValue(Cell value) {
    return new ResultCells(value, null, null, null);
  }
}
