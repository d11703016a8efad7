package org.griplore.store.archive.writing;

import java.sql.Connection;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.griplore.store.archive.Original;
import org.griplore.store.archive.Revision;
import org.griplore.store.archive.database.NextId;
import org.griplore.store.archive.database.PhraseColumns;
import org.griplore.store.archive.database.Sql;
import org.griplore.store.archive.database.StoredMoment;
import org.griplore.store.archive.reading.RevisionReader;
import org.griplore.store.vocabulary.Phrase;
import org.griplore.store.wording.PhraseBook;

/** Writes the revision of a source, retires the one before it and says what changed. */
public final class RevisionWriter {
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

  public static RevisionWriter begin(
      Connection connection,
      Original original,
      String form,
      Map<String, String> options,
      int delivery,
      Clock clock) {
    Sql.execute(connection, "INSERT OR IGNORE INTO source (origin) VALUES (?)", original.origin());
    int source =
        (int) Sql.number(connection, "SELECT id FROM source WHERE origin = ?", original.origin());
    Optional<Revision> before =
        RevisionReader.first(
            connection, "WHERE r.source_id = ? ORDER BY r.number DESC LIMIT 1", source);
    int id = (int) NextId.of(connection, "revision");
    Sql.execute(
        connection,
        "INSERT INTO revision (id, source_id, number, sha256, bytes, file, form, added_at,"
            + " delivery_id) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)",
        id,
        source,
        before.map(Revision::number).orElse(0) + 1,
        original.sha256(),
        original.bytes(),
        original.name(),
        form,
        StoredMoment.text(clock.instant()),
        delivery);
    int position = 0;
    for (Map.Entry<String, String> option : options.entrySet()) {
      Sql.execute(
          connection,
          "INSERT INTO revision_option (revision_id, position, name, value) VALUES (?, ?, ?, ?)",
          id,
          ++position,
          option.getKey(),
          option.getValue());
    }
    before.ifPresent(
        old ->
            Sql.execute(
                connection,
                "UPDATE revision SET superseded_by_id = ? WHERE id = ? AND superseded_by_id IS NULL",
                id,
                old.id()));
    return new RevisionWriter(connection, id, delivery, before);
  }

  public int id() {
    return id;
  }

  public int delivery() {
    return delivery;
  }

  public boolean isFirst() {
    return before.isEmpty();
  }

  /** The revision whose place this one takes; empty for the first of its source. */
  public Optional<Integer> superseded() {
    return before.map(Revision::id);
  }

  /** Stores what changed and returns it in sentences; nothing for a first revision. */
  public List<String> finish() {
    List<Phrase> changes =
        before.map(old -> RevisionChanges.between(connection, old.id(), id)).orElse(List.of());
    for (int i = 0; i < changes.size(); i++) {
      Sql.execute(
          connection,
          "INSERT INTO revision_change (revision_id, position, code, parameters)"
              + " VALUES (?, ?, ?, ?)",
          id,
          i + 1,
          changes.get(i).code(),
          PhraseColumns.json(changes.get(i).parameters()));
    }
    return changes.stream().map(PhraseBook::words).toList();
  }
}
