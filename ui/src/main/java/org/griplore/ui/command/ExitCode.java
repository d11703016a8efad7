package org.griplore.ui.command;

/** What the program says to the shell. */
public final class ExitCode {
  /** Answered. */
  public static final int ANSWERED = 0;

  /** Understood, but there is no evidence. */
  public static final int NO_EVIDENCE = 1;

  /** Refused. */
  public static final int ERROR = 2;

  private ExitCode() {}
}
