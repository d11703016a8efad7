package org.griplore.store.vocabulary;

import java.util.Arrays;
import java.util.Optional;

/** Who stands behind a test report. */
public enum SourceKind {
  /** The user's own tests. */
  OWN("own"),
  /** Published by others, independent of the makers. */
  INDEPENDENT("independent"),
  /** Supplied by a tyre manufacturer. */
  MAKER("maker");

  private final String key;

  SourceKind(String key) {
    this.key = key;
  }

  /** The word used in files, options and answers. */
  public String key() {
    return key;
  }

  /** The one with this word. */
  public static Optional<SourceKind> ofKey(String key) {
    return Arrays.stream(values()).filter(value -> value.key.equals(key)).findFirst();
  }
}
