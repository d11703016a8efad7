package org.griplore.store.archive.kept;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import org.griplore.store.archive.KeptAnswer;
import org.griplore.store.archive.database.Sql;
import org.griplore.store.archive.database.StoredMoment;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;

/** Reads and writes answers that were kept. */
public final class KeptAnswers {
  private KeptAnswers() {}

  /** All, in the order they were kept. */
  public static List<KeptAnswer> all(Connection connection) {
    return Sql.list(connection, "SELECT * FROM kept_answer ORDER BY id", KeptAnswers::read);
  }

  /**
   * Keeps an answer with the archive's stamp and newest delivery.
   *
   * @throws Refusal when another is kept under this name
   */
  public static KeptAnswer keep(
      Connection connection,
      String name,
      String question,
      String options,
      String sentence,
      String answer,
      Instant now) {
    if (all(connection).stream().anyMatch(kept -> kept.name().equals(name))) {
      throw new Refusal(
          "An answer is kept as " + name + " already: choose another name; nothing was kept.",
          new Problem("name", name, "a name that no kept answer has"));
    }
    KeptAnswer kept =
        new KeptAnswer(
            name,
            question,
            options,
            sentence,
            answer,
            Sql.number(connection, "SELECT stamp FROM archive_state"),
            (int) Sql.number(connection, "SELECT coalesce(max(id), 0) FROM delivery"),
            now);
    Sql.execute(
        connection,
        "INSERT INTO kept_answer (name, question, options, sentence, answer, stamp, delivery,"
            + " kept_at) VALUES (?, ?, ?, ?, ?, ?, ?, ?)",
        name,
        question,
        options,
        sentence,
        answer,
        kept.stamp(),
        kept.delivery(),
        StoredMoment.text(now));
    return kept;
  }

  private static KeptAnswer read(ResultSet row) throws SQLException {
    return new KeptAnswer(
        row.getString("name"),
        row.getString("question"),
        row.getString("options"),
        row.getString("sentence"),
        row.getString("answer"),
        row.getLong("stamp"),
        row.getInt("delivery"),
        Instant.parse(row.getString("kept_at")));
  }
}
