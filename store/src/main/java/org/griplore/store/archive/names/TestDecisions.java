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
import org.griplore.store.vocabulary.TestDecision;

/** Reads and writes what was decided on tests told twice. */
public final class TestDecisions {
  private TestDecisions() {}

  /** All decisions ever made, oldest first. */
  public static List<TestDecision> history(Connection connection) {
    return Sql.list(connection, "SELECT * FROM test_decision ORDER BY id", TestDecisions::read);
  }

  /** The decisions that stand, in the order they were made. */
  public static List<TestDecision> standing(Connection connection) {
    Map<List<String>, TestDecision> newest = new LinkedHashMap<>();
    for (TestDecision decision : history(connection)) {
      List<String> pair = List.of(decision.test(), decision.other());
      newest.remove(pair);
      if (decision.verdict() != TestDecision.Verdict.OPEN) {
        newest.put(pair, decision);
      }
    }
    return new ArrayList<>(newest.values());
  }

  public static void write(Connection connection, TestDecision decision) {
    Sql.execute(
        connection,
        "INSERT INTO test_decision (test_key, other_key, verdict, decided_at, reason)"
            + " VALUES (?, ?, ?, ?, ?)",
        decision.test(),
        decision.other(),
        decision.verdict().word(),
        StoredMoment.text(decision.decidedAt()),
        decision.reason());
  }

  private static TestDecision read(ResultSet row) throws SQLException {
    return new TestDecision(
        row.getString("test_key"),
        row.getString("other_key"),
        TestDecision.Verdict.ofWord(row.getString("verdict")).orElseThrow(),
        Instant.parse(row.getString("decided_at")),
        row.getString("reason"));
  }
}
