package org.griplore.store.archive.names;

import java.sql.Connection;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.griplore.store.archive.NameRecord;
import org.griplore.store.archive.NameRecord.Standing;
import org.griplore.store.archive.NameUse;
import org.griplore.store.archive.database.CellColumns;
import org.griplore.store.archive.database.Sql;
import org.griplore.store.vocabulary.Cell;
import org.griplore.store.vocabulary.Decision;
import org.griplore.store.vocabulary.NameKey;

/** Reads names, what they mean and where they are used. */
public final class NameReader {
  private static final String CURRENT =
      " JOIN report p ON p.id = x.report_id"
          + " JOIN revision r ON r.id = p.revision_id AND r.superseded_by_id IS NULL"
          + " JOIN model m ON m.id = x.model_id";

  private NameReader() {}

  public static List<NameRecord> all(Connection connection) {
    Map<String, Decision> decisions = new HashMap<>();
    Decisions.standing(connection, Decision.Topic.MEANING)
        .forEach(decision -> decisions.put(decision.key(), decision));
    return names(connection, Meaning.holding(connection), decisions, used(connection));
  }

  /** The names as sources alone use them, as if nothing had been decided. */
  public static List<NameRecord> asRead(Connection connection) {
    return names(connection, Meanings.asRead(connection), Map.of(), null);
  }

  private static List<NameRecord> names(
      Connection connection,
      Map<Integer, Meaning> meanings,
      Map<String, Decision> decisions,
      Set<Integer> used) {
    Set<Integer> listed = listed(connection);
    Map<List<Integer>, String> how = new HashMap<>();
    Sql.list(
        connection,
        "SELECT model_id, revision_id, how FROM name_taken",
        row -> how.put(List.of(row.getInt(1), row.getInt(2)), row.getString(3)));
    Map<Integer, String> names = new LinkedHashMap<>();
    Sql.list(
        connection,
        "SELECT id, name FROM model ORDER BY name",
        row -> names.put(row.getInt(1), row.getString(2)));
    List<NameRecord> records = new ArrayList<>();
    names.forEach(
        (id, name) -> {
          Meaning meaning = meanings.get(id);
          Decision decision = decisions.isEmpty() ? null : decisions.get(NameKey.of(name));
          String read =
              meaning == null || meaning.revision() == null
                  ? null
                  : how.get(List.of(id, meaning.revision()));
          Standing standing = standing(decision, read, listed.contains(id));
          boolean idle = used != null && !used.contains(id);
          records.add(
              new NameRecord(
                  name,
                  meaning == null ? name : names.get(meaning.model()),
                  idle && NameRecord.isOpen(standing) ? Standing.UNUSED : standing,
                  decision));
        });
    return records;
  }

  /** Names under which current reports tell of tyres, each looked up until one is found. */
  private static Set<Integer> used(Connection connection) {
    String current =
        " JOIN report p ON p.id = x.report_id"
            + " JOIN revision r ON r.id = p.revision_id AND r.superseded_by_id IS NULL"
            + " WHERE x.model_id = m.id";
    return new HashSet<>(
        Sql.list(
            connection,
            "SELECT m.id FROM model m WHERE EXISTS (SELECT 1 FROM entry x"
                + current
                + ") OR EXISTS (SELECT 1 FROM note x"
                + current
                + ") OR EXISTS (SELECT 1 FROM run x"
                + current
                + " AND x.role = 'candidate')",
            row -> row.getInt(1)));
  }

  /** Names that current lineage tables list. */
  public static Set<Integer> listed(Connection connection) {
    return new HashSet<>(
        Sql.list(
            connection,
            "SELECT DISTINCT l.model_id FROM lineage l"
                + " JOIN revision r ON r.id = l.revision_id AND r.superseded_by_id IS NULL",
            row -> row.getInt(1)));
  }

  private static Standing standing(Decision decision, String how, boolean listed) {
    if (decision != null) {
      return decision.verdict() == Decision.Verdict.IS ? Standing.SAME : Standing.OWN;
    }
    if (how != null) {
      return Standing.valueOf(how.toUpperCase(Locale.ROOT));
    }
    return listed ? Standing.LISTED : Standing.MET;
  }

  /** Tests with an entry that is written so. */
  public static Map<String, Set<String>> tests(Connection connection, Set<String> names) {
    Map<String, Set<String>> tests = new HashMap<>();
    for (String name : names) {
      tests.put(
          name,
          new HashSet<>(
              Sql.list(
                  connection,
                  "SELECT DISTINCT t.key FROM model n"
                      + " JOIN entry e ON e.model_id = n.id JOIN report p ON p.id = e.report_id"
                      + " JOIN revision r ON r.id = p.revision_id AND r.superseded_by_id IS NULL"
                      + " JOIN test t ON t.id = p.test_id WHERE n.name = ?",
                  row -> row.getString(1),
                  name)));
    }
    return tests;
  }

  private static final class Counts {
    int entries;
    int tests;
    int notes;
    String file;
    Cell at;
  }

  /** Uses of names by current reports; a reference set is no entry and does not count. */
  public static List<NameUse> uses(Connection connection) {
    CellColumns cells = CellColumns.of(connection);
    Map<String, Counts> uses = new LinkedHashMap<>();
    Sql.list(
        connection,
        "SELECT m.name, count(*), count(DISTINCT p.test_id), r.file, x.*, min(x.id)"
            + " FROM entry x"
            + CURRENT
            + " GROUP BY x.model_id ORDER BY m.name",
        row -> {
          Counts counts = uses.computeIfAbsent(row.getString(1), name -> new Counts());
          counts.entries = row.getInt(2);
          counts.tests = row.getInt(3);
          counts.file = row.getString(4);
          counts.at = cells.read(row);
          return counts;
        });
    for (String table : List.of("note", "run")) {
      Sql.list(
          connection,
          "SELECT m.name, count(*), count(DISTINCT p.test_id), r.file, min(x.id) FROM "
              + table
              + " x"
              + CURRENT
              + (table.equals("run") ? " WHERE x.role = 'candidate'" : "")
              + " GROUP BY x.model_id ORDER BY m.name",
          row -> {
            Counts counts = uses.computeIfAbsent(row.getString(1), name -> new Counts());
            counts.notes = table.equals("note") ? row.getInt(2) : counts.notes;
            counts.tests = Math.max(counts.tests, row.getInt(3));
            counts.file = counts.file == null ? row.getString(4) : counts.file;
            return counts;
          });
    }
    return uses.entrySet().stream()
        .map(
            use -> {
              Counts counts = use.getValue();
              return new NameUse(
                  use.getKey(), counts.entries, counts.tests, counts.notes, counts.file, counts.at);
            })
        .toList();
  }
}
