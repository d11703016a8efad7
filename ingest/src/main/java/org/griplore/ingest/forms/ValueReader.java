package org.griplore.ingest.forms;

import java.util.List;
import org.griplore.ingest.recognise.CanonicalUnit;
import org.griplore.ingest.recognise.FigureSteps;
import org.griplore.ingest.recognise.NumberReader;
import org.griplore.store.vocabulary.Dimension;
import org.griplore.store.vocabulary.Discipline;
import org.griplore.store.vocabulary.Step;
import org.griplore.store.vocabulary.Unit;
import org.griplore.store.vocabulary.UnitWords;

/** Brings a number with its unit to the discipline's canonical unit, or keeps a unit it accepts. */
final class ValueReader {
  private ValueReader() {}

  /**
   * A value as the archive keeps it.
   *
   * @param rule what was done, in words; empty when nothing
   * @param steps what was done one by one; empty where reading the number was all
   * @param remark something that was assumed; null when nothing
   * @param problem why there is no value; null when there is one
   */
  record Read(
      double value, Unit unit, String rule, List<Step> steps, String remark, String problem) {
    static Read refused(String problem) {
      return new Read(Double.NaN, null, "", List.of(), null, problem);
    }
  }

  /**
   * @param headed the column's unit, stated or assumed; never null
   * @param assumed whether the column's unit was assumed
   */
  static Read read(
      NumberReader.Reading.Number number, Discipline discipline, Unit headed, boolean assumed) {
    Unit unit = number.unit().map(recognised -> unit(recognised, headed)).orElse(headed);
    if (!discipline.accepts(unit)) {
      return Read.refused("a unit of " + discipline.key() + ", like " + discipline.unit().symbol());
    }
    boolean otherKind =
        number.unit().isPresent() && !assumed && unit.dimension() != headed.dimension();
    if (otherKind) {
      return Read.refused(
          "the unit of its column, " + headed.symbol() + "; the cell says " + unit.symbol());
    }
    if (unit.dimension() != Dimension.LEVEL
        && unit.dimension() != Dimension.TEMPERATURE
        && number.value() < 0) {
      return Read.refused("a value that is not negative");
    }
    if (number.value() == 0 && isPhysical(unit)) {
      return Read.refused("a value above zero");
    }
    String remark = null;
    if (number.doubtful()) {
      remark = "the mark before three digits was taken for a thousands mark";
    }
    if (number.unit().isPresent() && !assumed && unit != headed && !isPerCent(unit)) {
      remark = "the cell's own unit, " + unit.symbol() + ", was taken, not its column's";
    }
    boolean unstated = assumed && number.unit().isEmpty();
    FigureSteps steps =
        new FigureSteps(number.rules(), number.value(), unstated ? Unit.NUMBER : unit);
    if (unstated) {
      steps.then("unit assumed: " + unit.symbol(), number.value(), unit);
    }
    steps.convert(CanonicalUnit.of(discipline, unit));
    return new Read(steps.value(), steps.unit(), steps.rule(), steps.list(), remark, null);
  }

  /** A bare per cent sign in a cell means what the column says per cent is of. */
  private static Unit unit(UnitWords.Recognised inCell, Unit headed) {
    return isPerCent(inCell.unit()) && isPerCent(headed) ? headed : inCell.unit();
  }

  private static boolean isPerCent(Unit unit) {
    return unit.dimension() == Dimension.RELATIVE;
  }

  private static boolean isPhysical(Unit unit) {
    return switch (unit.dimension()) {
      case LENGTH, TIME, SPEED, ACCELERATION, FORCE_RATIO, MASS, ENERGY_PER_DISTANCE -> true;
      default -> false;
    };
  }
}
