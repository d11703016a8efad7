package org.griplore.store.archive;

import java.sql.Connection;
import java.time.Clock;
import java.util.List;
import java.util.Optional;

/** Writes the revision of a source, retires the one before it and says what changed. */
final class RevisionWriter {
  private final Connection connection;
  private final int id;
  private final int delivery;
  private final Optional<Revision> before;

  private RevisionWriter(Connection connection, int id, int delivery, Optional<Revision> before) {
    this.connection = connection;
    this.id = id;
    this.delivery = delivery;
    this.before = before;
  }

  static RevisionWriter begin(
      Connection connection,
      Original original,
      String form,
      String options,
      int delivery,
      Clock clock) {
    Sql.execute(
        connection, "INSERT OR IGNORE INTO source_file (origin) VALUES (?)", original.origin());
    int source =
        (int)
            Sql.number(
                connection, "SELECT id FROM source_file WHERE origin = ?", original.origin());
    Optional<Revision> before =
        Sql.first(
            connection,
            Revision.SELECT + " WHERE r.source_file = ? ORDER BY r.number DESC LIMIT 1",
            Revision::read,
            source);
    int id = (int) Numbers.next(connection, "revision");
    Sql.execute(
        connection,
        "INSERT INTO revision (id, source_file, number, sha256, bytes, name, form, options,"
            + " added_at, delivery) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
        id,
        source,
        before.map(Revision::number).orElse(0) + 1,
        original.sha256(),
        original.bytes(),
        original.name(),
        form,
        options,
        clock.instant().toString(),
        delivery);
    before.ifPresent(
        old ->
            Sql.execute(
                connection,
                "UPDATE revision SET superseded_by = ? WHERE id = ? AND superseded_by IS NULL",
                id,
                old.id()));
    return new RevisionWriter(connection, id, delivery, before);
  }

  int id() {
    return id;
  }

  int delivery() {
    return delivery;
  }

  boolean isFirst() {
    return before.isEmpty();
  }

  /** Stores and returns what changed; nothing for a first reading. */
  List<String> finish() {
    List<String> changes =
        before.map(old -> RevisionChanges.sentences(connection, old.id(), id)).orElse(List.of());
    for (int i = 0; i < changes.size(); i++) {
      Sql.execute(
          connection,
          "INSERT INTO revision_change (revision, position, sentence) VALUES (?, ?, ?)",
          id,
          i + 1,
          changes.get(i));
    }
    return changes;
  }
}
