package org.griplore.query.answer;

/**
 * A figure in a comparison table: a value, its place and its difference. Any may be null, but not
 * value and place both.
 */
public interface Figure {
  /** The value in the column's unit. */
  Double value();

  /** The place among those compared. */
  Integer place();

  /** The difference, plus is better, in {@link #deltaUnit}. */
  Double delta();

  /** {@code %} or a unit. */
  String deltaUnit();

  /** Number of the stored result that it leads to. */
  long result();
}
