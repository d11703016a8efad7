package org.griplore.ingest.reduce;

/**
 * The level that corrected values stand on. Ratios between candidates are the same on both
 * (arithmetic); only the absolute level differs.
 */
public enum Anchor {
  /** The first measurement of the reference (ASTM F1650 method A). */
  FIRST_REFERENCE("as on the first reference measurement"),
  /** The mean of all measurements of the reference (ASTM F1650 method B). */
  GRAND_MEAN("as on the average of all reference measurements");

  private final String words;

  Anchor(String words) {
    this.words = words;
  }

  /** What the level means, for a page. */
  public String words() {
    return words;
  }
}
