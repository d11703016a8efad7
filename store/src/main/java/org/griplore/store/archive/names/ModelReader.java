package org.griplore.store.archive.names;

import java.sql.Connection;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.griplore.store.archive.ModelRecord;
import org.griplore.store.archive.database.Sql;
import org.griplore.store.vocabulary.SeasonClass;
import org.griplore.store.vocabulary.TestDate;

/**
 * Reads the models: where several current lineage tables speak of one, the newest word counts, and
 * what the user decided counts more than any.
 */
public final class ModelReader {
  private ModelReader() {}

  private record LineageLine(
      int model,
      String maker,
      String line,
      String generation,
      String launched,
      String season,
      String segment,
      Integer follows,
      List<String> aliases) {}

  public static List<ModelRecord> all(Connection connection) {
    return models(connection, Meaning.holding(connection), DecidedDescent.of(connection));
  }

  /** The models as sources alone tell of them, as if nothing had been decided. */
  public static List<ModelRecord> asRead(Connection connection) {
    return models(connection, Meanings.asRead(connection), DecidedDescent.NOTHING);
  }

  private static List<ModelRecord> models(
      Connection connection, Map<Integer, Meaning> meanings, DecidedDescent decided) {
    Map<Integer, ModelRecord> models = new LinkedHashMap<>();
    Map<Integer, String> others = new TreeMap<>();
    Sql.list(
        connection,
        "SELECT id, name FROM model ORDER BY name",
        row ->
            meanings.containsKey(row.getInt(1))
                ? others.put(row.getInt(1), row.getString(2))
                : models.put(row.getInt(1), named(row.getInt(1), row.getString(2))));
    lineage(connection, meanings)
        .forEach(line -> models.computeIfPresent(line.model(), (id, model) -> with(model, line)));
    models.replaceAll((id, model) -> decided.of(model));
    Set<List<Integer>> told = told(connection);
    others.forEach(
        (name, written) -> {
          Meaning meaning = meanings.get(name);
          if (meaning.revision() == null || told.contains(List.of(name, meaning.revision()))) {
            models.computeIfPresent(meaning.model(), (id, model) -> withAliases(model, written));
          }
        });
    return List.copyOf(models.values());
  }

  private static ModelRecord named(int id, String name) {
    return new ModelRecord(id, name, null, null, null, null, null, null, null, List.of());
  }

  /** Names that a lineage table settled, with the revision that did. */
  private static Set<List<Integer>> told(Connection connection) {
    return new HashSet<>(
        Sql.list(
            connection,
            "SELECT model_id, revision_id FROM name_taken WHERE how = 'told'",
            row -> List.of(row.getInt(1), row.getInt(2))));
  }

  private static List<LineageLine> lineage(Connection connection, Map<Integer, Meaning> meanings) {
    Map<Integer, List<String>> aliases = new HashMap<>();
    Sql.forEach(
        connection,
        "SELECT lineage_id, name FROM lineage_alias ORDER BY lineage_id, position",
        row ->
            aliases
                .computeIfAbsent(row.getInt(1), lineage -> new ArrayList<>())
                .add(row.getString(2)));
    return Sql.list(
        connection,
        "SELECT l.* FROM lineage l"
            + " JOIN revision r ON r.id = l.revision_id AND r.superseded_by_id IS NULL ORDER BY l.id",
        row ->
            new LineageLine(
                meant(row.getInt("model_id"), meanings),
                row.getString("maker"),
                row.getString("line"),
                row.getString("generation"),
                row.getString("launched"),
                row.getString("season"),
                row.getString("segment"),
                meant(Sql.integer(row, "follows_id"), meanings),
                aliases.getOrDefault(row.getInt("id"), List.of())));
  }

  private static Integer meant(Integer name, Map<Integer, Meaning> meanings) {
    Meaning meaning = name == null ? null : meanings.get(name);
    return meaning == null ? name : (Integer) meaning.model();
  }

  private static ModelRecord with(ModelRecord model, LineageLine line) {
    ModelRecord told =
        new ModelRecord(
            model.id(),
            model.name(),
            newer(line.maker(), model.maker()),
            newer(line.line(), model.line()),
            newer(line.generation(), model.generation()),
            newer(line.launched() == null ? null : new TestDate(line.launched()), model.launched()),
            newer(season(line.season()), model.season()),
            newer(line.segment(), model.segment()),
            newer(line.follows(), model.follows()),
            model.aliases());
    return line.aliases().isEmpty()
        ? told
        : withAliases(told, line.aliases().toArray(String[]::new));
  }

  private static ModelRecord withAliases(ModelRecord model, String... more) {
    List<String> aliases = new ArrayList<>(model.aliases());
    for (String alias : more) {
      if (!aliases.contains(alias)) {
        aliases.add(alias);
      }
    }
    return new ModelRecord(
        model.id(),
        model.name(),
        model.maker(),
        model.line(),
        model.generation(),
        model.launched(),
        model.season(),
        model.segment(),
        model.follows(),
        List.copyOf(aliases));
  }

  private static <T> T newer(T told, T known) {
    return told == null ? known : told;
  }

  public static SeasonClass season(String stored) {
    return stored == null ? null : SeasonClass.ofKey(stored).orElseThrow();
  }
}
