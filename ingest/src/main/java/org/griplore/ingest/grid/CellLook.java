package org.griplore.ingest.grid;

import java.util.Objects;

/**
 * How a source shows a cell, beside its text.
 *
 * @param format the number format; null where there is none or it says nothing
 * @param struck whether the text is struck out: written and taken back
 * @param hidden whether the source hides this very cell (a hidden row, column or sheet is told by
 *     the {@link Grid})
 * @param comment what somebody noted on the cell; empty where there is nothing
 * @param mark a raised mark behind the text, such as the {@code 1} of a footnote, which is no part
 *     of the text; empty where there is none
 */
public record CellLook(
    FormatCode format, boolean struck, boolean hidden, String comment, String mark) {
  /** Nothing but the text. */
  public static final CellLook PLAIN = new CellLook(null, false, false, "", "");

  /** Checks that no text is null. */
  public CellLook {
    Objects.requireNonNull(comment);
    Objects.requireNonNull(mark);
  }

  /** Plain but for a raised mark. */
  public static CellLook marked(String mark) {
    return mark.isEmpty() ? PLAIN : new CellLook(null, false, false, "", mark);
  }

  /** The same with a number format. */
  public CellLook with(FormatCode other) {
    return new CellLook(other, struck, hidden, comment, mark);
  }

  /** The same, hidden. */
  public CellLook hiding() {
    return new CellLook(format, struck, true, comment, mark);
  }

  /** The same, struck out. */
  public CellLook strikingOut() {
    return new CellLook(format, true, hidden, comment, mark);
  }

  /** The same with a further comment. */
  public CellLook commented(String further) {
    String both = comment.isEmpty() ? further : comment + "; " + further;
    return new CellLook(format, struck, hidden, both, mark);
  }
}
