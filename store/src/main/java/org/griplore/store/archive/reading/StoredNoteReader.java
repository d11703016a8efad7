package org.griplore.store.archive.reading;

import java.sql.Connection;
import java.util.List;
import org.griplore.store.archive.StoredNote;
import org.griplore.store.archive.database.CellColumns;
import org.griplore.store.archive.database.Sql;
import org.griplore.store.vocabulary.Note;

/** Reads the notes of one revision as its reports tell them. */
public final class StoredNoteReader {
  private StoredNoteReader() {}

  public static List<StoredNote> ofRevision(Connection connection, int revision) {
    CellColumns cells = CellColumns.of(connection);
    return Sql.list(
        connection,
        "SELECT t.key, coalesce(s.name, m.name), d.key, n.text, n.sheet_id, n.row, n.\"column\","
            + " n.cell_text FROM report p"
            + " JOIN test t ON t.id = p.test_id JOIN note n ON n.report_id = p.id"
            + " LEFT JOIN model m ON m.id = n.model_id LEFT JOIN model s ON s.id = m.same_as_id"
            + " LEFT JOIN discipline d ON d.id = n.discipline_id"
            + " WHERE p.revision_id = ? ORDER BY n.id",
        row ->
            new StoredNote(
                row.getString(1),
                new Note(row.getString(2), row.getString(3), row.getString(4), cells.read(row, 5))),
        revision);
  }
}
