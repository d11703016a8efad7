package org.griplore.store.archive.database;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Runs a statement with its parameters in order; null binds NULL. */
public final class Sql {
  private Sql() {}

  /** Turns the row that the cursor stands on into an object. */
  public interface RowMapper<T> {
    T map(ResultSet row) throws SQLException;
  }

  public static <T> List<T> list(
      Connection connection, String sql, RowMapper<T> mapper, Object... parameters) {
    try (PreparedStatement statement = prepare(connection, sql, parameters);
        ResultSet rows = statement.executeQuery()) {
      List<T> all = new ArrayList<>();
      while (rows.next()) {
        all.add(mapper.map(rows));
      }
      return all;
    } catch (SQLException e) {
      throw ArchiveFailure.of(e);
    }
  }

  /** Takes the row that the cursor stands on. */
  public interface RowTaker {
    void take(ResultSet row) throws SQLException;
  }

  /** Gives the rows one by one: none is kept. */
  public static void forEach(
      Connection connection, String sql, RowTaker taker, Object... parameters) {
    try (PreparedStatement statement = prepare(connection, sql, parameters);
        ResultSet rows = statement.executeQuery()) {
      while (rows.next()) {
        taker.take(rows);
      }
    } catch (SQLException e) {
      throw ArchiveFailure.of(e);
    }
  }

  public static <T> Optional<T> first(
      Connection connection, String sql, RowMapper<T> mapper, Object... parameters) {
    try (PreparedStatement statement = prepare(connection, sql, parameters);
        ResultSet rows = statement.executeQuery()) {
      return rows.next() ? Optional.of(mapper.map(rows)) : Optional.empty();
    } catch (SQLException e) {
      throw ArchiveFailure.of(e);
    }
  }

  public static long number(Connection connection, String sql, Object... parameters) {
    return first(connection, sql, row -> row.getLong(1), parameters).orElse(0L);
  }

  public static int execute(Connection connection, String sql, Object... parameters) {
    try (PreparedStatement statement = prepare(connection, sql, parameters)) {
      return statement.executeUpdate();
    } catch (SQLException e) {
      throw ArchiveFailure.of(e);
    }
  }

  public static Double real(ResultSet row, String column) throws SQLException {
    double value = row.getDouble(column);
    return row.wasNull() ? null : value;
  }

  public static Integer integer(ResultSet row, String column) throws SQLException {
    int value = row.getInt(column);
    return row.wasNull() ? null : value;
  }

  public static Double real(ResultSet row, int column) throws SQLException {
    double value = row.getDouble(column);
    return row.wasNull() ? null : value;
  }

  public static Integer integer(ResultSet row, int column) throws SQLException {
    int value = row.getInt(column);
    return row.wasNull() ? null : value;
  }

  private static PreparedStatement prepare(Connection connection, String sql, Object... parameters)
      throws SQLException {
    PreparedStatement statement = connection.prepareStatement(sql);
    for (int i = 0; i < parameters.length; i++) {
      statement.setObject(i + 1, parameters[i]);
    }
    return statement;
  }
}
