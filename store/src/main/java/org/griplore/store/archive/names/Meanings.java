package org.griplore.store.archive.names;

import java.sql.Connection;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.griplore.store.archive.NameTaken;
import org.griplore.store.archive.database.Sql;
import org.griplore.store.vocabulary.Decision;
import org.griplore.store.vocabulary.NameKey;

/**
 * Which model each name means, from what the user decided and what revisions took it for. A
 * decision counts more than any revision, a lineage table's word more than a newer revision. An
 * assumption does not hold for a name that a lineage table lists or that a decision names as a
 * model, nor where the name stands in one test with another name of the same model: two names in
 * one test are two tyres, whichever of them was read first. What would lead in a circle is left
 * out, assumptions first.
 */
public final class Meanings {
  /** The tests that hold names which were assumed to be misspelt, each with all its names. */
  private static final String NAMES_BESIDE_ASSUMED =
      """
      WITH entered AS (
        SELECT p.test_id, e.model_id FROM entry e
        JOIN report p ON p.id = e.report_id
        JOIN revision r ON r.id = p.revision_id AND r.superseded_by_id IS NULL)
      SELECT DISTINCT test_id, model_id FROM entered
      WHERE test_id IN (
        SELECT test_id FROM entered
        WHERE model_id IN (SELECT model_id FROM name_taken WHERE how = 'assumed'))
      """;

  private final Connection connection;
  private final Map<Integer, String> names = new LinkedHashMap<>();
  private final Map<String, List<Integer>> byKey = new HashMap<>();
  private final Map<Integer, Told> told = new LinkedHashMap<>();
  private final Map<Integer, Meaning> next = new HashMap<>();

  private record Told(int name, int means, int revision, NameTaken how) {
    Meaning meaning() {
      return new Meaning(means, revision);
    }

    boolean assumed() {
      return how == NameTaken.ASSUMED;
    }
  }

  private Meanings(Connection connection) {
    this.connection = connection;
    Sql.list(
        connection,
        "SELECT model_id, means_id, revision_id, how FROM name_taken"
            + " ORDER BY how = 'told', revision_id, model_id",
        row ->
            told.put(
                row.getInt(1),
                new Told(
                    row.getInt(1),
                    row.getInt(2),
                    row.getInt(3),
                    NameTaken.ofWord(row.getString(4)))));
  }

  /**
   * Brings {@code model.same_as_id} up to date within the caller's transaction.
   *
   * @return whether any name changed its meaning
   */
  public static boolean settle(Connection connection) {
    List<Decision> decisions = Decisions.standing(connection, Decision.Topic.MEANING);
    Meanings meanings = new Meanings(connection);
    Map<Integer, Meaning> before = Meaning.holding(connection);
    return (!meanings.told.isEmpty() || !decisions.isEmpty() || !before.isEmpty())
        && meanings.write(before, meanings.of(decisions));
  }

  /** What names mean to the revisions alone, as if nothing had been decided. */
  public static Map<Integer, Meaning> asRead(Connection connection) {
    return new Meanings(connection).of(List.of());
  }

  private Map<Integer, Meaning> of(List<Decision> decisions) {
    Sql.list(
        connection,
        "SELECT id, name FROM model ORDER BY id",
        row -> {
          names.put(row.getInt(1), row.getString(2));
          return byKey
              .computeIfAbsent(NameKey.of(row.getString(2)), key -> new ArrayList<>())
              .add(row.getInt(1));
        });
    Set<Integer> models = NameReader.listed(connection);
    Set<Integer> decided = new HashSet<>();
    for (Decision decision : decisions) {
      List<Integer> written = byKey.getOrDefault(decision.key(), List.of());
      decided.addAll(written);
      Integer model = decision.value() == null ? null : model(decision.value());
      if (model != null) {
        models.add(model);
        written.forEach(name -> link(name, new Meaning(model, null)));
      }
    }
    told.values().stream()
        .filter(t -> !t.assumed() && (!decided.contains(t.name()) || sameKey(t)))
        .forEach(t -> link(t.name(), t.meaning()));
    List<Told> assumed =
        told.values().stream()
            .filter(t -> t.assumed() && !decided.contains(t.name()) && !models.contains(t.name()))
            .toList();
    assumed.forEach(t -> link(t.name(), t.meaning()));
    part(assumed);
    Map<Integer, Meaning> meanings = new HashMap<>();
    next.forEach((name, step) -> meanings.put(name, new Meaning(model(name), step.revision())));
    return meanings;
  }

  /** Takes assumptions back of names that stand in a test with another name of their model. */
  private void part(List<Told> assumed) {
    Set<Integer> open = new HashSet<>();
    assumed.stream()
        .filter(t -> t.meaning().equals(next.get(t.name())))
        .forEach(t -> open.add(t.name()));
    if (open.isEmpty()) {
      return;
    }
    Map<List<Integer>, Map<String, Integer>> fields = new HashMap<>();
    Sql.list(
        connection,
        NAMES_BESIDE_ASSUMED,
        row ->
            fields
                .computeIfAbsent(
                    List.of(row.getInt(1), model(row.getInt(2))), field -> new HashMap<>(2))
                .put(NameKey.of(names.get(row.getInt(2))), row.getInt(2)));
    Set<Integer> parted = new HashSet<>();
    fields.values().stream()
        .filter(field -> field.size() > 1)
        .forEach(field -> parted.addAll(field.values()));
    parted.retainAll(open);
    next.keySet().removeAll(parted);
  }

  /** Another spelling of a decided name goes the way of that name. */
  private boolean sameKey(Told told) {
    return NameKey.of(names.get(told.name())).equals(NameKey.of(names.get(told.means())));
  }

  /** The model with this name; with several spellings, the one the name is written as. */
  private Integer model(String name) {
    List<Integer> written = byKey.getOrDefault(NameKey.of(name), List.of());
    return written.stream()
        .filter(id -> names.get(id).equals(name))
        .findFirst()
        .or(() -> written.stream().findFirst())
        .orElse(null);
  }

  private void link(int name, Meaning meaning) {
    if (!next.containsKey(name) && model(meaning.model()) != name) {
      next.put(name, meaning);
    }
  }

  private int model(int name) {
    int model = name;
    for (Meaning step = next.get(model); step != null; step = next.get(model)) {
      model = step.model();
    }
    return model;
  }

  private boolean write(Map<Integer, Meaning> before, Map<Integer, Meaning> now) {
    long stamp = Sql.number(connection, "SELECT stamp + 1 FROM archive_state");
    Set<Integer> renamed = new HashSet<>();
    for (int name : names.keySet()) {
      Meaning was = before.get(name);
      Meaning is = now.get(name);
      if (!Objects.equals(was, is)) {
        Sql.execute(
            connection,
            "UPDATE model SET same_as_id = ?, same_as_revision_id = ? WHERE id = ?",
            is == null ? null : is.model(),
            is == null ? null : is.revision(),
            name);
        renamed.add(name);
        renamed.add(is == null ? name : is.model());
        renamed.add(was == null ? name : was.model());
      }
    }
    renamed.forEach(
        name ->
            Sql.execute(connection, "UPDATE model SET renamed_at = ? WHERE id = ?", stamp, name));
    return !renamed.isEmpty();
  }
}
