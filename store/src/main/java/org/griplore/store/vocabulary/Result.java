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
 * @param circumstance how it came about: its kind, window of speeds and conditions
 * @param sequence place of its set in the order of the day; null when not stated
 * @param repeat tells results of one entry, discipline and circumstance apart, from 1
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
    List<Step> steps,
    Circumstance circumstance,
    Integer sequence,
    int repeat) {
  /** Checks that there is a figure and that numbers are finite. */
  public Result {
    Objects.requireNonNull(discipline);
    Objects.requireNonNull(cells);
    Objects.requireNonNull(rule);
    Objects.requireNonNull(circumstance);
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
    if (repeat < 1) {
      throw new IllegalArgumentException("repeats count from 1");
    }
  }

  /** The first measured result, of which no more is stated. */
  public Result(
      String discipline,
      Double value,
      Unit unit,
      Double spread,
      Integer runs,
      Integer place,
      ResultCells cells,
      String rule,
      List<Step> steps) {
    this(
        discipline,
        value,
        unit,
        spread,
        runs,
        place,
        cells,
        rule,
        steps,
        Circumstance.MEASURED,
        null,
        1);
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

  /** The same result as it came about. */
  public Result under(Circumstance other) {
    return new Result(
        discipline, value, unit, spread, runs, place, cells, rule, steps, other, sequence, repeat);
  }

  /** The same result as a repeat. */
  public Result repeated(Integer set, int number) {
    return new Result(
        discipline,
        value,
        unit,
        spread,
        runs,
        place,
        cells,
        rule,
        steps,
        circumstance,
        set,
        number);
  }
}
