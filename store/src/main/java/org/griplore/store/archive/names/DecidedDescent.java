package org.griplore.store.archive.names;

import java.sql.Connection;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.griplore.store.archive.ModelRecord;
import org.griplore.store.archive.database.Sql;
import org.griplore.store.vocabulary.Decision;
import org.griplore.store.vocabulary.Decision.Topic;
import org.griplore.store.vocabulary.NameKey;
import org.griplore.store.vocabulary.SeasonClass;
import org.griplore.store.vocabulary.TestDate;

/** What the user decided on models' descent: it counts more than what sources say. */
public final class DecidedDescent {
  /** Nothing is decided. */
  public static final DecidedDescent NOTHING = new DecidedDescent();

  private final Map<String, Integer> modelsByKey = new HashMap<>();
  private final Map<Integer, Map<Topic, Decision>> decisions = new HashMap<>();

  private DecidedDescent() {}

  public static DecidedDescent of(Connection connection) {
    DecidedDescent descent = new DecidedDescent();
    List<Decision> standing = Decisions.standing(connection);
    if (standing.stream().anyMatch(decision -> decision.topic() != Topic.MEANING)) {
      Sql.list(
          connection,
          "SELECT name, coalesce(same_as_id, id) FROM model ORDER BY id",
          row -> descent.modelsByKey.putIfAbsent(NameKey.of(row.getString(1)), row.getInt(2)));
      standing.forEach(descent::take);
    }
    return descent;
  }

  /** A model or predecessor that no source has named yet cannot be shown. */
  private void take(Decision decision) {
    Integer model = modelsByKey.get(decision.key());
    boolean followsUnknown =
        decision.topic() == Topic.FOLLOWS
            && decision.value() != null
            && !modelsByKey.containsKey(NameKey.of(decision.value()));
    if (model != null && !followsUnknown) {
      decisions
          .computeIfAbsent(model, id -> new EnumMap<>(Topic.class))
          .put(decision.topic(), decision);
    }
  }

  public ModelRecord of(ModelRecord model) {
    Map<Topic, Decision> decided = decisions.get(model.id());
    return decided == null
        ? model
        : new ModelRecord(
            model.id(),
            model.name(),
            decided(decided.get(Topic.MAKER), Function.identity(), model.maker()),
            decided(decided.get(Topic.LINE), Function.identity(), model.line()),
            decided(decided.get(Topic.GENERATION), Function.identity(), model.generation()),
            decided(decided.get(Topic.LAUNCHED), TestDate::new, model.launched()),
            decided(
                decided.get(Topic.SEASON),
                key -> SeasonClass.ofKey(key).orElse(null),
                model.season()),
            decided(decided.get(Topic.SEGMENT), Function.identity(), model.segment()),
            decided(
                decided.get(Topic.FOLLOWS),
                name -> modelsByKey.get(NameKey.of(name)),
                model.follows()),
            model.aliases());
  }

  private static <T> T decided(Decision decision, Function<String, T> read, T told) {
    if (decision == null) {
      return told;
    }
    return decision.value() == null ? null : read.apply(decision.value());
  }
}
