package org.griplore.query.answer;

import java.util.Locale;

/** How a column's values are to be read; each rendering writes them its own way. */
public enum Format {
  /** A {@code String}. */
  TEXT,
  /** A unit's symbol, as {@code String}. */
  UNIT,
  /** A model's full name. */
  MODEL,
  /** A line's name, maker first. */
  LINE,
  /** A test's key. */
  TEST,
  /** A catalogue key. */
  DISCIPLINE,
  /** A date as exactly as known, ISO 8601, as {@code String}. */
  DATE,
  /** An {@code Integer} that counts something. */
  COUNT,
  /** A year, as {@code Integer}. */
  YEAR,
  /** A place, as {@code Integer}, or {@code Double} for a median. */
  PLACE,
  /** A share from 0 to 1, as {@code Double}; shown in per cent. */
  SHARE,
  /** A probability from 0 to 1, as {@code Double}. */
  CHANCE,
  /** A number in the unit of its row or column, as {@code Double}. */
  NUMBER,
  /** A difference where plus is better, as {@code Double}, in the unit of its row or column. */
  DELTA,
  /** A {@code Boolean}. */
  FLAG,
  /** The number of a stored result, as {@code Long}: leads to the cell it came from. */
  RESULT,
  /** A {@link Figure} of a comparison table. */
  FIGURE,
  /** A {@code Snippet}: words with the hits marked. */
  SNIPPET,
  /** A list of rows with columns of their own. */
  ROWS,
  /** A list of texts. */
  TEXTS;

  /** Its word in JSON. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
