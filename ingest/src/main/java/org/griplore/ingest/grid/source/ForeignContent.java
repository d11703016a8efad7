package org.griplore.ingest.grid.source;

import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;

/** Contents that are known and not read: what they are and what to do. */
final class ForeignContent {
  private ForeignContent() {}

  /** What such bytes are and what to do; null when they are none of these. */
  static String what(String head) {
    if (head.startsWith("\u0089PNG")
        || head.startsWith("\u00ff\u00d8\u00ff")
        || head.startsWith("GIF8")
        || head.startsWith("RIFF") && head.startsWith("WEBP", 8)
        || head.startsWith("II*\0")
        || head.startsWith("MM\0*")
        || head.startsWith("ftyphei", 4)) {
      return "a picture: type its table into a CSV file";
    }
    if (head.startsWith("\u001f\u008b")
        || head.startsWith("7z\u00bc\u00af")
        || head.startsWith("Rar!")
        || head.startsWith("BZh9")
        || head.startsWith("\u00fd7zXZ")) {
      return "a packed file of a kind that is not read: unpack it first";
    }
    return head.startsWith("SQLite format") ? "a database: export its table as CSV" : null;
  }

  static Refusal refusal(String name, String what) {
    return new Refusal(
        name + " is " + what + ".", new Problem(name, what, "a table, a page, JSON or notes"));
  }
}
