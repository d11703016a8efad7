package org.griplore.store.archive.writing;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Map;
import org.griplore.store.archive.database.NumberedWords;
import org.griplore.store.archive.database.Sql;

/** Gives the figures of one revision one by one, sorted by what they are figures of. */
public final class FigureCursor implements AutoCloseable {
  private final PreparedStatement statement;
  private final ResultSet rows;
  private final Map<Integer, String> tests;
  private final Map<Integer, String> models;
  private final Map<Integer, String> disciplines;
  private final Map<Integer, String> units;

  public FigureCursor(Connection connection, int revision) throws SQLException {
    this.tests = NumberedWords.read(connection, "SELECT id, key FROM test");
    this.models = NumberedWords.read(connection, "SELECT id, name FROM model");
    this.disciplines = NumberedWords.read(connection, "SELECT id, key FROM discipline");
    this.units = NumberedWords.read(connection, "SELECT id, symbol FROM unit");
    this.statement =
        connection.prepareStatement(
            "SELECT p.test_id, e.model_id, e.size, x.discipline_id, x.circumstance_id, x.repeat,"
                + " (e.state = 'worn') * 16 + e.ev * 8 + e.extra_load * 4 + e.run_flat * 2 + e.seal,"
                + " x.value, x.unit_id, x.place"
                + " FROM report p JOIN entry e ON e.report_id = p.id"
                + " JOIN result x ON x.entry_id = e.id"
                + " WHERE p.revision_id = ? ORDER BY 1, 2, 3, 4, 5, 6, 7");
    statement.setInt(1, revision);
    this.rows = statement.executeQuery();
  }

  /**
   * A figure and, by database numbers, what it is a figure of.
   *
   * @param rest discipline, circumstance, repeat, and the entry's state and variant
   */
  public record Figure(
      int test, int model, String size, int[] rest, Double value, String unit, Integer place) {
    @Override
    public String toString() {
      String told = value == null ? "no value" : (value + " " + unit).strip();
      return place == null ? told : told + ", place " + place;
    }
  }

  /** The next figure; null after the last. */
  public Figure next() throws SQLException {
    if (!rows.next()) {
      return null;
    }
    return new Figure(
        rows.getInt(1),
        rows.getInt(2),
        rows.getString(3),
        new int[] {rows.getInt(4), rows.getInt(5), rows.getInt(6), rows.getInt(7)},
        Sql.real(rows, 8),
        units.get(rows.getInt(9)),
        Sql.integer(rows, 10));
  }

  /** What a figure is a figure of: model with its size, discipline, test. */
  public List<String> of(Figure figure) {
    String size = figure.size() == null ? "" : " in " + figure.size();
    return List.of(
        models.get(figure.model()) + size,
        disciplines.get(figure.rest()[0]),
        tests.get(figure.test()));
  }

  @Override
  public void close() throws SQLException {
    try (statement) {
      rows.close();
    }
  }
}
