package org.griplore.store.archive.writing;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.HashMap;
import java.util.Map;
import org.griplore.store.archive.database.Sql;
import org.griplore.store.vocabulary.Circumstance;
import org.griplore.store.vocabulary.ResultKind;
import org.griplore.store.vocabulary.Surface;

/** The circumstances that results share, by their numbers. */
public final class Circumstances {
  private final Connection connection;
  private final Map<Circumstance, Integer> numbers = new HashMap<>();

  public Circumstances(Connection connection) {
    this.connection = connection;
    all(connection).forEach((number, circumstance) -> numbers.put(circumstance, number));
  }

  public static Map<Integer, Circumstance> all(Connection connection) {
    Map<Integer, Circumstance> all = new HashMap<>();
    Sql.forEach(
        connection, "SELECT * FROM circumstance", row -> all.put(row.getInt("id"), read(row)));
    return all;
  }

  private static Circumstance read(ResultSet row) throws SQLException {
    String surface = row.getString("surface");
    return new Circumstance(
        ResultKind.ofKey(row.getString("kind")).orElseThrow(),
        Sql.real(row, "from_kmh"),
        Sql.real(row, "to_kmh"),
        surface == null ? null : Surface.ofKey(surface).orElseThrow(),
        Sql.real(row, "water_mm"),
        Sql.real(row, "surface_c"),
        Sql.real(row, "air_c"));
  }

  /** The circumstance's number; a new one gets the next. */
  public int number(Circumstance circumstance) {
    Integer known = numbers.get(circumstance);
    if (known != null) {
      return known;
    }
    int next = numbers.size() + 1;
    Sql.execute(
        connection,
        "INSERT INTO circumstance (id, kind, from_kmh, to_kmh, surface, water_mm, surface_c, air_c)"
            + " VALUES (?, ?, ?, ?, ?, ?, ?, ?)",
        next,
        circumstance.kind().key(),
        circumstance.fromKmh(),
        circumstance.toKmh(),
        circumstance.surface() == null ? null : circumstance.surface().key(),
        circumstance.waterMm(),
        circumstance.surfaceC(),
        circumstance.airC());
    numbers.put(circumstance, next);
    return next;
  }
}
