package org.griplore.store.archive;

import java.sql.Connection;
import java.util.List;
import org.griplore.store.vocabulary.Note;

/**
 * One note as a reading told it, the reading superseded or not.
 *
 * @param test the test's key
 * @param note the note; its model is the one that it counts for
 */
public record StoredNote(String test, Note note) {
  static List<StoredNote> ofRevision(Connection connection, int revision) {
    CellText.SheetNames sheets = SheetList.of(connection);
    return Sql.list(
        connection,
        "SELECT t.key, coalesce(s.name, m.name), d.key, n.words, n.stands_at FROM report p"
            + " JOIN test t ON t.id = p.test JOIN note n ON n.report = p.id"
            + " LEFT JOIN model m ON m.id = n.model LEFT JOIN model s ON s.id = m.same_as"
            + " LEFT JOIN discipline d ON d.id = n.discipline WHERE p.revision = ? ORDER BY n.id",
        row ->
            new StoredNote(
                row.getString(1),
                new Note(
                    row.getString(2),
                    row.getString(3),
                    row.getString(4),
                    CellText.read(row.getString(5), sheets))),
        revision);
  }
}
