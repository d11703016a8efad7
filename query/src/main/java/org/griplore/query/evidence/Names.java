package org.griplore.query.evidence;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.griplore.store.archive.ModelRecord;
import org.griplore.store.vocabulary.NameKey;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;

/**
 * Finds models and lines however their names are written, and offers the nearest when it cannot.
 */
public final class Names {
  private static final int OFFERED = 5;

  private final List<ModelRecord> models;
  private final Map<String, Set<Integer>> byKey = new HashMap<>();
  private final Map<String, Set<Integer>> byLine = new HashMap<>();

  /** Learns the names, aliases and lines of the models. */
  public Names(List<ModelRecord> models) {
    this.models = models;
    for (int i = 0; i < models.size(); i++) {
      ModelRecord model = models.get(i);
      learn(byKey, model.name(), i);
      for (String alias : model.aliases()) {
        learn(byKey, alias, i);
      }
      if (model.maker() != null && model.name().startsWith(model.maker() + " ")) {
        learn(byKey, model.name().substring(model.maker().length() + 1), i);
      }
      if (model.line() != null) {
        learn(byLine, model.line(), i);
        learn(byLine, lineName(model), i);
      }
    }
  }

  private static void learn(Map<String, Set<Integer>> names, String name, int position) {
    names.computeIfAbsent(NameKey.of(name), key -> new LinkedHashSet<>()).add(position);
  }

  /** A line's full name: maker, then line. Null when the model's line is not known. */
  public static String lineName(ModelRecord model) {
    if (model.line() == null) {
      return null;
    }
    return model.maker() == null ? model.line() : model.maker() + " " + model.line();
  }

  /**
   * The model of this name.
   *
   * @param option the option that gave it, for the refusal
   * @return its position
   * @throws Refusal when there is none or more than one; the nearest names are offered
   */
  public int model(String option, String name) {
    Set<Integer> found = byKey.getOrDefault(NameKey.of(name), Set.of());
    if (found.size() == 1) {
      return found.iterator().next();
    }
    if (found.size() > 1) {
      List<String> names = found.stream().map(i -> models.get(i).name()).toList();
      throw refusal(option, name, "means more than one model", names);
    }
    throw refusal(option, name, "is no model in the archive", nearest(name));
  }

  /**
   * The models of these names, each once; one value may hold several names with commas between.
   *
   * @throws Refusal as {@link #model}
   */
  public List<Integer> models(String option, List<String> given) {
    Set<Integer> found = new LinkedHashSet<>();
    for (String value : given) {
      boolean one = !value.contains(",") || byKey.containsKey(NameKey.of(value));
      for (String name : one ? new String[] {value} : value.split(",")) {
        if (!name.isBlank()) {
          found.add(model(option, name.strip()));
        }
      }
    }
    return List.copyOf(found);
  }

  /**
   * The models of a line, or the one model of this name.
   *
   * @return their positions
   * @throws Refusal when there are none; the nearest names are offered
   */
  public List<Integer> lineOrModel(String option, String name) {
    Set<Integer> line = byLine.get(NameKey.of(name));
    return line == null ? List.of(model(option, name)) : new ArrayList<>(line);
  }

  private static Refusal refusal(String option, String name, String what, List<String> offered) {
    String offer = offered.isEmpty() ? "" : ": did you mean " + String.join(", or ", offered) + "?";
    return new Refusal(
        "\"" + name + "\" " + what + (offer.isEmpty() ? "." : offer),
        new Problem(
            option, name, offered.isEmpty() ? "a model's name" : String.join(" | ", offered)));
  }

  /** The names of models nearest to a text, best first; none that share nothing with it. */
  public List<String> nearest(String text) {
    Set<String> wanted = pairs(NameKey.of(text));
    record Near(String name, double likeness) {}
    return models.stream()
        .map(model -> new Near(model.name(), likeness(wanted, model)))
        .filter(near -> near.likeness() > 0.2)
        .sorted(Comparator.comparingDouble(Near::likeness).reversed().thenComparing(Near::name))
        .limit(OFFERED)
        .map(Near::name)
        .toList();
  }

  private static double likeness(Set<String> wanted, ModelRecord model) {
    double best = likeness(wanted, pairs(NameKey.of(model.name())));
    for (String alias : model.aliases()) {
      best = Math.max(best, likeness(wanted, pairs(NameKey.of(alias))));
    }
    return best;
  }

  /** Share of letter pairs in common (the Dice coefficient): 1 for the same pairs, 0 for none. */
  private static double likeness(Set<String> some, Set<String> others) {
    if (some.isEmpty() || others.isEmpty()) {
      return 0;
    }
    long common = some.stream().filter(others::contains).count();
    return 2.0 * common / (some.size() + others.size());
  }

  private static Set<String> pairs(String key) {
    Set<String> pairs = new TreeSet<>();
    for (int i = 0; i + 2 <= key.length(); i++) {
      pairs.add(key.substring(i, i + 2));
    }
    return pairs;
  }
}
