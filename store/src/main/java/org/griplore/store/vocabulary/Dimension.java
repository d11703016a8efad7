package org.griplore.store.vocabulary;

/** The physical kind of a unit; units of one dimension convert into each other. */
public enum Dimension {
  LENGTH,
  TIME,
  SPEED,
  ACCELERATION,
  LEVEL,
  FORCE,
  FORCE_RATIO,
  MASS,
  ENERGY_PER_DISTANCE,
  TEMPERATURE,
  CURRENCY,
  POINTS,
  /** School marks, one scale each: 1 is best. */
  MARK,
  /** Per cent of the best or of a reference; needs the whole table to be turned back. */
  RELATIVE,
  NUMBER
}
