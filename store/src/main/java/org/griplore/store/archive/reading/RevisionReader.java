package org.griplore.store.archive.reading;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.griplore.store.archive.Revision;
import org.griplore.store.archive.database.Sql;

/** Reads revisions with the options they were read by. */
public final class RevisionReader {
  private static final String SELECT =
      "SELECT r.*, s.origin FROM revision r JOIN source s ON s.id = r.source_id ";

  private RevisionReader() {}

  /** The revisions {@code r} that an end of a query leaves, in its order. */
  public static List<Revision> list(Connection connection, String end, Object... parameters) {
    return Sql.list(connection, SELECT + end, row -> read(connection, row), parameters);
  }

  public static Optional<Revision> first(Connection connection, String end, Object... parameters) {
    return Sql.first(connection, SELECT + end, row -> read(connection, row), parameters);
  }

  private static Revision read(Connection connection, ResultSet row) throws SQLException {
    int id = row.getInt("id");
    return new Revision(
        id,
        row.getString("origin"),
        row.getInt("number"),
        row.getString("sha256"),
        row.getLong("bytes"),
        row.getString("file"),
        row.getString("form"),
        options(connection, id),
        Instant.parse(row.getString("added_at")),
        Sql.integer(row, "superseded_by_id"));
  }

  private static Map<String, String> options(Connection connection, int revision) {
    Map<String, String> options = new LinkedHashMap<>();
    Sql.forEach(
        connection,
        "SELECT name, value FROM revision_option WHERE revision_id = ? ORDER BY position",
        row -> options.put(row.getString(1), row.getString(2)),
        revision);
    return options;
  }
}
