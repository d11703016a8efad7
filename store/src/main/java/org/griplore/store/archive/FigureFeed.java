package org.griplore.store.archive;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Map;
import org.griplore.store.archive.database.ArchiveFailure;
import org.griplore.store.archive.database.CellColumns;
import org.griplore.store.archive.database.NumberedWords;
import org.griplore.store.archive.database.Sql;
import org.griplore.store.archive.reading.EntryKind;
import org.griplore.store.archive.writing.Circumstances;
import org.griplore.store.archive.writing.Rules;
import org.griplore.store.vocabulary.Circumstance;
import org.griplore.store.vocabulary.Result;
import org.griplore.store.vocabulary.ResultCells;
import org.griplore.store.vocabulary.Unit;

/**
 * The figures of one revision or test, one by one in the order they were read, on a connection of
 * its own. Not thread-safe.
 */
public final class FigureFeed implements AutoCloseable {
  private final Connection connection;
  private final Map<Integer, String> units;
  private final CellColumns cells;
  private final Map<Integer, String> rules;
  private final Map<Integer, Circumstance> circumstances;
  private final PreparedStatement statement;
  private final ResultSet rows;

  private FigureFeed(Connection connection, String which, Object... parameters)
      throws SQLException {
    this.connection = connection;
    this.units = NumberedWords.read(connection, "SELECT id, symbol FROM unit");
    this.cells = CellColumns.of(connection);
    this.rules = Rules.words(connection);
    this.circumstances = Circumstances.all(connection);
    this.statement =
        connection.prepareStatement(
            "SELECT t.key, coalesce(s.name, m.name), d.key, x.value, x.unit_id, x.spread, x.runs,"
                + " x.place, x.rule_id, x.circumstance_id, x.sequence, x.repeat, x.value_sheet_id,"
                + " x.value_row, x.value_column, x.value_text, x.spread_sheet_id, x.spread_row,"
                + " x.spread_column, x.spread_text, x.runs_sheet_id, x.runs_row, x.runs_column,"
                + " x.runs_text, x.place_sheet_id, x.place_row, x.place_column, x.place_text, v.file, e.*"
                + " FROM report p JOIN revision v ON v.id = p.revision_id"
                + " JOIN source o ON o.id = v.source_id JOIN test t ON t.id = p.test_id"
                + " JOIN entry e ON e.report_id = p.id JOIN model m ON m.id = e.model_id"
                + " LEFT JOIN model s ON s.id = m.same_as_id JOIN result x ON x.entry_id = e.id"
                + " JOIN discipline d ON d.id = x.discipline_id"
                + " WHERE "
                + which
                + " ORDER BY x.id");
    for (int i = 0; i < parameters.length; i++) {
      statement.setObject(i + 1, parameters[i]);
    }
    this.rows = statement.executeQuery();
  }

  /** The figures of a revision, superseded or not. */
  static FigureFeed ofRevision(Archive archive, int revision) {
    return open(archive, "p.revision_id = ?", revision);
  }

  /** The figures that current sources other than one tell of a test. */
  static FigureFeed ofTest(Archive archive, String test, String exceptOrigin) {
    return open(
        archive, "t.key = ? AND o.origin <> ? AND v.superseded_by_id IS NULL", test, exceptOrigin);
  }

  private static FigureFeed open(Archive archive, String which, Object... parameters) {
    try {
      Connection connection = archive.ownReading();
      try {
        return new FigureFeed(connection, which, parameters);
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

  /** Name of the file that tells the figure given last. */
  public String file() {
    try {
      return rows.getString("file");
    } catch (SQLException e) {
      throw ArchiveFailure.of(e);
    }
  }

  private StoredFigure figure() throws SQLException {
    String unit = units.get(rows.getInt(5));
    return new StoredFigure(
        rows.getString(1),
        rows.getString(2),
        rows.getString("size"),
        EntryKind.state(rows),
        EntryKind.variant(rows),
        cells.read(rows),
        new Result(
            rows.getString(3),
            Sql.real(rows, 4),
            unit == null ? null : Unit.ofSymbol(unit).orElseThrow(),
            Sql.real(rows, 6),
            Sql.integer(rows, 7),
            Sql.integer(rows, 8),
            new ResultCells(
                cells.read(rows, 13),
                cells.read(rows, 17),
                cells.read(rows, 21),
                cells.read(rows, 25)),
            rules.getOrDefault(rows.getInt(9), ""),
            List.of(),
            circumstances.get(rows.getInt(10)),
            Sql.integer(rows, 11),
            rows.getInt(12)));
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
