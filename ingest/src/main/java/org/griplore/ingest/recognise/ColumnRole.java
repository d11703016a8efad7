package org.griplore.ingest.recognise;

import java.util.Locale;

/** What a column that is no discipline holds. */
public enum ColumnRole {
  MODEL,
  MAKER,
  SIZE,
  /** The place in the whole test. */
  PLACE,
  /** The tester's total of the whole test. */
  TOTAL,
  /** A total of some disciplines only, such as all wet ones. */
  SUBTOTAL,
  /** Words on an entry: remarks, strengths, weaknesses. */
  NOTE,
  DATE,
  VEHICLE,
  VEHICLE_MASS,
  VENUE,
  RUNS,
  /** Standard deviation, coefficient of variation or the like; the header says which. */
  SPREAD,
  UNIT,
  /** A result whose discipline another column, the title or the sheet names. */
  VALUE,
  DISCIPLINE,
  LOAD_INDEX,
  SPEED_SYMBOL,
  SEASON,
  SEGMENT,
  TITLE,
  SOURCE,
  SOURCE_KIND,
  TEST,
  ORIGIN,
  /** Week or date of production. */
  PRODUCTION,
  TREAD_DEPTH,
  HARDNESS,
  PRESSURE,
  SURFACE_TEMPERATURE,
  AIR_TEMPERATURE,
  /** Classes of the tyre label; never a test result. */
  LABEL,
  SEQUENCE;

  /** The word used in mappings and answers, like {@code load-index}. */
  public String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
