package org.griplore.store.vocabulary;

import java.util.List;
import java.util.Objects;

/**
 * One figure of an entry in a discipline: a value, a place, or both.
 *
 * @param discipline the discipline's catalogue key, or {@code overall}
 * @param value in {@code unit}; null when only a place is known
 * @param unit the discipline's canonical unit, or another it is published in; null without a value
 * @param spread standard deviation of the runs in {@code unit}; null when not stated
 * @param runs number of runs behind the value; null when not stated
 * @param place the place as published; null when not published
 * @param cells where each part stands
 * @param rule what was done from the text as found to the value, in words; empty when nothing was
 * @param steps what was done one by one, with the figure before and after; empty where reading the
 *     number was all
 */
public record Result(
    String discipline,
    Double value,
    Unit unit,
    Double spread,
    Integer runs,
    Integer place,
    ResultCells cells,
    String rule,
    List<Step> steps) {
  /** Checks that there is a figure and that numbers are finite. */
  public Result {
    Objects.requireNonNull(discipline);
    Objects.requireNonNull(cells);
    Objects.requireNonNull(rule);
    steps = List.copyOf(steps);
    if (value == null && place == null) {
      throw new IllegalArgumentException("a result needs a value or a place");
    }
    if (value != null && (!Double.isFinite(value) || unit == null)) {
      throw new IllegalArgumentException("a result's value is finite and has a unit");
    }
    if (place != null && place < 1) {
      throw new IllegalArgumentException("places count from 1");
    }
  }

  /** A result whose number was read and no more. */
  public Result(
      String discipline,
      Double value,
      Unit unit,
      Double spread,
      Integer runs,
      Integer place,
      ResultCells cells,
      String rule) {
    this(discipline, value, unit, spread, runs, place, cells, rule, List.of());
  }
}
