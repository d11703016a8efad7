package org.griplore.query.table;

/** What a cell of a comparison table rests on. */
public enum FigureBasis {
  /** The tyre stood in tests of like size and car. */
  MEASURED("measured"),
  /** Other tests connect the tyre with the rest of the column. */
  EXPECTED("expected"),
  /** Nothing says how the tyre compares. */
  NONE("none");

  private final String key;

  FigureBasis(String key) {
    this.key = key;
  }

  /** The word used in answers. */
  public String key() {
    return key;
  }
}
