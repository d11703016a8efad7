package org.griplore.query.dependence;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.griplore.query.evidence.Evidence;
import org.griplore.query.evidence.Names;
import org.griplore.query.option.Choices;
import org.griplore.store.vocabulary.SeasonClass;

/**
 * One side of a contrast: a season class, a line or a model.
 *
 * @param name its name, for sentences
 * @param season the season class; null when it is models
 * @param models positions of its models; empty when it is a season class
 */
record Side(String name, SeasonClass season, Set<Integer> models) {
  static final String OPTION = "contrast";

  private static final Pattern BETWEEN =
      Pattern.compile("\\s+(?:against|vs\\.?|-|–|−)\\s+|\\s*:\\s*");

  /**
   * The two sides, the first less the second: two texts, or one with {@code against} or a colon
   * between them.
   *
   * @throws org.griplore.store.vocabulary.Refusal when they are not two, or have a model in common
   */
  static List<Side> two(List<String> given, Names names, Evidence evidence) {
    List<String> texts = new ArrayList<>(given);
    if (texts.size() == 1) {
      texts = List.of(BETWEEN.split(texts.get(0)));
    }
    if (texts.size() != 2) {
      throw refusal(given);
    }
    Side first = of(texts.get(0), names, evidence);
    Side second = of(texts.get(1), names, evidence);
    boolean apart =
        first.season != null && second.season != null
            ? first.season != second.season
            : first.models.stream().noneMatch(second.models::contains);
    if (!apart) {
      throw refusal(given);
    }
    return List.of(first, second);
  }

  private static RuntimeException refusal(List<String> given) {
    return Choices.refusal(
        OPTION,
        String.join(", ", given),
        "two sides without a model in common: two models, two lines or two season classes, like"
            + " all-season summer");
  }

  private static Side of(String text, Names names, Evidence evidence) {
    Optional<SeasonClass> season =
        SeasonClass.ofKey(text.strip().toLowerCase(java.util.Locale.ROOT));
    if (season.isPresent()) {
      return new Side(season.get().key(), season.get(), Set.of());
    }
    List<Integer> models = names.lineOrModel(OPTION, text);
    String name =
        models.size() == 1
            ? evidence.models().get(models.get(0)).name()
            : Names.lineName(evidence.models().get(models.get(0)));
    return new Side(name, null, Set.copyOf(models));
  }

  /** Whether more models than one can stand for it. */
  boolean isMany() {
    return models.size() != 1;
  }

  /** Whether an entry belongs to it: a model without a season class has that of its test. */
  boolean holds(Evidence evidence, int entry) {
    int model = evidence.entries().model()[entry];
    if (season == null) {
      return models.contains(model);
    }
    SeasonClass own = evidence.models().get(model).season();
    return season
        == (own == null
            ? evidence.tests().get(evidence.entries().test()[entry]).details().season()
            : own);
  }
}
