package org.griplore.store.archive.writing;

import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.griplore.store.archive.database.ArchiveFailure;
import org.griplore.store.archive.database.Sql;
import org.griplore.store.vocabulary.Phrase;

/**
 * Says how one revision of a source differs from the one before. Both revisions' figures come
 * sorted by what they are figures of, and are compared side by side: memory does not grow with
 * their number.
 */
public final class RevisionChanges {
  /** Beyond this many, the rest is counted. */
  private static final int LISTED = 50;

  private final List<Phrase> changes = new ArrayList<>();
  private long more;

  private RevisionChanges() {}

  public static List<Phrase> between(Connection connection, int older, int newer) {
    RevisionChanges told = new RevisionChanges();
    try (FigureCursor before = new FigureCursor(connection, older);
        FigureCursor after = new FigureCursor(connection, newer)) {
      told.compare(before, after);
    } catch (SQLException e) {
      throw ArchiveFailure.of(e);
    }
    told.addCount("notes", count(connection, "note", older), count(connection, "note", newer));
    told.addCount("runs", count(connection, "run", older), count(connection, "run", newer));
    return told.told();
  }

  private void compare(FigureCursor before, FigureCursor after) throws SQLException {
    FigureCursor.Figure old = before.next();
    FigureCursor.Figure now = after.next();
    while (old != null || now != null) {
      int order = old == null ? 1 : now == null ? -1 : order(old, now);
      if (order < 0) {
        add("figure-gone", before, old, old.toString());
      } else if (order > 0) {
        add("figure-new", after, now, now.toString());
      } else if (!sameFigure(old, now)) {
        add("figure-changed", after, now, old.toString(), now.toString());
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

  /** The order of the database: numbers, then the size by its bytes, none first, then numbers. */
  private static int order(FigureCursor.Figure old, FigureCursor.Figure now) {
    if (old.test() != now.test()) {
      return Integer.compare(old.test(), now.test());
    }
    if (old.model() != now.model()) {
      return Integer.compare(old.model(), now.model());
    }
    int size = Arrays.compareUnsigned(bytes(old.size()), bytes(now.size()));
    return size != 0 ? size : Arrays.compare(old.rest(), now.rest());
  }

  private static byte[] bytes(String text) {
    return text == null ? null : text.getBytes(StandardCharsets.UTF_8);
  }

  private void add(
      String code, FigureCursor cursor, FigureCursor.Figure figure, String... figures) {
    List<String> parameters = new ArrayList<>(cursor.of(figure));
    parameters.addAll(List.of(figures));
    add(new Phrase(code, parameters));
  }

  private void add(Phrase change) {
    if (changes.size() < LISTED) {
      changes.add(change);
    } else {
      more++;
    }
  }

  private void addCount(String what, long before, long after) {
    if (before != after) {
      add(Phrase.of("count-changed", what, Long.toString(before), Long.toString(after)));
    }
  }

  private List<Phrase> told() {
    if (changes.isEmpty()) {
      changes.add(Phrase.of("content-changed"));
    }
    if (more > 0) {
      changes.add(Phrase.of("more-changes", Long.toString(more)));
    }
    return changes;
  }

  private static long count(Connection connection, String table, int revision) {
    return Sql.number(
        connection,
        "SELECT count(*) FROM "
            + table
            + " x JOIN report p ON p.id = x.report_id WHERE p.revision_id = ?",
        revision);
  }
}
