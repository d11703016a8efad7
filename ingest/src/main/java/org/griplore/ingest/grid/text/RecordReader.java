package org.griplore.ingest.grid.text;

import java.io.Closeable;
import java.io.IOException;
import java.io.Reader;
import java.util.Arrays;
import org.griplore.ingest.grid.RowSource;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;

/**
 * Reads delimited text record by record, however long the file is (RFC 4180: a field in quotes may
 * hold delimiters, line ends and doubled quotes). Our own, because a library that reads as fast
 * does not say on which line of the file a record begins, and that line is what people are told.
 */
public final class RecordReader implements RowSource, Closeable {
  /** A longer record is no table's row. */
  private static final int LONGEST = 10 * 1024 * 1024;

  /** As many columns as a workbook may have. */
  private static final int MOST_FIELDS = 16_384;

  private static final int BUFFER = 1 << 16;

  private final String name;
  private final Reader reader;
  private final char delimiter;
  private final char[] buffer = new char[BUFFER];
  private int position;
  private int limit;
  private int line = 1;
  private int startLine;
  private char[] field = new char[1024];
  private int length;
  private int recordLength;
  private String[] fields = new String[32];
  private int count;
  private final boolean whole;

  /** Reads from a reader, which is closed with this. */
  public RecordReader(String name, Reader reader, char delimiter) {
    this(name, reader, delimiter, true);
  }

  private RecordReader(String name, Reader reader, char delimiter, boolean whole) {
    this.name = name;
    this.reader = reader;
    this.delimiter = delimiter;
    this.whole = whole;
  }

  /** Reads the beginning of a text to see what it is: refuses nothing, the reading itself will. */
  public static RecordReader ofBeginning(Reader reader, char delimiter) {
    return new RecordReader("", reader, delimiter, false);
  }

  /**
   * Goes to the next record; an empty line is a record of one empty field.
   *
   * @return whether there is one
   * @throws Refusal when a record is longer than 10 million characters, has more than 16,384
   *     fields, holds a zero byte, or opens a quote that is never closed
   */
  @Override
  public boolean next() throws IOException {
    count = 0;
    length = 0;
    recordLength = 0;
    startLine = line;
    int c = read();
    if (c < 0) {
      return false;
    }
    while (true) {
      if (c == '"' && length == 0) {
        c = quoted();
      }
      if (c == delimiter) {
        endField();
        c = read();
        if (c < 0) {
          endField();
          return true;
        }
      } else if (c == '\n' || c == '\r' || c < 0) {
        endField();
        if (c == '\r' && peek() == '\n') {
          read();
        }
        line++;
        return true;
      } else {
        append(c);
        c = read();
      }
    }
  }

  /** Reads on behind an opening quote; returns what follows the closing one. */
  private int quoted() throws IOException {
    int opened = line;
    while (true) {
      int c = read();
      if (c < 0) {
        if (whole) {
          throw refusal(
              opened, "the quote opened here is never closed", "an open quote", "a closed quote");
        }
        return c;
      }
      if (c == '"') {
        int after = read();
        if (after != '"') {
          return after;
        }
        append('"');
      } else {
        if (c == '\n') {
          line++;
        }
        append(c);
      }
    }
  }

  private int read() throws IOException {
    if (position == limit) {
      limit = reader.read(buffer, 0, BUFFER);
      position = 0;
      if (limit <= 0) {
        limit = 0;
        return -1;
      }
    }
    return buffer[position++];
  }

  private int peek() throws IOException {
    int c = read();
    if (c >= 0) {
      position--;
    }
    return c;
  }

  private void append(int c) {
    if (c == 0 && whole) {
      throw refusal(line, "there is a zero byte; expected text", "a zero byte", "text");
    }
    if (++recordLength > LONGEST) {
      throw refusal(
          startLine,
          "this row is longer than 10 million characters; expected a table's rows",
          "a very long row",
          "rows of a table");
    }
    if (length == field.length) {
      field = Arrays.copyOf(field, Math.min(LONGEST, 2 * length));
    }
    field[length++] = (char) c;
  }

  private Refusal refusal(int at, String what, String found, String expected) {
    String where = "%s, line %d, column %d".formatted(name, at, count + 1);
    return new Refusal(where + ": " + what + ".", new Problem(where, found, expected));
  }

  private void endField() {
    if (count == fields.length) {
      if (whole && count >= MOST_FIELDS) {
        throw refusal(
            startLine,
            "this row has more than " + MOST_FIELDS + " columns; expected a table's rows",
            "a very wide row",
            "rows of a table");
      }
      fields = Arrays.copyOf(fields, 2 * count);
    }
    fields[count++] = length == 0 ? "" : new String(field, 0, length);
    length = 0;
  }

  /** The physical line, from 1, that the record begins on. */
  public int line() {
    return startLine;
  }

  @Override
  public int rowOf(int index) {
    return startLine;
  }

  @Override
  public int count() {
    return count;
  }

  @Override
  public String field(int index) {
    return index < count ? fields[index] : "";
  }

  @Override
  public void close() throws IOException {
    reader.close();
  }
}
