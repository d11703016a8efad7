package org.griplore.store.archive;

import java.sql.Connection;
import java.time.Instant;
import java.util.List;
import org.griplore.store.archive.database.Sql;
import org.griplore.store.archive.database.StoredMoment;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;

/** Reads and writes what was said of tables' columns. */
final class ColumnMaps {
  private ColumnMaps() {}

  /** The newest of each layout, unless it was forgotten; the newest first. */
  static List<ColumnMapRecord> standing(Connection connection) {
    return Sql.list(
        connection,
        "SELECT c.id, c.layout, c.map, r.file, r.added_at FROM column_map c"
            + " JOIN revision r ON r.id = c.revision_id WHERE c.forgotten_at IS NULL AND c.id ="
            + " (SELECT max(id) FROM column_map n WHERE n.layout = c.layout) ORDER BY c.id DESC",
        row ->
            new ColumnMapRecord(
                row.getInt(1),
                row.getString(2),
                row.getString(3),
                row.getString(4),
                Instant.parse(row.getString(5))));
  }

  static void remember(Connection connection, int revision, String layout, String map) {
    Sql.execute(
        connection,
        "INSERT INTO column_map (revision_id, layout, map) VALUES (?, ?, ?)",
        revision,
        layout,
        map);
  }

  /**
   * Forgets what was said; revisions that it was used for stay as they are.
   *
   * @throws Refusal when nothing of this number stands
   */
  static void forget(Connection connection, int id, Instant now) {
    if (standing(connection).stream().noneMatch(map -> map.id() == id)) {
      throw new Refusal(
          "There are no remembered columns of number " + id + "; nothing was forgotten.",
          new Problem("forget", String.valueOf(id), "a number that `griplore columns` lists"));
    }
    Sql.execute(
        connection,
        "UPDATE column_map SET forgotten_at = ? WHERE id = ?",
        StoredMoment.text(now),
        id);
  }
}
