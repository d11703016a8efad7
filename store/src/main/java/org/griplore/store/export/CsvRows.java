package org.griplore.store.export;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/**
 * Writes rows as CSV by RFC 4180 in UTF-8: lines end with CR LF, a field is quoted where it must
 * be, and what is missing is empty.
 */
final class CsvRows implements AutoCloseable {
  private final BufferedWriter out;

  CsvRows(OutputStream to) {
    out = new BufferedWriter(new OutputStreamWriter(to, StandardCharsets.UTF_8), 1 << 16);
  }

  /** Writes texts, numbers, truth values and times as they print; null is empty. */
  void row(Object... values) {
    try {
      for (int i = 0; i < values.length; i++) {
        if (i > 0) {
          out.write(',');
        }
        if (values[i] != null) {
          field(values[i].toString());
        }
      }
      out.write("\r\n");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void field(String text) throws IOException {
    if (!needsQuotes(text)) {
      out.write(text);
      return;
    }
    out.write('"');
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '"') {
        out.write('"');
      }
      out.write(c);
    }
    out.write('"');
  }

  private static boolean needsQuotes(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == ',' || c == '"' || c == '\n' || c == '\r') {
        return true;
      }
    }
    return false;
  }

  @Override
  public void close() throws IOException {
    out.close();
  }
}
