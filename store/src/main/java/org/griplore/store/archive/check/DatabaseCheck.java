package org.griplore.store.archive.check;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.LongConsumer;
import java.util.stream.Collectors;
import org.griplore.store.archive.database.ArchiveFailure;
import org.griplore.store.archive.database.Sql;
import org.griplore.store.vocabulary.Refusal;

/** Verifies an archive's database: its pages, its references and the cells of current figures. */
public final class DatabaseCheck {
  private static final int ROWS_A_REPORT = 50_000;
  private static final int MOST_TOLD = 10;
  private static final List<String> PARTS = List.of("value", "spread", "runs", "place");

  private final Connection connection;
  private final List<String> problems = new ArrayList<>();

  private DatabaseCheck(Connection connection) {
    this.connection = connection;
  }

  /** Sentences on what SQLite finds wrong with its pages or indexes; empty when nothing. */
  public static List<String> pages(Connection connection) {
    return on(
        connection,
        check -> {
          for (String told :
              Sql.list(check.connection, "PRAGMA integrity_check(10)", row -> row.getString(1))) {
            if (!told.equals("ok")) {
              check.problems.add("archive.db is damaged: " + told + ".");
            }
          }
        });
  }

  /** Sentences on rows that refer to a row that is not there; empty when there are none. */
  public static List<String> references(Connection connection) {
    return on(
        connection,
        check ->
            Sql.list(
                    check.connection,
                    "SELECT \"table\", \"parent\", count(*) FROM pragma_foreign_key_check"
                        + " GROUP BY 1, 2",
                    row ->
                        row.getLong(3)
                            + " rows of "
                            + row.getString(1)
                            + " refer to a missing "
                            + row.getString(2)
                            + ".")
                .forEach(check.problems::add));
  }

  /** Sentences on current figures of which a cell cannot be read; empty when there are none. */
  public static List<String> cells(Connection connection, LongConsumer done) {
    return on(connection, check -> check.readCells(done));
  }

  private interface Step {
    void run(DatabaseCheck check) throws SQLException;
  }

  private static List<String> on(Connection connection, Step step) {
    DatabaseCheck check = new DatabaseCheck(connection);
    try {
      step.run(check);
      return check.problems;
    } catch (SQLException e) {
      return List.of(ArchiveFailure.of(e).sentence());
    } catch (Refusal e) {
      return List.of(e.sentence());
    }
  }

  private void readCells(LongConsumer done) throws SQLException {
    long read = 0;
    long bad = 0;
    try (PreparedStatement statement =
            connection.prepareStatement(
                "SELECT x.id, r.file, "
                    + PARTS.stream()
                        .map(DatabaseCheck::misplaced)
                        .collect(Collectors.joining(" OR "))
                    + " FROM revision r JOIN report p ON p.revision_id = r.id"
                    + " JOIN entry e ON e.report_id = p.id JOIN result x ON x.entry_id = e.id"
                    + " WHERE r.superseded_by_id IS NULL");
        ResultSet rows = statement.executeQuery()) {
      while (rows.next()) {
        if (rows.getInt(3) != 0 && bad++ < MOST_TOLD) {
          problems.add(
              "A figure of "
                  + rows.getString(2)
                  + " (number "
                  + rows.getLong(1)
                  + ") does not say where it stands.");
        }
        if (++read % ROWS_A_REPORT == 0) {
          done.accept(read);
        }
      }
    }
    if (bad > MOST_TOLD) {
      problems.add("And " + (bad - MOST_TOLD) + " more figures like these.");
    }
    done.accept(read);
  }

  /** Whether a part's cell is there in part only, or stands nowhere; 1 or 0, never NULL. */
  private static String misplaced(String part) {
    return ("((x.%1$s_sheet_id IS NULL) + (x.%1$s_row IS NULL) + (x.%1$s_column IS NULL)"
            + " + (x.%1$s_text IS NULL) NOT IN (0, 4)"
            + " OR coalesce(x.%1$s_row < 1 OR x.%1$s_column < 1, 0)"
            + " OR (x.%1$s_sheet_id IS NOT NULL AND NOT EXISTS"
            + " (SELECT 1 FROM sheet h WHERE h.id = x.%1$s_sheet_id)))")
        .formatted(part);
  }
}
