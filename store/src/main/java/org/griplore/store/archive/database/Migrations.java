package org.griplore.store.archive.database;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import org.griplore.store.archive.names.Settled;
import org.griplore.store.archive.views.ViewSheet;
import org.griplore.store.vocabulary.Refusal;

/**
 * Brings a database to the newest shape: {@code migration-N.sql} leads from version N-1 to N, and
 * {@code PRAGMA user_version} says where a database stands. All steps together are one transaction:
 * what was begun and killed was never begun.
 */
public final class Migrations {
  /** The version this program writes. */
  public static final int NEWEST = 3;

  /** Marks a database as an archive: "GRIP" in ASCII. */
  private static final int APPLICATION = 0x47524950;

  private final Connection connection;

  private Migrations(Connection connection) {
    this.connection = connection;
  }

  /**
   * Carries a database over to {@link #NEWEST}.
   *
   * @throws Refusal when it is no archive, or newer than this program
   */
  public static void run(Connection connection) throws SQLException {
    if (refuseOther(connection) == NEWEST) {
      return;
    }
    // neither can be changed inside a transaction; references are checked at its end
    Sql.execute(connection, "PRAGMA foreign_keys = OFF");
    Sql.execute(connection, "PRAGMA legacy_alter_table = ON");
    try {
      new Migrations(connection).run();
    } finally {
      Sql.execute(connection, "PRAGMA legacy_alter_table = OFF");
      Sql.execute(connection, "PRAGMA foreign_keys = ON");
    }
  }

  private void run() throws SQLException {
    execute("BEGIN IMMEDIATE");
    boolean done = false;
    boolean shrinks = false;
    try {
      int version = refuseOther(connection);
      shrinks = version > 0;
      for (int next = version + 1; next <= NEWEST; next++) {
        step(next);
      }
      execute("PRAGMA user_version = " + NEWEST);
      execute("PRAGMA application_id = " + APPLICATION);
      execute("COMMIT");
      done = true;
    } finally {
      if (!done) {
        execute("ROLLBACK");
      }
    }
    if (shrinks) {
      execute("VACUUM");
    }
  }

  private void step(int version) throws SQLException {
    if (version < 3) {
      execute(script(version));
      return;
    }
    OldTables old = new OldTables(connection);
    old.setAside();
    execute(OldTables.cellColumns(script(version)));
    old.unpack();
    old.drop();
    execute(ViewSheet.script());
    Settled.all(connection);
    refuseLoose();
  }

  private void refuseLoose() {
    long loose = Sql.number(connection, "SELECT count(*) FROM pragma_foreign_key_check");
    if (loose > 0) {
      throw new Refusal(
          "The archive cannot be carried over to this version: "
              + loose
              + " rows refer to rows that are missing; it was left as it is: restore it from a"
              + " backup.");
    }
  }

  private void execute(String sql) throws SQLException {
    try (Statement statement = connection.createStatement()) {
      statement.executeUpdate(sql);
    }
  }

  /**
   * The version of a database that is an archive or is empty.
   *
   * @throws Refusal when it is neither, or newer than this program
   */
  public static int refuseOther(Connection connection) {
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

  /**
   * The version of an archive that cannot be written, and so cannot be carried over.
   *
   * @throws Refusal when it is older, too
   */
  public static void refuseOtherForReading(Connection connection) {
    int version = refuseOther(connection);
    if (version < NEWEST) {
      throw new Refusal(
          "This archive was written by an older Griplore (archive version "
              + version
              + ") and cannot be carried over in a read-only folder: open it once where it can be"
              + " written.");
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
