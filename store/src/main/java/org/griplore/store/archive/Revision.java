package org.griplore.store.archive;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;

/**
 * One reading of one content of a source.
 *
 * @param id its number in the archive
 * @param origin what the source is known by
 * @param number 1 for the source's first reading, then 2 ...
 * @param sha256 hash of the content
 * @param bytes length of the content
 * @param name the file's name
 * @param form what it was read as
 * @param options how it was read
 * @param addedAt when
 * @param supersededBy id of the reading that took its place; null for the current one
 */
public record Revision(
    int id,
    String origin,
    int number,
    String sha256,
    long bytes,
    String name,
    String form,
    String options,
    Instant addedAt,
    Integer supersededBy) {
  static final String SELECT =
      "SELECT r.*, s.origin FROM revision r JOIN source_file s ON s.id = r.source_file";

  static Revision read(ResultSet row) throws SQLException {
    return new Revision(
        row.getInt("id"),
        row.getString("origin"),
        row.getInt("number"),
        row.getString("sha256"),
        row.getLong("bytes"),
        row.getString("name"),
        row.getString("form"),
        row.getString("options"),
        Instant.parse(row.getString("added_at")),
        Sql.integer(row, "superseded_by"));
  }
}
