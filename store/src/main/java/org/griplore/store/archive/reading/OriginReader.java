package org.griplore.store.archive.reading;

import java.sql.Connection;
import java.util.List;
import java.util.Optional;
import org.griplore.store.archive.ResultOrigin;
import org.griplore.store.archive.Revision;
import org.griplore.store.archive.database.CellColumns;
import org.griplore.store.archive.database.PhraseColumns;
import org.griplore.store.archive.database.Sql;
import org.griplore.store.archive.writing.Rules;
import org.griplore.store.vocabulary.ResultCells;
import org.griplore.store.vocabulary.Step;
import org.griplore.store.vocabulary.Unit;

/** Reads where one result comes from. */
public final class OriginReader {
  private OriginReader() {}

  public static Optional<ResultOrigin> read(Connection connection, long result) {
    CellColumns cells = CellColumns.of(connection);
    Optional<Revision> revision =
        RevisionReader.first(
            connection,
            "JOIN report p ON p.revision_id = r.id JOIN entry e ON e.report_id = p.id"
                + " JOIN result x ON x.entry_id = e.id WHERE x.id = ?",
            result);
    return revision.flatMap(
        reading ->
            Sql.first(
                connection,
                "SELECT x.*, t.key AS test, coalesce(s.name, m.name) AS model, e.cell_text AS name_found,"
                    + " d.key AS discipline_key, u.symbol FROM result x"
                    + " JOIN entry e ON e.id = x.entry_id JOIN report p ON p.id = e.report_id"
                    + " JOIN test t ON t.id = p.test_id JOIN model m ON m.id = e.model_id"
                    + " LEFT JOIN model s ON s.id = m.same_as_id"
                    + " JOIN discipline d ON d.id = x.discipline_id"
                    + " LEFT JOIN unit u ON u.id = x.unit_id WHERE x.id = ?",
                row ->
                    new ResultOrigin(
                        result,
                        reading,
                        row.getString("test"),
                        row.getString("model"),
                        row.getString("name_found"),
                        row.getString("discipline_key"),
                        Sql.real(row, "value"),
                        row.getString("symbol"),
                        Sql.real(row, "spread"),
                        Sql.integer(row, "runs"),
                        Sql.integer(row, "place"),
                        new ResultCells(
                            cells.read(row, row.findColumn("value_sheet_id")),
                            cells.read(row, row.findColumn("spread_sheet_id")),
                            cells.read(row, row.findColumn("runs_sheet_id")),
                            cells.read(row, row.findColumn("place_sheet_id"))),
                        Rules.words(connection, row.getInt("rule_id")),
                        steps(connection, result, cells)),
                result));
  }

  private static List<Step> steps(Connection connection, long result, CellColumns cells) {
    return Sql.list(
        connection,
        "SELECT s.*, b.symbol AS unit_before, a.symbol AS unit_after FROM result_step s"
            + " LEFT JOIN unit b ON b.id = s.before_unit_id JOIN unit a ON a.id = s.after_unit_id"
            + " WHERE s.result_id = ? ORDER BY s.id",
        row ->
            new Step(
                PhraseColumns.words(row, "code", "parameters"),
                Sql.real(row, "before"),
                unit(row.getString("unit_before")),
                row.getDouble("after"),
                unit(row.getString("unit_after")),
                PhraseColumns.words(row, "label_code", "label_parameters"),
                cells.read(row)),
        result);
  }

  private static Unit unit(String symbol) {
    return symbol == null ? null : Unit.ofSymbol(symbol).orElseThrow();
  }
}
