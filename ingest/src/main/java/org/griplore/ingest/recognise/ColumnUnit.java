package org.griplore.ingest.recognise;

import org.griplore.store.vocabulary.Unit;

/**
 * The unit decided for a column.
 *
 * @param unit the unit; null when none could be decided, or the figures are places
 * @param places whether the figures are places
 * @param rule what was assumed, in words for each figure's rule; empty when nothing was
 * @param turn what is done to each figure beside conversion
 */
record ColumnUnit(Unit unit, boolean places, String rule, Turn turn) {
  /** What is done to figures of a relative scale. */
  enum Turn {
    NONE,
    /** 100 * 100 / x: the best has 100 and the others more. */
    UPSIDE_DOWN,
    /** 100 * x / highest: points of an unknown scale. */
    SHARE_OF_HIGHEST
  }

  static final ColumnUnit NONE = new ColumnUnit(null, false, "", Turn.NONE);
  static final ColumnUnit PLACES = new ColumnUnit(null, true, "", Turn.NONE);

  /** Whether the source says the unit; else it was assumed, and the rule says so. */
  boolean isStated() {
    return rule.isEmpty();
  }

  static ColumnUnit stated(Unit unit) {
    return new ColumnUnit(unit, false, "", Turn.NONE);
  }

  static ColumnUnit assumed(Unit unit) {
    return new ColumnUnit(unit, false, "unit assumed: " + unit.symbol(), Turn.NONE);
  }
}
