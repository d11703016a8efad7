package org.griplore.store.archive;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One reading of one content of a source.
 *
 * @param id its number in the archive
 * @param origin what the source is known by
 * @param number 1 for the source's first revision, then 2 ...
 * @param sha256 hash of the content
 * @param bytes length of the content
 * @param name the file's name
 * @param form what it was read as
 * @param options how it was read, where that was said, in the order it was kept
 * @param addedAt when
 * @param supersededBy id of the revision that took its place; null for the current one
 */
public record Revision(
    int id,
    String origin,
    int number,
    String sha256,
    long bytes,
    String name,
    String form,
    Map<String, String> options,
    Instant addedAt,
    Integer supersededBy) {
  /** Keeps the options from changing, in their order. */
  public Revision {
    options = Collections.unmodifiableMap(new LinkedHashMap<>(options));
  }

  private static final String SELECT =
      "SELECT r.*, s.origin FROM revision r JOIN source s ON s.id = r.source_id ";

  /** The revisions {@code r} that an end of a query leaves, in its order. */
  static List<Revision> list(Connection connection, String end, Object... parameters) {
    return Sql.list(connection, SELECT + end, row -> read(connection, row), parameters);
  }

  static Optional<Revision> first(Connection connection, String end, Object... parameters) {
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
