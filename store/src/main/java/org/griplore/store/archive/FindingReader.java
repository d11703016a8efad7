package org.griplore.store.archive;

import java.sql.Connection;
import java.util.List;
import org.griplore.store.vocabulary.Finding;

/** Reads findings of current revisions. */
final class FindingReader {
  private FindingReader() {}

  static List<FindingRecord> current(Connection connection) {
    return read(connection, "r.superseded_by IS NULL");
  }

  static List<FindingRecord> ofRevision(Connection connection, int revision) {
    return read(connection, "r.id = ?", revision);
  }

  private static List<FindingRecord> read(
      Connection connection, String condition, Object... parameters) {
    CellText.SheetNames sheets = SheetList.of(connection);
    return Sql.list(
        connection,
        "SELECT f.*, r.name FROM finding f JOIN revision r ON r.id = f.revision WHERE "
            + condition
            + " ORDER BY f.id",
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
                    row.getString("remedy"))),
        parameters);
  }
}
