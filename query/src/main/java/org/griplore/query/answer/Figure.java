package org.griplore.query.answer;

import java.util.List;

/**
 * A figure in a comparison table: a value, its place and its difference. Any may be null; one
 * without value, place and difference says that there is no evidence.
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
  Long result();

  /** Lower end of the difference's interval. */
  default Double low() {
    return null;
  }

  /** Upper end of the difference's interval. */
  default Double high() {
    return null;
  }

  /** Numbers of the footnotes that belong to it. */
  default List<Integer> footnotes() {
    return List.of();
  }

  /** What stands before the value: a sign that it was not measured, or nothing. */
  default String mark() {
    return "";
  }
}
