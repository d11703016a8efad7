package org.griplore.query.browse;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Format;
import org.griplore.store.vocabulary.Cell;
import org.griplore.store.vocabulary.Step;
import org.griplore.store.vocabulary.Unit;

/**
 * One step of the way from the text found to a figure, and on to its difference.
 *
 * @param rule what was done, in words
 * @param found the text that went in; null where figures did
 * @param before the figure before; null where a text or many figures went in
 * @param beforeUnit symbol; null likewise, empty for plain numbers
 * @param after the figure after
 * @param afterUnit symbol; empty for plain numbers
 * @param label how sure the rule is, or the figure's error; null when nothing must be said
 * @param cell where what went in stands; null when that is the step before
 */
public record ProvenanceStep(
    String rule,
    String found,
    Double before,
    String beforeUnit,
    double after,
    String afterUnit,
    String label,
    Cell cell) {
  static final List<Column<ProvenanceStep>> COLUMNS =
      List.of(
          Column.of("rule", "Rule", Format.TEXT, ProvenanceStep::rule).means("What was done."),
          Column.of("found", "Text found", Format.TEXT, ProvenanceStep::found)
              .means("The text that went in."),
          Column.of("before", "Before", Format.TEXT, ProvenanceStep::before)
              .inUnitOf("beforeUnit")
              .means("The figure before."),
          Column.of("beforeUnit", "Unit before", Format.UNIT, ProvenanceStep::beforeUnit)
              .means("Its unit."),
          Column.of("after", "After", Format.TEXT, ProvenanceStep::after)
              .inUnitOf("afterUnit")
              .means("The figure after."),
          Column.of("afterUnit", "Unit after", Format.UNIT, ProvenanceStep::afterUnit)
              .means("Its unit."),
          Column.of("label", "To be said", Format.TEXT, ProvenanceStep::label)
              .means("How sure the rule is, or the figure's error."),
          Column.<ProvenanceStep>of("sheet", "Sheet", Format.TEXT, step -> at(step, Cell::sheet))
              .means("Sheet of what went in.")
              .asDetail(),
          Column.<ProvenanceStep>of("row", "Row", Format.COUNT, step -> at(step, Cell::row))
              .means("Row of what went in."),
          Column.<ProvenanceStep>of(
                  "column", "Column", Format.COUNT, step -> at(step, Cell::column))
              .means("Column of what went in."));

  private static <T> T at(ProvenanceStep step, java.util.function.Function<Cell, T> part) {
    return step.cell == null ? null : part.apply(step.cell);
  }

  /** A figure for sentences: six digits that count, no needless zeros. */
  public static String told(double figure) {
    BigDecimal rounded = new BigDecimal(figure).round(new MathContext(6)).stripTrailingZeros();
    return rounded.toPlainString();
  }

  /** From figure to figure. */
  static ProvenanceStep of(
      String rule, double before, String beforeUnit, double after, String afterUnit) {
    return new ProvenanceStep(rule, null, before, beforeUnit, after, afterUnit, null, null);
  }

  /** From the text of a cell to its figure. */
  static ProvenanceStep read(String rule, Cell cell, double after, String afterUnit) {
    return new ProvenanceStep(
        rule, cell == null ? null : cell.found(), null, null, after, afterUnit, null, cell);
  }

  /** A step that was kept. */
  static ProvenanceStep of(Step step) {
    return new ProvenanceStep(
        step.rule(),
        null,
        step.before(),
        symbol(step.beforeUnit()),
        step.after(),
        symbol(step.afterUnit()),
        step.label(),
        step.cell());
  }

  private static String symbol(Unit unit) {
    return unit == null ? null : unit.symbol();
  }

  /** The same step with the text that went in. */
  ProvenanceStep from(Cell place) {
    return new ProvenanceStep(
        rule,
        place.found(),
        before,
        beforeUnit,
        after,
        afterUnit,
        label,
        cell == null ? place : cell);
  }
}
