package org.griplore.ingest.grid.text;

import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.List;
import org.griplore.ingest.grid.Content;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;

/** Reads text as lines, however they end (LF, CR LF or CR). */
public final class PlainText {
  private static final int LONGEST_LINE = 10 * 1024 * 1024;

  /** Notes are held in memory whole. */
  private static final int MOST_LINES = 500_000;

  private static final long MOST_CHARACTERS = 64L << 20;

  private PlainText() {}

  /**
   * All lines, without blanks at their ends.
   *
   * @throws Refusal when a line is longer than 10 million characters or holds a zero byte, or the
   *     whole is longer than notes ever are
   */
  public static List<Content.Line> lines(String name, Reader reader) throws IOException {
    List<Content.Line> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    char[] buffer = new char[1 << 14];
    boolean afterReturn = false;
    long characters = 0;
    int read;
    while ((read = reader.read(buffer)) > 0) {
      characters += read;
      if (lines.size() > MOST_LINES || characters > MOST_CHARACTERS) {
        throw new Refusal(
            "%s is text without a table and too long for notes: at line %d there are %d characters; part it."
                .formatted(name, lines.size(), characters),
            new Problem(name, "a very long text", "notes or a table"));
      }
      for (int i = 0; i < read; i++) {
        char c = buffer[i];
        if (c == '\n' && afterReturn) {
          afterReturn = false;
          continue;
        }
        afterReturn = c == '\r';
        if (c == '\n' || c == '\r') {
          lines.add(new Content.Line(lines.size() + 1, line.toString().stripTrailing()));
          line.setLength(0);
        } else {
          if (c == 0 || line.length() >= LONGEST_LINE) {
            throw refusal(name + ", line " + (lines.size() + 1), c == 0);
          }
          line.append(c);
        }
      }
    }
    lines.add(new Content.Line(lines.size() + 1, line.toString().stripTrailing()));
    return lines;
  }

  private static Refusal refusal(String where, boolean zero) {
    return zero
        ? new Refusal(
            where + ": there is a zero byte; expected text.",
            new Problem(where, "a zero byte", "text"))
        : new Refusal(
            where + ": this line is longer than 10 million characters; expected notes or a table.",
            new Problem(where, "a very long line", "lines of text"));
  }
}
