package org.griplore.ingest.recognise;

import java.util.ArrayList;
import java.util.List;
import org.griplore.store.vocabulary.Step;
import org.griplore.store.vocabulary.Unit;

/**
 * Collects what is done to one figure, from the text as found to the unit it is kept in. Millions
 * of figures are read as they stand: nothing is made for them.
 */
public final class FigureSteps {
  private static final String AS_WRITTEN = "number as written";

  private final String reading;
  private final double read;
  private final Unit readUnit;
  private double value;
  private Unit unit;
  private List<Step> later = List.of();

  /**
   * Begins with the number that was read.
   *
   * @param reading what was done to the text, in words; empty when nothing
   * @param unit the unit that cell, header or table state; {@link Unit#NUMBER} where none does
   */
  public FigureSteps(String reading, double value, Unit unit) {
    this.reading = reading;
    this.read = value;
    this.readUnit = unit;
    this.value = value;
    this.unit = unit;
  }

  /** Adds a step to another figure or unit. */
  public void then(String rule, double after, Unit afterUnit) {
    if (later.isEmpty()) {
      later = new ArrayList<>(3);
    }
    later.add(Step.of(rule, value, unit, after, afterUnit));
    value = after;
    unit = afterUnit;
  }

  /** Adds the conversion to another unit; no step where that is the unit already. */
  public void convert(Unit to) {
    if (unit != to) {
      then("from " + unit.symbol() + " to " + to.symbol(), unit.convert(value, to), to);
    }
  }

  /** The figure now. */
  public double value() {
    return value;
  }

  /** Its unit. */
  public Unit unit() {
    return unit;
  }

  /** All rules in a sentence; empty when the number was taken as written. */
  public String rule() {
    StringBuilder rule = new StringBuilder(reading);
    for (Step step : later) {
      rule.append(rule.isEmpty() ? "" : "; ").append(step.rule());
    }
    return rule.toString();
  }

  /** All steps; empty when the figure is still the number that was read: then the rule tells it. */
  public List<Step> list() {
    if (later.isEmpty() || value == read) {
      return List.of();
    }
    List<Step> all = new ArrayList<>();
    all.add(Step.to(reading.isEmpty() ? AS_WRITTEN : reading, read, readUnit));
    all.addAll(later);
    return all;
  }
}
