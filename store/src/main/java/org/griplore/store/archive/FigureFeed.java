package org.griplore.store.archive;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Map;
import org.griplore.store.vocabulary.Result;
import org.griplore.store.vocabulary.ResultCells;
import org.griplore.store.vocabulary.Unit;

/**
 * The figures of one reading, one by one in the order they were read, on a connection of its own.
 * Not thread-safe.
 */
public final class FigureFeed implements AutoCloseable {
  private final Connection connection;
  private final Map<Integer, String> units;
  private final CellText.SheetNames sheets;
  private final PreparedStatement statement;
  private final ResultSet rows;

  private FigureFeed(Connection connection, int revision) throws SQLException {
    this.connection = connection;
    this.units = NumberedWords.read(connection, "SELECT id, symbol FROM unit");
    this.sheets = SheetList.of(connection);
    this.statement =
        connection.prepareStatement(
            "SELECT t.key, coalesce(s.name, m.name), e.size, e.name_at, d.key, x.value, x.unit,"
                + " x.spread, x.runs, x.place, x.value_at, x.spread_at, x.runs_at, x.place_at,"
                + " w.words FROM report p JOIN test t ON t.id = p.test"
                + " JOIN entry e ON e.report = p.id JOIN model m ON m.id = e.model"
                + " LEFT JOIN model s ON s.id = m.same_as JOIN result x ON x.entry = e.id"
                + " JOIN discipline d ON d.id = x.discipline LEFT JOIN rule w ON w.id = x.rule"
                + " WHERE p.revision = ? ORDER BY x.id");
    statement.setInt(1, revision);
    this.rows = statement.executeQuery();
  }

  static FigureFeed open(Archive archive, int revision) {
    try {
      Connection connection = archive.ownReading();
      try {
        return new FigureFeed(connection, revision);
      } catch (SQLException | RuntimeException e) {
        connection.close();
        throw e;
      }
    } catch (SQLException e) {
      throw ArchiveFailure.of(e);
    }
  }

  /** The next figure; null after the last. */
  public StoredFigure next() {
    try {
      return rows.next() ? figure() : null;
    } catch (SQLException e) {
      throw ArchiveFailure.of(e);
    }
  }

  private StoredFigure figure() throws SQLException {
    String unit = units.get(rows.getInt(7));
    String rule = rows.getString(15);
    return new StoredFigure(
        rows.getString(1),
        rows.getString(2),
        rows.getString(3),
        CellText.read(rows.getString(4), sheets),
        new Result(
            rows.getString(5),
            Sql.real(rows, 6),
            unit == null ? null : Unit.ofSymbol(unit).orElseThrow(),
            Sql.real(rows, 8),
            Sql.integer(rows, 9),
            Sql.integer(rows, 10),
            new ResultCells(
                CellText.read(rows.getString(11), sheets),
                CellText.read(rows.getString(12), sheets),
                CellText.read(rows.getString(13), sheets),
                CellText.read(rows.getString(14), sheets)),
            rule == null ? "" : rule));
  }

  @Override
  public void close() {
    try (connection;
        statement) {
      rows.close();
    } catch (SQLException e) {
      throw ArchiveFailure.of(e);
    }
  }
}
