package org.griplore.store.archive;

import java.sql.Connection;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.griplore.store.vocabulary.SeasonClass;
import org.griplore.store.vocabulary.TestDate;

/** Reads the models: where several current lineage tables speak of one, the newest word counts. */
final class ModelReader {
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
      String aliases) {}

  static List<ModelRecord> all(Connection connection) {
    Map<Integer, ModelRecord> models = new LinkedHashMap<>();
    Sql.list(
            connection,
            "SELECT id, name FROM model WHERE same_as IS NULL ORDER BY name",
            row ->
                new ModelRecord(
                    row.getInt(1),
                    row.getString(2),
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    List.of()))
        .forEach(model -> models.put(model.id(), model));
    lineage(connection)
        .forEach(line -> models.computeIfPresent(line.model(), (id, model) -> with(model, line)));
    Sql.list(
            connection,
            "SELECT same_as, name FROM model WHERE same_as IS NOT NULL ORDER BY id",
            row -> Map.entry(row.getInt(1), row.getString(2)))
        .forEach(
            alias ->
                models.computeIfPresent(
                    alias.getKey(), (id, model) -> withAliases(model, alias.getValue())));
    return List.copyOf(models.values());
  }

  private static List<LineageLine> lineage(Connection connection) {
    return Sql.list(
        connection,
        "SELECT coalesce(m.same_as, m.id) AS model, l.maker, l.line, l.generation, l.launched,"
            + " l.season, l.segment, coalesce(f.same_as, f.id) AS follows, l.aliases"
            + " FROM lineage l JOIN model m ON m.id = l.model"
            + " JOIN revision r ON r.id = l.revision AND r.superseded_by IS NULL"
            + " LEFT JOIN model f ON f.id = l.follows ORDER BY l.id",
        row ->
            new LineageLine(
                row.getInt("model"),
                row.getString("maker"),
                row.getString("line"),
                row.getString("generation"),
                row.getString("launched"),
                row.getString("season"),
                row.getString("segment"),
                Sql.integer(row, "follows"),
                row.getString("aliases")));
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
    return line.aliases().isEmpty() ? told : withAliases(told, line.aliases().split("\\|"));
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

  static SeasonClass season(String stored) {
    return stored == null ? null : SeasonClass.valueOf(stored);
  }
}
