package org.griplore.ingest.names;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Predicate;
import org.griplore.store.archive.Archive;
import org.griplore.store.archive.ModelRecord;
import org.griplore.store.archive.NameRecord;
import org.griplore.store.archive.NameRecord.Standing;
import org.griplore.store.names.Candidate;
import org.griplore.store.names.NameFinder;
import org.griplore.store.vocabulary.Decision;
import org.griplore.store.vocabulary.NameKey;

/**
 * Settles which model a written name means. What the user decided comes first; then what the name
 * means for certain ({@link NameFinder#exact}); then a misspelling, when one model is clearly
 * nearest and nothing sets the names apart but slips of the hand; then what an earlier file was
 * taken to mean by it. A name that nothing fits is a new model.
 *
 * <p>No misspelling is assumed of a name that stands in one test with another name of the same
 * model: two names in one test are two tyres.
 */
public final class NameReconciler {
  /** Below this likeness two spellings are not taken for one name (common practice, no source). */
  private static final double ALIKE = 0.85;

  /** The nearest model must be ahead of the second by this much (common practice, no source). */
  private static final double MARGIN = 0.02;

  private static final int OFFERED = 3;

  private final NameFinder finder = new NameFinder();
  private final Map<String, Settled> settled = new HashMap<>();
  private final Map<String, String> followed = new HashMap<>();
  private final Set<String> provisional = new LinkedHashSet<>();
  private final Map<String, String> spellings = new HashMap<>();
  private final Map<String, NameRecord> before = new HashMap<>();
  private final Map<String, Decision> decisions = new HashMap<>();
  private Function<Set<String>, Map<String, Set<String>>> testsOfNames = names -> Map.of();

  /** How a name was settled. */
  public sealed interface Settled {
    /** The model's full name. */
    String model();

    /** Known, without a doubt. */
    record Known(String model) implements Settled {}

    /**
     * Taken for a misspelling of a known name.
     *
     * @param written the name as written
     */
    record Assumed(String written, Candidate by) implements Settled {
      @Override
      public String model() {
        return by.model();
      }
    }

    /**
     * A new name, with the models it is nearest to.
     *
     * @param parted the name of which it would be taken for a misspelling, did not both stand in
     *     one test; else null
     */
    record New(String model, List<Candidate> nearest, Candidate parted) implements Settled {}

    /**
     * Decided by the user.
     *
     * @param otherwise what it would be without the decision
     */
    record Decided(String model, Settled otherwise) implements Settled {}
  }

  /**
   * Starts from what an archive's sources tell, and the decisions beside it: so that what is read
   * does not depend on whether a decision was made before or after.
   */
  public static NameReconciler of(Archive archive) {
    NameReconciler names = new NameReconciler(archive.modelsAsRead());
    for (NameRecord name : archive.namesAsRead()) {
      names.spellings.putIfAbsent(NameKey.of(name.name()), name.name());
      if (!name.model().equals(name.name())) {
        names.before.put(NameKey.of(name.name()), name);
      }
      if (name.standing() == Standing.ASSUMED) {
        names.provisional.add(name.name());
      }
    }
    names.testsOfNames = archive::testsOfNames;
    archive.decisions().stream()
        .filter(decision -> decision.topic() == Decision.Topic.MEANING)
        .forEach(decision -> names.decisions.put(decision.key(), decision));
    return names;
  }

  /** Starts from models alone. */
  public NameReconciler(Collection<ModelRecord> models) {
    Map<Integer, String> names = new HashMap<>();
    models.forEach(model -> names.put(model.id(), model.name()));
    for (ModelRecord model : models) {
      if (model.follows() != null && names.containsKey(model.follows())) {
        followed.put(model.name(), names.get(model.follows()));
      }
      learn(model.name(), model.maker(), model.aliases());
      if (isProvisional(model)) {
        provisional.add(model.name());
      }
    }
  }

  /** Nothing is known but the name: the model was met in a test, and no lineage table has it. */
  private static boolean isProvisional(ModelRecord model) {
    return model.maker() == null
        && model.line() == null
        && model.generation() == null
        && model.launched() == null
        && model.season() == null
        && model.segment() == null
        && model.follows() == null;
  }

  /** The predecessors that the archive knows, by model. */
  public Map<String, String> followed() {
    return Map.copyOf(followed);
  }

  /** Names that were taken for models of their own and that no lineage table has, so far. */
  public Set<String> provisional() {
    return Set.copyOf(provisional);
  }

  /** Says that a model is in a lineage table. */
  public void confirm(String name) {
    provisional.remove(name);
  }

  /** Learns a model and how else it is written. */
  public void learn(String name, String maker, Collection<String> aliases) {
    settled.clear();
    finder.learn(name, maker, aliases);
  }

