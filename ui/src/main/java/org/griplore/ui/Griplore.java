package org.griplore.ui;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import org.griplore.ui.command.Commands;
import org.griplore.ui.command.Terminal;
import org.griplore.ui.render.TerminalStyle;

/** The program: runs one command line and exits with its code. */
public final class Griplore {
  private Griplore() {}

  /** Runs the command given by the arguments. */
  public static void main(String[] arguments) {
    Terminal terminal =
        new Terminal(
            writer(FileDescriptor.out),
            writer(FileDescriptor.err),
            TerminalStyle.ofEnvironment(),
            System.console() == null ? new FileOutputStream(FileDescriptor.out) : null);
    System.exit(new Commands(terminal, Clock.systemUTC()).run(arguments));
  }

  /** UTF-8 whatever the platform's default is. */
  private static PrintWriter writer(FileDescriptor descriptor) {
    return new PrintWriter(new FileOutputStream(descriptor), false, StandardCharsets.UTF_8);
  }
}
