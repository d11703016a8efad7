package org.griplore.store.scenario;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import org.griplore.store.vocabulary.SeasonClass;
import org.griplore.store.vocabulary.SourceKind;

/**
 * Draws the field: mostly the newest generation on sale, some predecessors, a few of other seasons.
 */
final class FieldDraw {
  private final Theme theme;
  private final SourceKind kind;
  private final Random random;
  private final Map<SeasonClass, Map<ScenarioModel, Double>> onSale = new TreeMap<>();
  private final Optional<String> maker;

  FieldDraw(List<ScenarioModel> models, Theme theme, SourceKind kind, int year, Random random) {
    this.theme = theme;
    this.kind = kind;
    this.random = random;
    for (SeasonClass season : SeasonClass.values()) {
      onSale.put(season, weights(models, season, year));
    }
    this.maker = kind == SourceKind.MAKER ? Optional.of(drawMaker()) : Optional.empty();
  }

  /** Whose test it is, for a maker's own test. */
  Optional<String> maker() {
    return maker;
  }

  /**
   * Weights of the models on sale; winter tyres come in autumn and are first tested a year later.
   */
  private Map<ScenarioModel, Double> weights(
      List<ScenarioModel> models, SeasonClass season, int year) {
    int latest = theme == Theme.WINTER ? year - 1 : year;
    Map<ScenarioModel, Double> weights =
        new TreeMap<>(Comparator.comparing(ScenarioModel::fullName));
    for (ScenarioModel model : models) {
      if (model.season() != season || model.launched() > latest) {
        continue;
      }
      long newer =
          models.stream()
              .filter(m -> m.fullLine().equals(model.fullLine()))
              .filter(m -> m.launched() > model.launched() && m.launched() <= latest)
              .count();
      double previous = kind == SourceKind.OWN ? 1.6 : 0.7;
      weights.put(model, newer == 0 ? 3.0 : newer == 1 ? previous : 0.1);
    }
    return weights;
  }

  private String drawMaker() {
    List<String> makers =
        onSale.get(theme.season()).keySet().stream().map(ScenarioModel::maker).distinct().toList();
    return ArchiveSimulator.pick(random, makers);
  }

  /** The models of the field; three only where asked for. */
  List<ScenarioModel> field(boolean ofThree) {
    if (ofThree) {
      return List.copyOf(take(theme.season(), 3, List.of()));
    }
    int wanted =
        switch (theme) {
          case SUMMER -> kind == SourceKind.MAKER ? 4 + random.nextInt(3) : 5 + random.nextInt(7);
          case ALL_SEASON ->
              kind == SourceKind.MAKER ? 4 + random.nextInt(2) : 6 + random.nextInt(3);
          case WINTER -> kind == SourceKind.MAKER ? 4 + random.nextInt(2) : 5 + random.nextInt(4);
        };
    List<ScenarioModel> field = new ArrayList<>();
    maker.flatMap(this::newestOf).ifPresent(field::add);
    field.addAll(take(theme.season(), wanted - field.size(), field));
    if (kind != SourceKind.MAKER) {
      switch (theme) {
        case ALL_SEASON -> {
          field.addAll(take(SeasonClass.SUMMER, 1 + random.nextInt(3), field));
          field.addAll(take(SeasonClass.WINTER, 1 + random.nextInt(3), field));
        }
        case WINTER -> field.addAll(take(SeasonClass.ALL_SEASON, random.nextInt(3), field));
        case SUMMER -> field.addAll(take(SeasonClass.ALL_SEASON, random.nextInt(2), field));
      }
    }
    return List.copyOf(field);
  }

  private Optional<ScenarioModel> newestOf(String ofMaker) {
    return onSale.get(theme.season()).keySet().stream()
        .filter(m -> m.maker().equals(ofMaker))
        .max(Comparator.comparingInt(ScenarioModel::launched));
  }

  /** Draws without replacement by weight; fewer when fewer are on sale. */
  private List<ScenarioModel> take(SeasonClass season, int count, List<ScenarioModel> taken) {
    Map<ScenarioModel, Double> left = new TreeMap<>(Comparator.comparing(ScenarioModel::fullName));
    left.putAll(onSale.get(season));
    taken.forEach(left::remove);
    List<ScenarioModel> drawn = new ArrayList<>();
    while (drawn.size() < count && !left.isEmpty()) {
      double mark =
          random.nextDouble() * left.values().stream().mapToDouble(Double::doubleValue).sum();
      ScenarioModel chosen = null;
      for (Map.Entry<ScenarioModel, Double> candidate : left.entrySet()) {
        chosen = candidate.getKey();
        mark -= candidate.getValue();
        if (mark < 0) {
          break;
        }
      }
      left.remove(chosen);
      drawn.add(chosen);
    }
    return drawn;
  }
}
