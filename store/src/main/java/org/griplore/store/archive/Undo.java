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

/** Takes back the last delivery in one transaction, or says what that would take back. */
final class Undo {
  /** The readings of the delivery: its number is parameter 1. */
  private static final String READINGS = "(SELECT id FROM revision WHERE delivery = ?1)";

  private static final String REPORTS =
      "(SELECT id FROM report WHERE revision IN " + READINGS + ")";

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
        int last = (int) Sql.number(connection, "SELECT coalesce(max(delivery), 0) FROM revision");
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
    gone.readings().stream()
        .map(Revision::sha256)
        .filter(sha256 -> !kept.contains(sha256))
        .distinct()
        .forEach(archive.originals()::remove);
  }

  private TakenBack run() {
    keepNumbers();
    List<Revision> readings = revisions("r.delivery = ?1");
    List<Revision> currentAgain = revisions("r.delivery <> ?1 AND r.superseded_by IN " + READINGS);
    Map<String, String> meanings = meanings();
    rememberModels();
    String ofEntries = "entry IN (SELECT id FROM entry WHERE report IN " + REPORTS + ")";
    delete("result_step", "result IN (SELECT id FROM result WHERE " + ofEntries + ")");
    long results = delete("result", ofEntries);
    long entries = delete("entry", "report IN " + REPORTS);
    String ofReductions = "reduction IN (SELECT id FROM reduction WHERE report IN " + REPORTS + ")";
    delete("reduced_run", "reduced_set IN (SELECT id FROM reduced_set WHERE " + ofReductions + ")");
    delete("reduced_set", ofReductions);
    delete("reduction", "report IN " + REPORTS);
    long runs = delete("run", "report IN " + REPORTS);
    long notes = delete("note", "report IN " + REPORTS);
    delete("report", "revision IN " + READINGS);
    long lineage = delete("lineage", "revision IN " + READINGS);
    long findings = delete("finding", "revision IN " + READINGS);
    delete("reading_of_name", "revision IN " + READINGS);
    delete("column_map", "revision IN " + READINGS);
    delete("revision_change", "revision IN " + READINGS);
    execute("UPDATE revision SET superseded_by = NULL WHERE superseded_by IN " + READINGS);
    Meanings.settle(connection);
    delete("revision", "delivery = ?1");
    delete("source_file", "id NOT IN (SELECT source_file FROM revision)");
    List<String> tests = names("test", "key", "NOT IN (SELECT test FROM report)");
    delete("test", "id NOT IN (SELECT test FROM report)");
    List<String> removed = removeModels();
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
        readings,
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

  private void keepNumbers() {
    for (String table :
        List.of(
            "revision",
            "model",
            "lineage",
            "test",
            "report",
            "entry",
            "result",
            "run",
            "note",
            "finding")) {
      Numbers.keep(connection, table);
    }
    Numbers.keepDelivery(connection);
  }

  private List<Revision> revisions(String which) {
    return Sql.list(
        connection,
        Revision.SELECT + " WHERE " + which + " ORDER BY r.id",
        Revision::read,
        delivery);
  }

  /** The names that mean other models, and those models; by name. */
  private Map<String, String> meanings() {
    Map<String, String> meanings = new LinkedHashMap<>();
    Sql.list(
        connection,
        "SELECT m.name, s.name FROM model m JOIN model s ON s.id = m.same_as ORDER BY m.name",
        row -> meanings.put(row.getString(1), row.getString(2)));
    return meanings;
  }

  /** The models that these readings speak of: those that nothing else speaks of will go. */
  private void rememberModels() {
    execute("CREATE TEMP TABLE spoken_of (id INTEGER PRIMARY KEY)");
    for (String models :
        List.of(
            "model FROM entry WHERE report IN " + REPORTS,
            "model FROM run WHERE report IN " + REPORTS,
            "model FROM note WHERE model IS NOT NULL AND report IN " + REPORTS,
            "model FROM lineage WHERE revision IN " + READINGS,
            "follows FROM lineage WHERE follows IS NOT NULL AND revision IN " + READINGS,
            "name FROM reading_of_name WHERE revision IN " + READINGS,
            "means FROM reading_of_name WHERE revision IN " + READINGS)) {
      execute("INSERT OR IGNORE INTO spoken_of SELECT " + models);
    }
  }

  /** Whatever table refers to a model keeps it. */
  private List<String> removeModels() {
    Sql.list(
            connection,
            "SELECT t.name, k.\"from\" FROM sqlite_schema t, pragma_foreign_key_list(t.name) k"
                + " WHERE t.type = 'table' AND k.\"table\" = 'model'",
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

  private int delete(String table, String which) {
    return execute("DELETE FROM " + table + " WHERE " + which);
  }

  private int execute(String sql) {
    return sql.contains("?1")
        ? Sql.execute(connection, sql, delivery)
        : Sql.execute(connection, sql);
  }
}
