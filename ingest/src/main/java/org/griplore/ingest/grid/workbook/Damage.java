package org.griplore.ingest.grid.workbook;

import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;

/** Refusals of workbooks that are not whole. */
final class Damage {
  private static final int LONGEST = 20;

  private Damage() {}

  static Refusal of(String name, Throwable cause) {
    return new Refusal(
        name + " is a damaged or incomplete workbook: save it anew and add it again.",
        cause,
        new Problem(name, "a damaged workbook", "a whole workbook"));
  }

  /** With what is wrong in which part. */
  static Refusal of(String name, String part, String what, String found, String expected) {
    return new Refusal(
        "%s is a damaged or incomplete workbook: its %s %s; save it anew and add it again."
            .formatted(name, part, what),
        new Problem(name + ", " + part, found, expected));
  }

  static String shortened(String text) {
    return text.length() > LONGEST ? text.substring(0, LONGEST) + "\u2026" : text;
  }
}
