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
  static final int NEWEST = 1;

  private Migrations() {}

  static void run(Connection connection) throws SQLException {
    int version = (int) Sql.number(connection, "PRAGMA user_version");
    refuseNewer(version);
    for (int next = version + 1; next <= NEWEST; next++) {
      connection.setAutoCommit(false);
      try (Statement statement = connection.createStatement()) {
        statement.executeUpdate(script(next));
        statement.executeUpdate("PRAGMA user_version = " + next);
        connection.commit();
      } catch (SQLException e) {
        connection.rollback();
        throw e;
      } finally {
        connection.setAutoCommit(true);
      }
    }
  }

  static void refuseNewer(int version) {
    if (version > NEWEST) {
      throw new Refusal(
          "This archive was written by a newer Griplore (archive version "
              + version
              + ", this program knows up to "
              + NEWEST
              + "): use the newer program.");
    }
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
