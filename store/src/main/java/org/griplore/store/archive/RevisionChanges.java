package org.griplore.store.archive;

import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/**
 * Says in sentences how one reading of a source differs from the one before. Both readings' figures
 * come sorted by what they are figures of, and are compared side by side: memory does not grow with
 * their number.
 */
final class RevisionChanges {
  /** Beyond this many, the rest is counted. */
  private static final int SENTENCES = 50;

  private final List<String> sentences = new ArrayList<>();
  private long more;

  private RevisionChanges() {}

  static List<String> sentences(Connection connection, int older, int newer) {
    RevisionChanges changes = new RevisionChanges();
    try (FigureCursor before = new FigureCursor(connection, older);
        FigureCursor after = new FigureCursor(connection, newer)) {
      changes.compare(before, after);
    } catch (SQLException e) {
      throw ArchiveFailure.of(e);
    }
    changes.addCount("notes", count(connection, "note", older), count(connection, "note", newer));
    changes.addCount("runs", count(connection, "run", older), count(connection, "run", newer));
    return changes.told();
  }

  private void compare(FigureCursor before, FigureCursor after) throws SQLException {
    FigureCursor.Figure old = before.next();
    FigureCursor.Figure now = after.next();
    while (old != null || now != null) {
      int order = old == null ? 1 : now == null ? -1 : order(old, now);
      if (order < 0) {
        add("Gone: " + before.of(old) + " (was " + old + ").");
      } else if (order > 0) {
        add("New: " + after.of(now) + ": " + now + ".");
      } else if (!sameFigure(old, now)) {
        add("Changed: " + after.of(now) + ": " + old + " became " + now + ".");
      }
      old = order <= 0 ? before.next() : old;
      now = order >= 0 ? after.next() : now;
    }
  }

  private static boolean sameFigure(FigureCursor.Figure old, FigureCursor.Figure now) {
    return Objects.equals(old.value(), now.value())
        && Objects.equals(old.unit(), now.unit())
        && Objects.equals(old.place(), now.place());
  }

  /** The order of the database: numbers, then the size by its bytes, none first. */
  private static int order(FigureCursor.Figure old, FigureCursor.Figure now) {
    if (old.test() != now.test()) {
      return Integer.compare(old.test(), now.test());
    }
    if (old.model() != now.model()) {
      return Integer.compare(old.model(), now.model());
    }
    int size = Arrays.compareUnsigned(bytes(old.size()), bytes(now.size()));
    return size != 0 ? size : Integer.compare(old.discipline(), now.discipline());
  }

  private static byte[] bytes(String text) {
    return text == null ? null : text.getBytes(StandardCharsets.UTF_8);
  }

  private void add(String sentence) {
    if (sentences.size() < SENTENCES) {
      sentences.add(sentence);
    } else {
      more++;
    }
  }

  private void addCount(String what, long before, long after) {
    if (before != after) {
      add("The number of " + what + " went from " + before + " to " + after + ".");
    }
  }

  private List<String> told() {
    if (sentences.isEmpty()) {
      sentences.add("The content changed, but no result or note that is read from it.");
    }
    if (more > 0) {
      sentences.add("And " + more + " more changes.");
    }
    return sentences;
  }

  private static long count(Connection connection, String table, int revision) {
    return Sql.number(
        connection,
        "SELECT count(*) FROM "
            + table
            + " x JOIN report p ON p.id = x.report WHERE p.revision = ?",
        revision);
  }
}
