package org.griplore.store.vocabulary;

import java.util.Objects;

/**
 * Another quantity in which a discipline is also published, with the better direction there: a
 * braking distance (less is better) also as mean deceleration (more is better).
 *
 * <p>It covers every unit of its dimension; where that is the discipline's own dimension it covers
 * this one unit only (tread lost in mm beside life in km).
 *
 * @param unit the unit in which such values are kept
 * @param better which way is better in that unit
 */
public record Alternative(Unit unit, Direction better) {
  /** Checks that both are given. */
  public Alternative {
    Objects.requireNonNull(unit);
    Objects.requireNonNull(better);
  }

  /** The physical kind of the other quantity. */
  public Dimension dimension() {
    return unit.dimension();
  }
}
