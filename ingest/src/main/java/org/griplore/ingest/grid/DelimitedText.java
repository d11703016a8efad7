package org.griplore.ingest.grid;

import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.nio.charset.Charset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.griplore.store.archive.Original;

/**
 * Delimited text: which delimiter, and its cells. The delimiter is the one that cuts most of the
 * first lines into the same number of fields, outside quotes; a title or details above the table do
 * not count against it.
 *
 * @param original the source
 * @param charset how it is encoded
 * @param delimiter comma, semicolon, tab or vertical bar
 */
public record DelimitedText(Original original, Charset charset, char delimiter) {
  private static final char[] DELIMITERS = {'\t', ';', ',', '|'};
  private static final int LINES_LOOKED_AT = 60;
  private static final int CHARACTERS_LOOKED_AT = 256 * 1024;

  /** The delimiter of a text that begins so; empty when it is no table. */
  static OptionalInt delimiter(String start) throws IOException {
    int best = -1;
    double bestScore = 0;
    for (char delimiter : DELIMITERS) {
      double score = score(start, delimiter);
      if (score > bestScore) {
        bestScore = score;
        best = delimiter;
      }
    }
    return best < 0 ? OptionalInt.empty() : OptionalInt.of(best);
  }

  /** Lines with the commonest number of fields (two or more), weighed by that number. */
  private static double score(String start, char delimiter) throws IOException {
    Map<Integer, Integer> linesByFields = new HashMap<>();
    int lines = 0;
    int last = 0;
    try (RecordReader records = new RecordReader("", new StringReader(start), delimiter)) {
      while (lines < LINES_LOOKED_AT && records.next()) {
        if (records.count() > 1 || !records.field(0).isBlank()) {
          last = records.count();
          linesByFields.merge(last, 1, Integer::sum);
          lines++;
        }
      }
    }
    if (start.length() >= CHARACTERS_LOOKED_AT && lines > 1) {
      linesByFields.merge(last, -1, Integer::sum);
    }
    double best = 0;
    for (Map.Entry<Integer, Integer> entry : linesByFields.entrySet()) {
      if (entry.getKey() >= 2 && entry.getValue() >= 2) {
        double share = (double) entry.getValue() / lines;
        best =
            Math.max(
                best, share * share * Math.sqrt(entry.getKey()) * (entry.getKey() >= 3 ? 2 : 1));
      }
    }
    return best;
  }

  static String start(Reader reader) throws IOException {
    char[] characters = new char[CHARACTERS_LOOKED_AT];
    int length = 0;
    int read;
    while (length < characters.length
        && (read = reader.read(characters, length, characters.length - length)) > 0) {
      length += read;
    }
    return new String(characters, 0, length);
  }

  /** Opens the records for reading one after another. */
  public RecordReader open() throws IOException {
    return new RecordReader(original.name(), TextDecoding.open(original, charset), delimiter);
  }

  /** All cells; rows are physical lines. */
  Grid grid() throws IOException {
    List<List<GridCell>> rows = new ArrayList<>();
    try (RecordReader records = open()) {
      while (records.next()) {
        List<GridCell> cells = new ArrayList<>();
        for (int i = 0; i < records.count(); i++) {
          String text = records.field(i).strip();
          if (!text.isEmpty()) {
            cells.add(GridCell.of(records.line(), i + 1, text));
          }
        }
        if (!cells.isEmpty()) {
          rows.add(cells);
        }
      }
    }
    return Grid.of("", rows);
  }
}
