package org.griplore.store.vocabulary;

import java.util.Arrays;
import java.util.Optional;

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

  /** The one with this word. */
  public static Optional<SeasonClass> ofKey(String key) {
    return Arrays.stream(values()).filter(value -> value.key.equals(key)).findFirst();
  }
}
