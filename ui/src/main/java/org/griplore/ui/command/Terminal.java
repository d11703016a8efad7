package org.griplore.ui.command;

import java.io.OutputStream;
import java.io.PrintWriter;
import org.griplore.ui.render.TerminalStyle;

/**
 * Where a command writes.
 *
 * @param out answers
 * @param err refusals and progress
 * @param style what {@code out} can show
 * @param bytes where {@code out} goes, for what is no text; null when that is a screen
 */
public record Terminal(PrintWriter out, PrintWriter err, TerminalStyle style, OutputStream bytes) {}
