package org.griplore.ingest.names;

import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.griplore.ingest.names.NameReconciler.Settled;
import org.griplore.store.vocabulary.NameKey;

/**
 * The names that stand in one test. Two of them are two tyres, however alike they are: neither is
 * taken for a misspelling of the other, nor both for misspellings of a third.
 */
public final class FieldNames {
  private final NameReconciler names;
  private final Map<String, String> written = new HashMap<>();
  private final Map<String, Set<String>> keysOfModel = new HashMap<>();

  /** A field without names so far. */
  public FieldNames(NameReconciler names) {
    this.names = names;
  }

  /** Says which names stand in the test, before they are settled. */
  public void add(Collection<String> more) {
    for (String name : more) {
      String key = NameKey.of(name);
      if (written.putIfAbsent(key, name) == null) {
        String model = meant(names.look(name)).model();
        keysOfModel.computeIfAbsent(model, m -> new HashSet<>(2)).add(key);
      }
    }
  }

  /** The model that one of the names means; a new one is learnt. */
  public Settled settle(String name) {
    String key = NameKey.of(name);
    return names.settle(name, model -> anotherMeans(model, key));
  }

  private boolean anotherMeans(String model, String key) {
    if (!Set.of(key).containsAll(keysOfModel.getOrDefault(model, Set.of()))) {
      return true;
    }
    return written.entrySet().stream()
        .filter(other -> !other.getKey().equals(key))
        .anyMatch(other -> meant(names.look(other.getValue())).model().equals(model));
  }

  private static Settled meant(Settled found) {
    return found instanceof Settled.Decided decided ? decided.otherwise() : found;
  }
}
