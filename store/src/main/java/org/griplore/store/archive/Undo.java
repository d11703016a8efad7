package org.griplore.store.archive;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.griplore.store.archive.database.ArchiveFailure;
import org.griplore.store.archive.database.Sql;
import org.griplore.store.archive.names.Meanings;
import org.griplore.store.archive.names.Settled;
import org.griplore.store.archive.reading.RevisionReader;

/** Takes back the last delivery in one transaction, or says what that would take back. */
final class Undo {
  /** The revisions of the delivery: its number is parameter 1. */
  private static final String REVISIONS = "(SELECT id FROM revision WHERE delivery_id = ?1)";

  private static final String REPORTS =
      "(SELECT id FROM report WHERE revision_id IN " + REVISIONS + ")";

  private final Connection connection;
  private final int delivery;

  private Undo(Connection connection, int delivery) {
    this.connection = connection;
    this.delivery = delivery;
  }

  /**
   * Takes back the last delivery.
   *
   * @param stay whether it is really taken back
   */
  @SuppressWarnings("try") // the lock is only held
  static Optional<TakenBack> of(Archive archive, boolean stay) {
    archive.refuseUnwritable("nothing can be taken back");
    try (WriteLock lock = WriteLock.take(archive, "nothing was taken back");
        Connection connection = archive.ownWriting()) {
      connection.setAutoCommit(false);
      Optional<TakenBack> taken = Optional.empty();
      try {
        int last = (int) Sql.number(connection, "SELECT coalesce(max(id), 0) FROM delivery");
        if (last > 0) {
          taken = Optional.of(new Undo(connection, last).run());
        }
        if (stay) {
          connection.commit();
        }
      } finally {
        connection.rollback();
      }
      if (stay) {
        taken.ifPresent(gone -> removeOriginals(archive, connection, gone));
      }
      return taken;
    } catch (SQLException e) {
      throw ArchiveFailure.of(e);
    }
  }

  /** After the commit: an original left behind does no harm, one that is missing would. */
  private static void removeOriginals(Archive archive, Connection connection, TakenBack gone) {
    Set<String> kept =
        new HashSet<>(Sql.list(connection, "SELECT sha256 FROM revision", row -> row.getString(1)));
    gone.revisions().stream()
        .map(Revision::sha256)
        .filter(sha256 -> !kept.contains(sha256))
        .distinct()
        .forEach(archive.originals()::remove);
  }

  private TakenBack run() {
    List<Revision> revisions = revisions("r.delivery_id = ?1");
    List<Revision> currentAgain =
        revisions("r.delivery_id <> ?1 AND r.superseded_by_id IN " + REVISIONS);
    Map<String, String> meanings = meanings();
    rememberModels();
    String ofReports = " WHERE report_id IN " + REPORTS;
    long results = count("result WHERE entry_id IN (SELECT id FROM entry" + ofReports + ")");
    long entries = count("entry" + ofReports);
    long runs = count("run" + ofReports);
    long notes = count("note" + ofReports);
    long lineage = count("lineage WHERE revision_id IN " + REVISIONS);
    long findings = count("finding WHERE revision_id IN " + REVISIONS);
    List<Integer> told =
        Sql.list(
            connection,
            "SELECT DISTINCT p.test_id FROM report p JOIN revision r ON r.id = p.revision_id"
                + " WHERE r.delivery_id = ?1 OR r.superseded_by_id IN "
                + REVISIONS,
            row -> row.getInt(1),
            delivery);
    execute("DELETE FROM delivery WHERE id = ?1");
    Meanings.settle(connection);
    execute("DELETE FROM source WHERE id NOT IN (SELECT source_id FROM revision)");
    List<String> tests = names("test", "key", "NOT IN (SELECT test_id FROM report)");
    execute("DELETE FROM test WHERE id NOT IN (SELECT test_id FROM report)");
    List<String> removed = removeModels();
    Settled.afterUndo(connection, told);
    List<String> apartAgain = new ArrayList<>();
    Map<String, String> now = meanings();
    meanings.forEach(
        (name, meaning) -> {
          if (!removed.contains(name) && !meaning.equals(now.get(name))) {
            apartAgain.add(name);
          }
        });
    List<String> models = removed.stream().filter(name -> !meanings.containsKey(name)).toList();
    execute("UPDATE archive_state SET stamp = stamp + 1");
    return new TakenBack(
        revisions,
        currentAgain,
        tests,
        entries,
        results,
        runs,
        notes,
        lineage,
        findings,
        models,
        apartAgain);
  }

  private List<Revision> revisions(String which) {
    return RevisionReader.list(connection, "WHERE " + which + " ORDER BY r.id", delivery);
  }

  /** The names that mean other models, and those models; by name. */
  private Map<String, String> meanings() {
    Map<String, String> meanings = new LinkedHashMap<>();
    Sql.list(
        connection,
        "SELECT m.name, s.name FROM model m JOIN model s ON s.id = m.same_as_id ORDER BY m.name",
        row -> meanings.put(row.getString(1), row.getString(2)));
    return meanings;
  }

  /** The models that these revisions speak of: those that nothing else speaks of will go. */
  private void rememberModels() {
    execute("CREATE TEMP TABLE spoken_of (id INTEGER PRIMARY KEY)");
    for (String models :
        List.of(
            "model_id FROM entry WHERE report_id IN " + REPORTS,
            "model_id FROM run WHERE report_id IN " + REPORTS,
            "model_id FROM note WHERE model_id IS NOT NULL AND report_id IN " + REPORTS,
            "model_id FROM lineage WHERE revision_id IN " + REVISIONS,
            "follows_id FROM lineage WHERE follows_id IS NOT NULL AND revision_id IN " + REVISIONS,
            "model_id FROM name_taken WHERE revision_id IN " + REVISIONS,
            "means_id FROM name_taken WHERE revision_id IN " + REVISIONS)) {
      execute("INSERT OR IGNORE INTO spoken_of SELECT " + models);
    }
  }

  /** Whatever table refers to a model keeps it. */
  private List<String> removeModels() {
    Sql.list(
            connection,
            "SELECT t.name, k.\"from\" FROM sqlite_schema t, pragma_foreign_key_list(t.name) k"
                + " WHERE t.type = 'table' AND k.\"table\" = 'model'"
                + " AND NOT (t.name = 'model' AND k.\"from\" = 'follows_id')",
            row -> List.of(row.getString(1), row.getString(2)))
        .forEach(
            key ->
                execute(
                    "DELETE FROM spoken_of WHERE id IN (SELECT %2$s FROM %1$s)"
                        .formatted(key.get(0), key.get(1))));
    List<String> models = names("model", "name", "IN (SELECT id FROM spoken_of)");
    execute("DELETE FROM model WHERE id IN (SELECT id FROM spoken_of)");
    execute("DROP TABLE spoken_of");
    return models;
  }

  private List<String> names(String table, String column, String which) {
    return Sql.list(
        connection,
        "SELECT %2$s FROM %1$s WHERE id %3$s ORDER BY %2$s".formatted(table, column, which),
        row -> row.getString(1));
  }

  private long count(String which) {
    return Sql.number(connection, "SELECT count(*) FROM " + which, delivery);
  }

  private int execute(String sql) {
    return sql.contains("?1")
        ? Sql.execute(connection, sql, delivery)
        : Sql.execute(connection, sql);
  }
}
