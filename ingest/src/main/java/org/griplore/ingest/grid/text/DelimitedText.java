package org.griplore.ingest.grid.text;

import java.io.IOException;
import java.io.Reader;
import java.nio.charset.Charset;
import java.util.ArrayList;
import java.util.List;
import org.griplore.ingest.grid.CellCount;
import org.griplore.ingest.grid.Grid;
import org.griplore.ingest.grid.GridCell;
import org.griplore.ingest.grid.VisibleText;
import org.griplore.store.archive.Original;

/**
 * Delimited text: which delimiter, and its cells.
 *
 * @param original the source
 * @param charset how it is encoded
 * @param delimiter comma, semicolon, tab or vertical bar
 */
public record DelimitedText(Original original, Charset charset, char delimiter) {
  /** How much of a text is looked at to tell what it is. */
  public static final int CHARACTERS_LOOKED_AT = 256 * 1024;

  public static String start(Reader reader) throws IOException {
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
  public Grid grid() throws IOException {
    List<List<GridCell>> rows = new ArrayList<>();
    CellCount count = new CellCount(original.name());
    try (RecordReader records = open()) {
      while (records.next()) {
        List<GridCell> cells = new ArrayList<>();
        for (int i = 0; i < records.count(); i++) {
          String text = VisibleText.of(records.field(i));
          if (!text.isEmpty()) {
            cells.add(GridCell.of(records.line(), i + 1, text));
          }
        }
        count.add(cells.size());
        if (!cells.isEmpty()) {
          rows.add(cells);
        }
      }
    }
    return Grid.of("", rows);
  }
}
