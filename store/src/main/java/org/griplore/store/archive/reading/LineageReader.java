package org.griplore.store.archive.reading;

import java.sql.Connection;
import java.util.List;
import org.griplore.store.archive.LineageSaid;
import org.griplore.store.archive.database.CellColumns;
import org.griplore.store.archive.database.Sql;
import org.griplore.store.archive.names.ModelReader;
import org.griplore.store.vocabulary.LineageRow;
import org.griplore.store.vocabulary.TestDate;

/** Reads what current lineage tables say of one model, the oldest word first. */
public final class LineageReader {
  private LineageReader() {}

  public static List<LineageSaid> of(Connection connection, int model) {
    CellColumns cells = CellColumns.of(connection);
    return Sql.list(
        connection,
        "SELECT l.*, m.name, f.name AS predecessor, r.file FROM lineage l"
            + " JOIN model m ON m.id = l.model_id"
            + " JOIN revision r ON r.id = l.revision_id AND r.superseded_by_id IS NULL"
            + " LEFT JOIN model f ON f.id = l.follows_id"
            + " WHERE m.id = ?1 OR m.same_as_id = ?1 ORDER BY l.id",
        row ->
            new LineageSaid(
                row.getString("file"),
                new LineageRow(
                    row.getString("name"),
                    row.getString("maker"),
                    row.getString("line"),
                    row.getString("generation"),
                    row.getString("launched") == null
                        ? null
                        : new TestDate(row.getString("launched")),
                    ModelReader.season(row.getString("season")),
                    row.getString("segment"),
                    row.getString("predecessor"),
                    aliases(connection, row.getLong("id")),
                    cells.read(row))),
        model);
  }

  private static List<String> aliases(Connection connection, long lineage) {
    return Sql.list(
        connection,
        "SELECT name FROM lineage_alias WHERE lineage_id = ? ORDER BY position",
        row -> row.getString(1),
        lineage);
  }
}
