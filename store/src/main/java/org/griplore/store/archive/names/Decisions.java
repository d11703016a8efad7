package org.griplore.store.archive.names;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.griplore.store.archive.database.Sql;
import org.griplore.store.archive.database.StoredMoment;
import org.griplore.store.vocabulary.Decision;

/** Reads and writes the user's decisions. */
public final class Decisions {
  private static final String ALL = "SELECT * FROM decision ORDER BY id";

  private Decisions() {}

  private record Subject(String key, Decision.Topic topic) {}

  /** All decisions ever made, oldest first. */
  public static List<Decision> history(Connection connection) {
    return Sql.list(connection, ALL, Decisions::read);
  }

  /** The decisions that stand, in the order they were made. */
  public static List<Decision> standing(Connection connection) {
    Map<Subject, Decision> newest = new LinkedHashMap<>();
    for (Decision decision : history(connection)) {
      Subject subject = new Subject(decision.key(), decision.topic());
      newest.remove(subject);
      if (decision.verdict() != Decision.Verdict.OPEN) {
        newest.put(subject, decision);
      }
    }
    return new ArrayList<>(newest.values());
  }

  public static List<Decision> standing(Connection connection, Decision.Topic topic) {
    return standing(connection).stream().filter(decision -> decision.topic() == topic).toList();
  }

  public static void write(Connection connection, Decision decision) {
    Sql.execute(
        connection,
        "INSERT INTO decision (name, topic, verdict, value, decided_at, reason)"
            + " VALUES (?, ?, ?, ?, ?, ?)",
        decision.name(),
        decision.topic().word(),
        decision.verdict().word(),
        decision.value(),
        StoredMoment.text(decision.decidedAt()),
        decision.words());
  }

  private static Decision read(ResultSet row) throws SQLException {
    return new Decision(
        row.getString("name"),
        Decision.Topic.ofWord(row.getString("topic")).orElseThrow(),
        Decision.Verdict.ofWord(row.getString("verdict")).orElseThrow(),
        row.getString("value"),
        Instant.parse(row.getString("decided_at")),
        row.getString("reason"));
  }
}
