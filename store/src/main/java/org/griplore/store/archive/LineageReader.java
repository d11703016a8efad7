package org.griplore.store.archive;

import java.sql.Connection;
import java.util.List;
import org.griplore.store.vocabulary.LineageRow;
import org.griplore.store.vocabulary.TestDate;

/** Reads what current lineage tables say of one model, the oldest word first. */
final class LineageReader {
  private LineageReader() {}

  static List<LineageSaid> of(Connection connection, int model) {
    CellText.SheetNames sheets = SheetList.of(connection);
    return Sql.list(
        connection,
        "SELECT l.*, m.name, f.name AS predecessor, r.name AS file FROM lineage l"
            + " JOIN model m ON m.id = l.model"
            + " JOIN revision r ON r.id = l.revision AND r.superseded_by IS NULL"
            + " LEFT JOIN model f ON f.id = l.follows"
            + " WHERE m.id = ?1 OR m.same_as = ?1 ORDER BY l.id",
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
                    row.getString("aliases").isEmpty()
                        ? List.of()
                        : List.of(row.getString("aliases").split("\\|")),
                    CellText.read(row.getString("stands_at"), sheets))),
        model);
  }
}
