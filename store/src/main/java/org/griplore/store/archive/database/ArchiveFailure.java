package org.griplore.store.archive.database;

import java.sql.SQLException;
import org.griplore.store.vocabulary.Refusal;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/** Tells a failure of the database in a sentence its user can act on. */
public final class ArchiveFailure {
  private ArchiveFailure() {}

  public static Refusal of(SQLException failure) {
    return new Refusal(sentence(failure), failure);
  }

  private static String sentence(SQLException failure) {
    SQLiteErrorCode code =
        failure instanceof SQLiteException sqlite
            ? sqlite.getResultCode()
            : SQLiteErrorCode.UNKNOWN_ERROR;
    return switch (code) {
      case SQLITE_FULL -> "The disk is full: nothing was added, the archive is as it was.";
      case SQLITE_BUSY, SQLITE_BUSY_SNAPSHOT, SQLITE_LOCKED ->
          "The archive is in use by another program: try again when it has finished.";
      case SQLITE_READONLY, SQLITE_READONLY_DIRECTORY, SQLITE_READONLY_CANTINIT, SQLITE_CANTOPEN ->
          "The archive cannot be written here: its folder is read-only or is not there.";
      case SQLITE_NOTADB, SQLITE_CORRUPT ->
          "archive.db is damaged or is not a Griplore archive: restore it from a backup.";
      default -> "The archive could not be read or written: " + failure.getMessage() + ".";
    };
  }
}
