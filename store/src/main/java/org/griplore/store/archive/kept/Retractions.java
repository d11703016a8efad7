package org.griplore.store.archive.kept;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.griplore.store.archive.database.Sql;
import org.griplore.store.archive.database.StoredMoment;
import org.griplore.store.vocabulary.Circumstance;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;
import org.griplore.store.vocabulary.ResultKind;
import org.griplore.store.vocabulary.Retraction;

/** Reads and writes what was retracted. */
public final class Retractions {
  private Retractions() {}

  /** Everything ever retracted or taken back again, oldest first. */
  public static List<Retraction> history(Connection connection) {
    return Sql.list(connection, "SELECT * FROM retraction ORDER BY id", Retractions::read);
  }

  /** What stands retracted, in the order it was. */
  public static List<Retraction> standing(Connection connection) {
    List<Retraction> standing = new ArrayList<>();
    for (Retraction each : history(connection)) {
      standing.removeIf(each::sameSubject);
      if (each.retracted()) {
        standing.add(each);
      }
    }
    return standing;
  }

  /**
   * Retracts, or takes a retraction back.
   *
   * @throws Refusal when there is no such test, or nothing stands that could be taken back
   */
  public static void write(Connection connection, Retraction retraction) {
    if (Sql.number(connection, "SELECT count(*) FROM test WHERE key = ?", retraction.test()) == 0) {
      throw new Refusal(
          "There is no test " + retraction.test() + "; nothing was retracted.",
          new Problem("test", retraction.test(), "a key that `griplore tests` lists"));
    }
    if (!retraction.retracted()
        && standing(connection).stream().noneMatch(retraction::sameSubject)) {
      throw new Refusal(
          "Nothing of " + retraction.test() + " stands retracted so; nothing was changed.",
          new Problem("test", retraction.test(), "a test or result that was retracted"));
    }
    Circumstance circumstance = retraction.circumstance();
    Sql.execute(
        connection,
        "INSERT INTO retraction (test_key, model, size, discipline, kind, from_kmh, to_kmh, repeat,"
            + " verdict, reason, retracted_at) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
        retraction.test(),
        retraction.model(),
        retraction.size(),
        retraction.discipline(),
        circumstance == null ? null : circumstance.kind().key(),
        circumstance == null ? null : circumstance.fromKmh(),
        circumstance == null ? null : circumstance.toKmh(),
        retraction.repeat(),
        retraction.retracted() ? "retracted" : "open",
        retraction.reason(),
        StoredMoment.text(retraction.at()));
  }

  private static Retraction read(ResultSet row) throws SQLException {
    String kind = row.getString("kind");
    return new Retraction(
        row.getString("test_key"),
        row.getString("model"),
        row.getString("size"),
        row.getString("discipline"),
        kind == null
            ? null
            : Circumstance.of(ResultKind.ofKey(kind).orElseThrow())
                .within(Sql.real(row, "from_kmh"), Sql.real(row, "to_kmh")),
        Sql.integer(row, "repeat"),
        row.getString("verdict").equals("retracted"),
        row.getString("reason"),
        Instant.parse(row.getString("retracted_at")));
  }
}
