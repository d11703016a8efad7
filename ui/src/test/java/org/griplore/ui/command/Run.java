package org.griplore.ui.command;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import org.griplore.ui.render.TerminalStyle;

/** One command line run in this process: its exit code, answers and refusals. */
record Run(int code, String out, String err) {
  static Run of(String... words) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    Terminal terminal =
        new Terminal(new PrintWriter(out), new PrintWriter(err), TerminalStyle.PLAIN, null);
    Clock clock = Clock.fixed(Instant.parse("2024-12-01T00:00:00Z"), ZoneOffset.UTC);
    int code = new Commands(terminal, clock).run(words);
    return new Run(code, out.toString(), err.toString());
  }
}
