package org.griplore.store.archive.reading;

import java.sql.Connection;
import java.util.List;
import org.griplore.store.archive.FindingRecord;
import org.griplore.store.archive.database.CellColumns;
import org.griplore.store.archive.database.PhraseColumns;
import org.griplore.store.archive.database.Sql;
import org.griplore.store.vocabulary.Finding;

/** Reads findings of current revisions. */
public final class FindingReader {
  private FindingReader() {}

  public static List<FindingRecord> current(Connection connection) {
    return read(connection, "r.superseded_by_id IS NULL");
  }

  public static List<FindingRecord> ofRevision(Connection connection, int revision) {
    return read(connection, "r.id = ?", revision);
  }

  private static List<FindingRecord> read(
      Connection connection, String condition, Object... parameters) {
    CellColumns cells = CellColumns.of(connection);
    return Sql.list(
        connection,
        "SELECT f.*, r.file FROM finding f JOIN revision r ON r.id = f.revision_id WHERE "
            + condition
            + " ORDER BY f.id",
        row ->
            new FindingRecord(
                row.getLong("id"),
                row.getInt("revision_id"),
                row.getString("file"),
                new Finding(
                    Finding.Kind.ofWord(row.getString("kind")).orElseThrow(),
                    cells.read(row),
                    row.getString("found"),
                    PhraseColumns.words(row, "expected_code", "expected_parameters"),
                    PhraseColumns.words(row, "remedy_code", "remedy_parameters"))),
        parameters);
  }
}
