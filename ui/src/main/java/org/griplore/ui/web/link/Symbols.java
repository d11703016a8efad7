package org.griplore.ui.web.link;

/** Symbols of units as a page sets them; data and commands hold them in plain letters. */
public final class Symbols {
  private Symbols() {}

  /** A text with its symbols set: {@code m/s\u00b2} for {@code m/s2}. */
  public static String set(String text) {
    return text == null ? null : text.replace("m/s2", "m/s\u00b2");
  }
}
