package org.griplore.store.archive.database;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import org.sqlite.JDBC;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteConfig.JournalMode;
import org.sqlite.SQLiteConfig.SynchronousMode;
import org.sqlite.SQLiteOpenMode;

/** Opens connections to an archive's database with the settings that the archive relies on. */
public final class Connections {
  private static final int BUSY_TIMEOUT_MS = 5000;
  private static final int CACHE_KIB = 64 * 1024;

  private Connections() {}

  public static Path database(Path folder) {
    return folder.resolve("archive.db");
  }

  public static Connection writing(Path folder) throws SQLException {
    SQLiteConfig config = shared();
    config.setJournalMode(JournalMode.WAL);
    config.setSynchronous(SynchronousMode.NORMAL);
    return open("jdbc:sqlite:" + database(folder), config);
  }

  /** Moves what the write-ahead log holds into the database, so that the one file is complete. */
  public static void complete(Connection writing) {
    Sql.first(writing, "PRAGMA wal_checkpoint(TRUNCATE)", row -> row.getInt(1));
  }

  /** {@code immutable} lets SQLite read a WAL database in a folder where it can make no files. */
  public static Connection readingOnly(Path folder) throws SQLException {
    SQLiteConfig config = shared();
    config.setReadOnly(true);
    config.setOpenMode(SQLiteOpenMode.OPEN_URI);
    return open("jdbc:sqlite:" + database(folder).toUri() + "?immutable=1", config);
  }

  private static SQLiteConfig shared() {
    SQLiteConfig config = new SQLiteConfig();
    config.enforceForeignKeys(true);
    config.setBusyTimeout(BUSY_TIMEOUT_MS);
    config.setCacheSize(-CACHE_KIB);
    return config;
  }

  private static Connection open(String url, SQLiteConfig config) throws SQLException {
    return JDBC.createConnection(url, config.toProperties());
  }
}
