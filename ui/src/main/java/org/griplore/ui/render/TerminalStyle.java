package org.griplore.ui.render;

/**
 * What the terminal can show.
 *
 * @param width characters a line
 * @param colour whether escape codes are understood
 */
public record TerminalStyle(int width, boolean colour) {
  private static final int USUAL_WIDTH = 100;
  private static final int NARROWEST = 40;

  /** No terminal: a pipe or a file. */
  public static final TerminalStyle PLAIN = new TerminalStyle(120, false);

  /** The style for where standard output goes, by the usual environment variables. */
  public static TerminalStyle ofEnvironment() {
    boolean terminal = System.console() != null;
    String columns = System.getenv("COLUMNS");
    int width =
        columns != null && columns.matches("\\d{1,4}")
            ? Math.max(NARROWEST, Integer.parseInt(columns))
            : terminal ? USUAL_WIDTH : PLAIN.width();
    boolean colour =
        terminal && System.getenv("NO_COLOR") == null && !"dumb".equals(System.getenv("TERM"));
    return new TerminalStyle(width, colour);
  }

  String strong(String text) {
    return colour ? "\u001b[1m" + text + "\u001b[0m" : text;
  }

  String quiet(String text) {
    return colour ? "\u001b[2m" + text + "\u001b[0m" : text;
  }
}