  /** The model that a written name means, whatever stands beside it; a new one is learnt. */
  public Settled settle(String written) {
    return settle(written, model -> false);
  }

  /**
   * The model that a written name means; a new one is learnt.
   *
   * @param contested whether another name of the same test means a model
   */
  Settled settle(String written, Predicate<String> contested) {
    String tidy = tidy(written);
    Settled known = settled.get(tidy);
    if (known == null) {
      known = find(tidy);
      settled.put(tidy, known);
    }
    Settled found = parted(known, contested);
    if (found instanceof Settled.New || isNewByDecision(found)) {
      finder.learn(found.model(), null, List.of());
      provisional.add(found.model());
      settled.clear();
    }
    return found;
  }

  private boolean isNewByDecision(Settled found) {
    return found instanceof Settled.Decided && !isListed(found.model());
  }

  /** A name that is no misspelling where another name of the model stands beside it. */
  private static Settled parted(Settled found, Predicate<String> contested) {
    if (found instanceof Settled.Assumed assumed && contested.test(assumed.model())) {
      return new Settled.New(assumed.written(), List.of(assumed.by()), assumed.by());
    }
    if (found instanceof Settled.Decided decided) {
      return new Settled.Decided(decided.model(), parted(decided.otherwise(), contested));
    }
    return found;
  }

  /** The key of a test in the archive in which both names stand; null when there is none. */
  public String testOfBoth(String some, String other) {
    Map<String, Set<String>> tests = testsOfNames.apply(Set.of(some, other));
    TreeSet<String> both = new TreeSet<>(tests.getOrDefault(some, Set.of()));
    both.retainAll(tests.getOrDefault(other, Set.of()));
    return both.isEmpty() ? null : both.first();
  }

  private static String tidy(String written) {
    return written.strip().replaceAll("\\s+", " ");
  }

  /**
   * The spelling under which a name is kept: as it was written first, but for case, accents,
   * punctuation and spaces.
   */
  public String kept(String written) {
    String tidy = tidy(written);
    return spellings.computeIfAbsent(NameKey.of(tidy), key -> tidy);
  }

  /** Whether the user decided what this name means. */
  public boolean isDecided(String name) {
    return decisions.containsKey(NameKey.of(name));
  }

  /** Whether a model is known by this very name, an alias, or the name without its maker. */
  public boolean isListed(String name) {
    return finder.exact(name).size() == 1;
  }

  /** What a name would be settled as; nothing is learnt. */
  public Settled look(String written) {
    return find(tidy(written));
  }

  /** The model that a name is known to mean, without any assumption; nothing is learnt. */
  public Optional<String> known(String written) {
    String key = NameKey.of(written);
    return decisions.containsKey(key)
        ? Optional.of(decided(key, written))
        : Optional.ofNullable(exact(written));
  }

  private String exact(String written) {
    Set<String> models = finder.exact(written);
    return models.size() == 1 ? models.iterator().next() : null;
  }

  /** The model that a decided name means, over as many decisions as it takes. */
  private String decided(String key, String written) {
    Decision decision = decisions.get(key);
    if (decision.value() == null) {
      String exact = exact(written);
      return exact != null && NameKey.of(exact).equals(key) ? exact : kept(written);
    }
    String model = decision.value();
    String modelKey = NameKey.of(model);
    if (decisions.containsKey(modelKey)) {
      return decided(modelKey, model);
    }
    String exact = exact(model);
    if (exact != null) {
      return exact;
    }
    NameRecord named = before.get(modelKey);
    if (named == null) {
      return kept(written);
    }
    return named.standing() == Standing.ASSUMED ? named.name() : named.model();
  }

  private Settled find(String written) {
    String key = NameKey.of(written);
    Settled read = read(written, key);
    return decisions.containsKey(key) ? new Settled.Decided(decided(key, written), read) : read;
  }

  private Settled read(String written, String key) {
    String exact = exact(written);
    if (exact != null) {
      return new Settled.Known(exact);
    }
    List<Candidate> candidates = candidates(written);
    if (!candidates.isEmpty() && isClear(candidates)) {
      return new Settled.Assumed(written, candidates.get(0));
    }
    NameRecord earlier = before.get(key);
    if (earlier != null) {
      return new Settled.Assumed(written, new Candidate(earlier.model(), 0, List.of()));
    }
    return new Settled.New(written, candidates, null);
  }

  private static boolean isClear(List<Candidate> candidates) {
    Candidate best = candidates.get(0);
    return best.isMisspelling()
        && best.score() >= ALIKE
        && (candidates.size() == 1 || best.score() - candidates.get(1).score() >= MARGIN);
  }

  /** Models that a written name could mean, best first. */
  public List<Candidate> candidates(String written) {
    return new ArrayList<>(finder.candidates(written, OFFERED));
  }
}
