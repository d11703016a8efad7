package org.griplore.ingest.grid;

import java.util.regex.Pattern;

/**
 * A text put together from parts of which some are raised or struck out. A raised part is a mark
 * beside the text, such as a footnote's, so that it never joins a number; a raised 2 or 3 behind a
 * unit of length or time is its power, {@code m/s2}. A part that is struck out is no part of the
 * text where another part is not.
 */
public final class MarkedText {
  private static final Pattern UNIT =
      Pattern.compile("(?s)(?:^|.*[^\\p{L}\\p{N}])(?:mm|cm|km|m|s|h)");
  private static final Pattern POWER = Pattern.compile("[-\u2212]?[123]");
  private static final Pattern BRACKETS = Pattern.compile("[()\\[\\]]");

  private final StringBuilder kept = new StringBuilder();
  private final StringBuilder struck = new StringBuilder();
  private final StringBuilder mark = new StringBuilder();
  private final StringBuilder all = new StringBuilder();
  private String leading = "";

  /**
   * Adds a part.
   *
   * @param raised whether it stands above the line
   * @param struckOut whether a line goes through it
   */
  public void add(String text, boolean raised, boolean struckOut) {
    all.append(text);
    if (raised) {
      raised(text);
    } else {
      (struckOut ? struck : kept).append(text);
    }
  }

  private void raised(String text) {
    String bare = VisibleText.of(BRACKETS.matcher(text).replaceAll(""));
    if (POWER.matcher(bare).matches() && UNIT.matcher(kept).matches()) {
      kept.append(bare);
    } else if (!bare.isEmpty()) {
      mark.append(mark.isEmpty() ? "" : " ").append(bare);
      leading = isOnlyMark() ? mark.toString() : leading;
    }
  }

  private boolean isOnlyMark() {
    return VisibleText.of(kept.toString()).isEmpty() && VisibleText.of(struck.toString()).isEmpty();
  }

  private boolean isStruck() {
    return VisibleText.of(kept.toString()).isEmpty()
        && !VisibleText.of(struck.toString()).isEmpty();
  }

  /** The text, without blanks at its ends; what is raised only where there is nothing else. */
  public String text() {
    return VisibleText.of((isOnlyMark() ? all : isStruck() ? struck : kept).toString());
  }

  /** The text behind the raised mark that leads it, if one does: {@code [1] with a shower}. */
  public String line() {
    return leading.isEmpty() || isOnlyMark() ? text() : "[" + leading + "] " + text();
  }

  /** The raised marks, parted by blanks, without brackets. */
  private String mark() {
    return isOnlyMark() ? "" : mark.toString();
  }

  /** How the text is shown; a struck part beside the text is told in the comment. */
  public CellLook look() {
    String left = isStruck() ? "" : VisibleText.of(struck.toString());
    String comment = left.isEmpty() ? "" : "struck out: " + left;
    return comment.isEmpty() && mark().isEmpty() && !isStruck()
        ? CellLook.PLAIN
        : new CellLook(null, isStruck(), false, comment, mark());
  }

  /** The text as a cell; null where it is empty. */
  public GridCell cell(int row, int column) {
    String text = text();
    return text.isEmpty() ? null : new GridCell(row, column, text, null, null, look());
  }
}
