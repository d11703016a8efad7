package org.griplore.store.archive;

import java.sql.Connection;
import java.util.List;
import org.griplore.store.vocabulary.TestDate;

/** Reads the notes of current reports. */
final class NoteReader {
  private NoteReader() {}

  static List<NoteRecord> all(Connection connection) {
    CellText.SheetNames sheets = SheetList.of(connection);
    return Sql.list(
        connection,
        "SELECT n.id, p.revision, r.name AS file, t.key, n.words, n.stands_at,"
            + " coalesce(s.name, m.name) AS model, d.key AS discipline,"
            + " coalesce(p.title, (SELECT o.title FROM report o JOIN revision q"
            + " ON q.id = o.revision AND q.superseded_by IS NULL"
            + " WHERE o.test = p.test AND o.title IS NOT NULL ORDER BY o.id LIMIT 1)) AS title,"
            + " coalesce(p.date, (SELECT o.date FROM report o JOIN revision q"
            + " ON q.id = o.revision AND q.superseded_by IS NULL"
            + " WHERE o.test = p.test AND o.date IS NOT NULL ORDER BY o.id LIMIT 1)) AS date,"
            + " coalesce(p.size, (SELECT o.size FROM report o JOIN revision q"
            + " ON q.id = o.revision AND q.superseded_by IS NULL"
            + " WHERE o.test = p.test AND o.size IS NOT NULL ORDER BY o.id LIMIT 1)) AS size"
            + " FROM note n JOIN report p ON p.id = n.report JOIN test t ON t.id = p.test"
            + " JOIN revision r ON r.id = p.revision AND r.superseded_by IS NULL"
            + " LEFT JOIN model m ON m.id = n.model LEFT JOIN model s ON s.id = m.same_as"
            + " LEFT JOIN discipline d ON d.id = n.discipline ORDER BY n.id",
        row ->
            new NoteRecord(
                row.getLong("id"),
                row.getInt("revision"),
                row.getString("file"),
                row.getString("key"),
                row.getString("title"),
                row.getString("date") == null ? null : new TestDate(row.getString("date")),
                row.getString("size"),
                row.getString("model"),
                row.getString("discipline"),
                row.getString("words"),
                CellText.read(row.getString("stands_at"), sheets)));
  }
}
