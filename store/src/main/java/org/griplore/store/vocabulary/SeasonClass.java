package org.griplore.store.vocabulary;

/** The season a tyre is built for. */
public enum SeasonClass {
  SUMMER("summer"),
  WINTER("winter"),
  ALL_SEASON("all-season");

  private final String key;

  SeasonClass(String key) {
    this.key = key;
  }

  /** The word used in files, options and answers. */
  public String key() {
    return key;
  }
}
