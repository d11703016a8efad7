package org.griplore.store.vocabulary;

import java.util.Arrays;
import java.util.Optional;

/** What sort of evidence a figure is: only like meets like. */
public enum ResultKind {
  /** Measured or rated in a test. */
  MEASURED("measured"),
  /** Declared for the tyre: its label or data sheet. */
  DECLARED("declared"),
  /** Said of it without a measurement: a gain that is claimed. */
  CLAIMED("claimed");

  private final String key;

  ResultKind(String key) {
    this.key = key;
  }

  /** The word used in files, options and answers. */
  public String key() {
    return key;
  }

  /** The one with this word. */
  public static Optional<ResultKind> ofKey(String key) {
    return Arrays.stream(values()).filter(value -> value.key.equals(key)).findFirst();
  }
}
