package org.griplore.store.archive.database;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Map;
import org.griplore.store.vocabulary.Cell;

/** Writes a cell into four columns (number of the sheet, row, column, text) and reads it back. */
public final class CellColumns {
  /** Names of the columns where a row has one cell. */
  public static final String NAMES = "sheet_id, row, \"column\", cell_text";

  private final Map<Integer, String> sheets;

  private CellColumns(Map<Integer, String> sheets) {
    this.sheets = sheets;
  }

  /** A reader that knows the sheets there are now. */
  public static CellColumns of(java.sql.Connection connection) {
    return new CellColumns(NumberedWords.read(connection, "SELECT id, name FROM sheet"));
  }

  /** The cell in the four columns from this one on; null when there is none. */
  public Cell read(ResultSet row, int first) throws SQLException {
    int sheet = row.getInt(first);
    return sheet == 0
        ? null
        : new Cell(
            sheets.get(sheet),
            row.getInt(first + 1),
            row.getInt(first + 2),
            row.getString(first + 3));
  }

  /** The cell in the columns of {@link #NAMES}. */
  public Cell read(ResultSet row) throws SQLException {
    return read(row, row.findColumn("sheet_id"));
  }
}
