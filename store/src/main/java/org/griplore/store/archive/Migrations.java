package org.griplore.store.archive;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import org.griplore.store.vocabulary.Refusal;

/**
 * Brings a database to the newest shape: {@code migration-N.sql} leads from version N-1 to N, and
 * {@code PRAGMA user_version} says where a database stands. Each step is one transaction.
 */
final class Migrations {
  /** The version this program writes. */
  static final int NEWEST = 2;

  /** Marks a database as an archive: "GRIP" in ASCII. */
  private static final int APPLICATION = 0x47524950;

  private Migrations() {}

  static void run(Connection connection) throws SQLException {
    int version = refuseOther(connection);
    for (int next = version + 1; next <= NEWEST; next++) {
      connection.setAutoCommit(false);
      try (Statement statement = connection.createStatement()) {
        statement.executeUpdate(script(next));
        statement.executeUpdate("PRAGMA user_version = " + next);
        statement.executeUpdate("PRAGMA application_id = " + APPLICATION);
        connection.commit();
      } catch (SQLException e) {
        connection.rollback();
        throw e;
      } finally {
        connection.setAutoCommit(true);
      }
    }
  }

  /**
   * The version of a database that is an archive or is empty.
   *
   * @throws Refusal when it is neither, or newer than this program
   */
  static int refuseOther(Connection connection) {
    int version = (int) Sql.number(connection, "PRAGMA user_version");
    boolean marked = Sql.number(connection, "PRAGMA application_id") == APPLICATION;
    long tables = Sql.number(connection, "SELECT count(*) FROM sqlite_schema");
    if (marked && version > NEWEST) {
      throw new Refusal(
          "This archive was written by a newer Griplore (archive version "
              + version
              + ", this program knows up to "
              + NEWEST
              + "): use the newer program.");
    }
    if (!marked && (tables > 0 || version > 0)) {
      throw new Refusal(
          "archive.db is the database of another program, not a Griplore archive: choose another"
              + " folder; nothing was changed.");
    }
    return version;
  }

  private static String script(int version) {
    String name = "migration-" + version + ".sql";
    try (InputStream in = Migrations.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
