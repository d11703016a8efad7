package org.griplore.ui.command;

import picocli.CommandLine.ParseResult;

/** What a command does once its words are understood. */
interface Action {
  /** Runs it and returns the exit code. */
  int run(ParseResult words, Terminal terminal);
}
