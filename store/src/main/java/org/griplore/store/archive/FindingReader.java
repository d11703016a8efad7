package org.griplore.store.archive;

import java.sql.Connection;
import java.util.List;
import org.griplore.store.vocabulary.Finding;

/** Reads findings of current revisions. */
final class FindingReader {
  private FindingReader() {}

  static List<FindingRecord> current(Connection connection) {
    CellText.SheetNames sheets = SheetList.of(connection);
    return Sql.list(
        connection,
        "SELECT f.*, r.name FROM finding f JOIN revision r ON r.id = f.revision"
            + " AND r.superseded_by IS NULL ORDER BY f.id",
        row ->
            new FindingRecord(
                row.getLong("id"),
                row.getInt("revision"),
                row.getString("name"),
                new Finding(
                    Finding.Kind.valueOf(row.getString("kind")),
                    CellText.read(row.getString("stands_at"), sheets),
                    row.getString("found"),
                    row.getString("expected"),
                    row.getString("remedy"))));
  }
}
