package org.griplore.store.archive;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Map;

/** Gives the figures of one reading one by one, sorted by test, model, size and discipline. */
final class FigureCursor implements AutoCloseable {
  private final PreparedStatement statement;
  private final ResultSet rows;
  private final Map<Integer, String> tests;
  private final Map<Integer, String> models;
  private final Map<Integer, String> disciplines;
  private final Map<Integer, String> units;

  FigureCursor(Connection connection, int revision) throws SQLException {
    this.tests = NumberedWords.read(connection, "SELECT id, key FROM test");
    this.models = NumberedWords.read(connection, "SELECT id, name FROM model");
    this.disciplines = NumberedWords.read(connection, "SELECT id, key FROM discipline");
    this.units = NumberedWords.read(connection, "SELECT id, symbol FROM unit");
    this.statement =
        connection.prepareStatement(
            "SELECT p.test, e.model, e.size, x.discipline, x.value, x.unit, x.place"
                + " FROM report p JOIN entry e ON e.report = p.id JOIN result x ON x.entry = e.id"
                + " WHERE p.revision = ? ORDER BY 1, 2, 3, 4");
    statement.setInt(1, revision);
    this.rows = statement.executeQuery();
  }

  /** A figure and, by database numbers, what it is a figure of. */
  record Figure(
      int test, int model, String size, int discipline, Double value, String unit, Integer place) {
    @Override
    public String toString() {
      String told = value == null ? "no value" : (value + " " + unit).strip();
      return place == null ? told : told + ", place " + place;
    }
  }

  /** The next figure; null after the last. */
  Figure next() throws SQLException {
    if (!rows.next()) {
      return null;
    }
    return new Figure(
        rows.getInt(1),
        rows.getInt(2),
        rows.getString(3),
        rows.getInt(4),
        Sql.real(rows, 5),
        units.get(rows.getInt(6)),
        Sql.integer(rows, 7));
  }

  /** What a figure is a figure of, in words. */
  String of(Figure figure) {
    String size = figure.size() == null ? "" : " in " + figure.size();
    return models.get(figure.model())
        + size
        + ", "
        + disciplines.get(figure.discipline())
        + ", test "
        + tests.get(figure.test());
  }

  @Override
  public void close() throws SQLException {
    try (statement) {
      rows.close();
    }
  }
}
