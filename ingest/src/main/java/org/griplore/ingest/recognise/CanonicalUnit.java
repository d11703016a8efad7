package org.griplore.ingest.recognise;

import org.griplore.store.vocabulary.Dimension;
import org.griplore.store.vocabulary.Discipline;
import org.griplore.store.vocabulary.Unit;

/** The unit that a discipline's figures are kept in. */
public final class CanonicalUnit {
  private CanonicalUnit() {}

  /**
   * The discipline's canonical unit where the given one converts to it, else the usual unit of the
   * given one's dimension; currencies, points, marks and per cent stay as they are.
   */
  public static Unit of(Discipline discipline, Unit given) {
    if (given.dimension() == Dimension.CURRENCY) {
      return given;
    }
    if (given.convertsTo(discipline.unit())) {
      return discipline.unit();
    }
    return switch (given.dimension()) {
      case LENGTH -> Unit.METRE;
      case TIME -> Unit.SECOND;
      case SPEED -> Unit.KILOMETRE_PER_HOUR;
      case ACCELERATION -> Unit.METRE_PER_SECOND_SQUARED;
      case FORCE -> Unit.NEWTON;
      case MASS -> Unit.KILOGRAM;
      default -> given;
    };
  }
}
