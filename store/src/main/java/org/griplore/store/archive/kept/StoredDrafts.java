package org.griplore.store.archive.kept;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import org.griplore.store.archive.DraftRecord;
import org.griplore.store.archive.database.Sql;
import org.griplore.store.archive.database.StoredMoment;
import org.griplore.store.vocabulary.DraftTable;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;

/** Reads drafts and decides them. */
public final class StoredDrafts {
  private StoredDrafts() {}

  /** The drafts of current revisions, decided or not, in reading order. */
  public static List<DraftRecord> current(Connection connection) {
    return Sql.list(
        connection,
        "SELECT x.*, r.file, coalesce(h.name, '') AS sheet FROM draft x"
            + " JOIN revision r ON r.id = x.revision_id AND r.superseded_by_id IS NULL"
            + " LEFT JOIN sheet h ON h.id = x.sheet_id ORDER BY x.id",
        StoredDrafts::read);
  }

  /**
   * Decides an open draft.
   *
   * @param chosen which reading is taken, from 1; null when it is dismissed
   * @throws Refusal when no open draft has this number
   */
  public static void decide(Connection connection, int id, Integer chosen, Instant now) {
    int changed =
        Sql.execute(
            connection,
            "UPDATE draft SET state = ?, chosen = ?, decided_at = ? WHERE id = ? AND state = 'open'",
            chosen == null ? "dismissed" : "taken",
            chosen,
            StoredMoment.text(now),
            id);
    if (changed == 0) {
      throw new Refusal(
          "There is no open draft of number " + id + "; nothing was decided.",
          new Problem("draft", String.valueOf(id), "a number that `griplore drafts` lists"));
    }
  }

  private static DraftRecord read(ResultSet row) throws SQLException {
    String decided = row.getString("decided_at");
    return new DraftRecord(
        row.getInt("id"),
        row.getInt("revision_id"),
        row.getString("file"),
        new DraftTable(
            row.getString("sheet"),
            row.getInt("first_row"),
            row.getInt("last_row"),
            row.getInt("first_column"),
            row.getInt("last_column"),
            row.getString("readings")),
        DraftRecord.State.valueOf(row.getString("state").toUpperCase(Locale.ROOT)),
        Sql.integer(row, "chosen"),
        decided == null ? null : Instant.parse(decided));
  }
}
