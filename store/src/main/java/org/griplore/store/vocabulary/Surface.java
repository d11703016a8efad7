package org.griplore.store.vocabulary;

import java.util.Arrays;
import java.util.Optional;

/** What a figure was measured on. */
public enum Surface {
  DRY("dry"),
  DAMP("damp"),
  WET("wet"),
  SNOW("snow"),
  ICE("ice");

  private final String key;

  Surface(String key) {
    this.key = key;
  }

  /** The word used in files, options and answers. */
  public String key() {
    return key;
  }

  /** The one with this word. */
  public static Optional<Surface> ofKey(String key) {
    return Arrays.stream(values()).filter(value -> value.key.equals(key)).findFirst();
  }
}
