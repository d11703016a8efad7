package org.griplore.store.archive;

import java.sql.Connection;
import java.util.List;
import java.util.Optional;
import org.griplore.store.vocabulary.Cell;
import org.griplore.store.vocabulary.ResultCells;
import org.griplore.store.vocabulary.Step;
import org.griplore.store.vocabulary.Unit;

/** Reads where one result comes from. */
final class OriginReader {
  private OriginReader() {}

  static Optional<ResultOrigin> read(Connection connection, long result) {
    CellText.SheetNames sheets = SheetList.of(connection);
    Optional<Revision> revision =
        Sql.first(
            connection,
            Revision.SELECT
                + " JOIN report p ON p.revision = r.id JOIN entry e ON e.report = p.id"
                + " JOIN result x ON x.entry = e.id WHERE x.id = ?",
            Revision::read,
            result);
    return revision.flatMap(
        reading ->
            Sql.first(
                connection,
                "SELECT x.*, t.key AS test, coalesce(s.name, m.name) AS model, e.name_at,"
                    + " d.key AS discipline_key, u.symbol, w.words FROM result x"
                    + " JOIN entry e ON e.id = x.entry JOIN report p ON p.id = e.report"
                    + " JOIN test t ON t.id = p.test JOIN model m ON m.id = e.model"
                    + " LEFT JOIN model s ON s.id = m.same_as"
                    + " JOIN discipline d ON d.id = x.discipline"
                    + " LEFT JOIN unit u ON u.id = x.unit LEFT JOIN rule w ON w.id = x.rule"
                    + " WHERE x.id = ?",
                row -> {
                  Cell name = CellText.read(row.getString("name_at"), sheets);
                  return new ResultOrigin(
                      result,
                      reading,
                      row.getString("test"),
                      row.getString("model"),
                      name == null ? null : name.found(),
                      row.getString("discipline_key"),
                      Sql.real(row, "value"),
                      row.getString("symbol"),
                      Sql.real(row, "spread"),
                      Sql.integer(row, "runs"),
                      Sql.integer(row, "place"),
                      new ResultCells(
                          CellText.read(row.getString("value_at"), sheets),
                          CellText.read(row.getString("spread_at"), sheets),
                          CellText.read(row.getString("runs_at"), sheets),
                          CellText.read(row.getString("place_at"), sheets)),
                      row.getString("words") == null ? "" : row.getString("words"),
                      steps(connection, result, sheets));
                },
                result));
  }

  private static List<Step> steps(Connection connection, long result, CellText.SheetNames sheets) {
    return Sql.list(
        connection,
        "SELECT s.*, b.symbol AS unit_before, a.symbol AS unit_after FROM result_step s"
            + " LEFT JOIN unit b ON b.id = s.before_unit JOIN unit a ON a.id = s.after_unit"
            + " WHERE s.result = ? ORDER BY s.id",
        row ->
            new Step(
                row.getString("rule"),
                Sql.real(row, "before"),
                unit(row.getString("unit_before")),
                row.getDouble("after"),
                unit(row.getString("unit_after")),
                row.getString("label"),
                CellText.read(row.getString("stands_at"), sheets)),
        result);
  }

  private static Unit unit(String symbol) {
    return symbol == null ? null : Unit.ofSymbol(symbol).orElseThrow();
  }
}
