package org.griplore.store.archive;

import java.sql.Connection;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Says in sentences how one reading of a source differs from the one before. */
final class RevisionChanges {
  /** Beyond this many, the rest is counted. */
  private static final int SENTENCES = 50;

  private RevisionChanges() {}

  private record Key(String test, String model, String size, String discipline) {
    @Override
    public String toString() {
      String of = model + (size == null ? "" : " in " + size);
      return of + ", " + discipline + ", test " + test;
    }
  }

  private record Figure(Double value, String unit, Integer place) {
    @Override
    public String toString() {
      String told = value == null ? "no value" : (value + " " + unit).strip();
      return place == null ? told : told + ", place " + place;
    }
  }

  static List<String> sentences(Connection connection, int older, int newer) {
    Map<Key, Figure> before = figures(connection, older);
    Map<Key, Figure> after = figures(connection, newer);
    List<String> sentences = new ArrayList<>();
    before.forEach(
        (key, figure) -> {
          Figure now = after.get(key);
          if (now == null) {
            sentences.add("Gone: " + key + " (was " + figure + ").");
          } else if (!Objects.equals(figure, now)) {
            sentences.add("Changed: " + key + ": " + figure + " became " + now + ".");
          }
        });
    after.forEach(
        (key, figure) -> {
          if (!before.containsKey(key)) {
            sentences.add("New: " + key + ": " + figure + ".");
          }
        });
    addCount(
        sentences, "notes", count(connection, "note", older), count(connection, "note", newer));
    if (sentences.isEmpty()) {
      sentences.add("The content changed, but no result or note that is read from it.");
    }
    if (sentences.size() <= SENTENCES) {
      return sentences;
    }
    List<String> first = new ArrayList<>(sentences.subList(0, SENTENCES));
    first.add("And " + (sentences.size() - SENTENCES) + " more changes.");
    return first;
  }

  private static Map<Key, Figure> figures(Connection connection, int revision) {
    Map<Key, Figure> figures = new LinkedHashMap<>();
    Sql.list(
            connection,
            "SELECT t.key, m.name, e.size, d.key, x.value, u.symbol, x.place FROM report p"
                + " JOIN test t ON t.id = p.test JOIN entry e ON e.report = p.id"
                + " JOIN model m ON m.id = e.model JOIN result x ON x.entry = e.id"
                + " JOIN discipline d ON d.id = x.discipline LEFT JOIN unit u ON u.id = x.unit"
                + " WHERE p.revision = ? ORDER BY x.id",
            row ->
                Map.entry(
                    new Key(row.getString(1), row.getString(2), row.getString(3), row.getString(4)),
                    new Figure(
                        row.getObject(5) == null ? null : row.getDouble(5),
                        row.getString(6),
                        row.getObject(7) == null ? null : row.getInt(7))),
            revision)
        .forEach(entry -> figures.put(entry.getKey(), entry.getValue()));
    return figures;
  }

  private static long count(Connection connection, String table, int revision) {
    return Sql.number(
        connection,
        "SELECT count(*) FROM "
            + table
            + " x JOIN report p ON p.id = x.report WHERE p.revision = ?",
        revision);
  }

  private static void addCount(List<String> sentences, String what, long before, long after) {
    if (before != after) {
      sentences.add("The number of " + what + " went from " + before + " to " + after + ".");
    }
  }
}
