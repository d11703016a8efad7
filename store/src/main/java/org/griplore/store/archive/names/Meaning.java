package org.griplore.store.archive.names;

import java.sql.Connection;
import java.util.HashMap;
import java.util.Map;
import org.griplore.store.archive.database.Sql;

/**
 * The model that a name means which is not its own.
 *
 * @param model the model's number
 * @param revision the revision that took it so; null when the user decided it
 */
public record Meaning(int model, Integer revision) {
  /** The meanings that hold, by the number of the name. */
  public static Map<Integer, Meaning> holding(Connection connection) {
    Map<Integer, Meaning> meanings = new HashMap<>();
    Sql.list(
        connection,
        "SELECT id, same_as_id, same_as_revision_id FROM model WHERE same_as_id IS NOT NULL",
        row ->
            meanings.put(
                row.getInt(1),
                new Meaning(row.getInt(2), Sql.integer(row, "same_as_revision_id"))));
    return meanings;
  }
}
