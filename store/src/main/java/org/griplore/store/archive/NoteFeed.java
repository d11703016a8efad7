package org.griplore.store.archive;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import org.griplore.store.archive.database.ArchiveFailure;
import org.griplore.store.archive.database.Sql;
import org.griplore.store.archive.reading.NoteReader;
import org.griplore.store.archive.reading.RevisionReader;

/**
 * The current notes at one moment, read one by one on a connection of its own: additions made
 * meanwhile are not seen. Not thread-safe.
 */
public final class NoteFeed implements AutoCloseable {
  private final Connection connection;

  private NoteFeed(Connection connection) {
    this.connection = connection;
  }

  /**
   * An earlier moment of the archive.
   *
   * @param revision the newest reading then; 0 when there was none
   * @param stamp the archive's stamp then
   */
  public record Moment(int revision, long stamp) {
    /** Before everything. */
    public static final Moment BEGINNING = new Moment(0, 0);
  }

  static NoteFeed open(Archive archive) {
    try {
      Connection connection = archive.ownReading();
      connection.setAutoCommit(false);
      return new NoteFeed(connection);
    } catch (SQLException e) {
      throw ArchiveFailure.of(e);
    }
  }

  /** Takes a note and the names it is found by. */
  public interface Taker {
    /**
     * Takes one note.
     *
     * @param names the model's name and aliases; of a note about a test as a whole, the names of
     *     the models tested
     */
    void take(NoteRecord note, List<String> names);
  }

  /** The archive's stamp at the feed's moment. */
  public long stamp() {
    return Sql.number(connection, "SELECT stamp FROM archive_state");
  }

  /** The newest revision; empty in a new archive. */
  public Optional<Revision> newest() {
    return RevisionReader.first(connection, "ORDER BY r.id DESC LIMIT 1");
  }

  /** The reading with this number. */
  public Optional<Revision> revision(int id) {
    return RevisionReader.first(connection, "WHERE r.id = ?", id);
  }

  /** The highest number that a note has, superseded ones included; 0 without notes. */
  public long highestNote() {
    return Sql.number(connection, "SELECT coalesce(max(id), 0) FROM note");
  }

  /** How many notes {@link #forEachSince} will give. */
  public long countSince(Moment moment) {
    return new NoteReader(connection, moment).count();
  }

  /** Keys of the tests whose notes, or what they are shown with, may have changed since. */
  public List<String> testsSince(Moment moment) {
    return new NoteReader(connection, moment).tests();
  }

  /**
   * Gives, in the order they were added, the notes that may have changed since: those of {@link
   * #testsSince}, and those about models whose names changed. Since the beginning, all.
   */
  public void forEachSince(Moment moment, Taker taker) {
    new NoteReader(connection, moment).forEach(taker);
  }

  @Override
  public void close() {
    try {
      connection.rollback();
      connection.close();
    } catch (SQLException e) {
      throw ArchiveFailure.of(e);
    }
  }
}
