package org.griplore.query.evidence;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.griplore.store.archive.ModelRecord;
import org.griplore.store.names.NameFinder;
import org.griplore.store.names.UnknownName;
import org.griplore.store.vocabulary.NameKey;
import org.griplore.store.vocabulary.Refusal;

/**
 * Finds models and lines however their names are written, and offers the nearest when it cannot.
 */
public final class Names {
  private static final int OFFERED = 5;

  private final NameFinder finder;
  private final Map<String, Integer> positions = new HashMap<>();
  private final Map<String, Set<Integer>> byLine = new HashMap<>();

  /** Learns the names, aliases and lines of the models. */
  public Names(List<ModelRecord> models) {
    this.finder = NameFinder.of(models);
    for (int i = 0; i < models.size(); i++) {
      ModelRecord model = models.get(i);
      positions.put(model.name(), i);
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
    if (positions.containsKey(name)) {
      return positions.get(name);
    }
    Set<String> found = finder.exact(name);
    if (found.size() == 1) {
      return positions.get(found.iterator().next());
    }
    throw found.isEmpty()
        ? UnknownName.refusal(option, name, "is no model in the archive", nearest(name))
        : UnknownName.refusal(option, name, "means more than one model", List.copyOf(found));
  }

  /**
   * The models of these names, each once; one value may hold several names with commas between.
   *
   * @throws Refusal as {@link #model}
   */
  public List<Integer> models(String option, List<String> given) {
    Set<Integer> found = new LinkedHashSet<>();
    for (String value : given) {
      boolean one = !value.contains(",") || !finder.exact(value).isEmpty();
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

  /** The names of models nearest to a text, best first; none that share nothing with it. */
  public List<String> nearest(String text) {
    return finder.nearest(text, OFFERED);
  }
}
