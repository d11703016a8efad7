package org.griplore.store.archive;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.function.Function;
import org.griplore.store.archive.database.ArchiveFailure;
import org.griplore.store.archive.database.Sql;
import org.griplore.store.vocabulary.Refusal;

/** Changes an archive in one transaction, while nobody else writes: whole, or not at all. */
final class WholeChange {
  private WholeChange() {}

  /**
   * Makes the change and lets the stamp rise.
   *
   * @param done what did not happen when it is refused: "nothing was decided"
   * @throws Refusal when the archive is read-only, somebody else is writing, or the change refuses
   */
  @SuppressWarnings("try") // the lock is only held
  static <T> T make(Archive archive, String done, Function<Connection, T> change) {
    try (WriteLock lock = WriteLock.take(archive, done);
        Connection connection = archive.ownWriting()) {
      // what is acknowledged is on disk, be the plug pulled at once
      Sql.execute(connection, "PRAGMA synchronous = FULL");
      connection.setAutoCommit(false);
      try {
        T result = change.apply(connection);
        Sql.execute(connection, "UPDATE archive_state SET stamp = stamp + 1");
        connection.commit();
        return result;
      } finally {
        connection.rollback();
      }
    } catch (SQLException e) {
      throw ArchiveFailure.of(e);
    }
  }
}
