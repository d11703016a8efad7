package org.griplore.ingest.names;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.apache.commons.text.similarity.JaroWinklerSimilarity;
import org.griplore.store.archive.Archive;
import org.griplore.store.archive.ModelRecord;
import org.griplore.store.archive.NameRecord;
import org.griplore.store.archive.NameRecord.Standing;
import org.griplore.store.vocabulary.Decision;
import org.griplore.store.vocabulary.NameKey;

/**
 * Finds the model that a written name means. What the user decided comes first. Then the steps, the
 * surest first: the same name but for case, accents, punctuation and spaces; an alias; the name
 * without its maker, or with the maker before it, when only one model fits; a misspelling, when
 * words that tell generations apart are exactly the same and one model is clearly nearest; what an
 * earlier file was taken to mean by it. A name that nothing fits is a new model.
 */
public final class NameReconciler {
  /** Below this likeness two spellings are not taken for one name. */
  private static final double ALIKE = 0.93;

  /** The nearest model must be ahead of the second by this much. */
  private static final double MARGIN = 0.02;

  private static final double OFFERED_FROM = 0.75;

  /** Another generation of the same words is worth showing, and never taken. */
  private static final double SIBLING = 0.5;

  private static final int OFFERED = 3;
  private static final JaroWinklerSimilarity LIKENESS = new JaroWinklerSimilarity();

  private final Map<String, Set<String>> byKey = new HashMap<>();
  private final Map<String, Set<String>> byShortKey = new HashMap<>();
  private final Map<String, Words> wordsOf = new HashMap<>();
  private final Map<List<String>, TreeSet<String>> byGenerations = new HashMap<>();
  private final Map<List<String>, TreeSet<String>> byPlain = new HashMap<>();
  private final Map<String, Settled> settled = new HashMap<>();
  private final Set<String> makers = new LinkedHashSet<>();
  private final Map<String, String> followed = new HashMap<>();
  private final Set<String> provisional = new LinkedHashSet<>();
  private final Map<String, String> spellings = new HashMap<>();
  private final Map<String, NameRecord> before = new HashMap<>();
  private final Map<String, Decision> decisions = new HashMap<>();

  /** How a name was settled. */
  public sealed interface Settled {
    /** The model's full name. */
    String model();

    /** Known, without a doubt. */
    record Known(String model) implements Settled {}

    /** Taken for a misspelling of a known name. */
    record Assumed(String model, Candidate by) implements Settled {}

    /** A new name, with the models it is nearest to. */
    record New(String model, List<Candidate> nearest) implements Settled {}

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
    byKey.computeIfAbsent(NameKey.of(name), key -> new LinkedHashSet<>()).add(name);
    Words words = Words.of(name);
    if (wordsOf.put(name, words) == null) {
      byGenerations.computeIfAbsent(words.generations(), g -> new TreeSet<>()).add(name);
      byPlain.computeIfAbsent(words.plain(), g -> new TreeSet<>()).add(name);
    }
    for (String alias : aliases) {
      byKey.computeIfAbsent(NameKey.of(alias), key -> new LinkedHashSet<>()).add(name);
    }
    if (maker != null) {
      makers.add(NameKey.of(maker));
      String key = NameKey.of(name);
      String prefix = NameKey.of(maker) + " ";
      if (key.startsWith(prefix)) {
        byShortKey
            .computeIfAbsent(key.substring(prefix.length()), shorter -> new LinkedHashSet<>())
            .add(name);
      }
    }
  }

  /** The model that a written name means; a new one is learnt. */
  public Settled settle(String written) {
    String tidy = written.strip().replaceAll("\\s+", " ");
    Settled known = settled.get(tidy);
    if (known != null) {
      return known;
    }
    Settled found = find(tidy);
    if (found instanceof Settled.New || isNewByDecision(found)) {
      learn(found.model(), null, List.of());
      provisional.add(found.model());
    }
    settled.put(tidy, found instanceof Settled.New ? new Settled.Known(found.model()) : found);
    return found;
  }

  private boolean isNewByDecision(Settled found) {
    return found instanceof Settled.Decided && !byKey.containsKey(NameKey.of(found.model()));
  }

  /**
   * The spelling under which a name is kept: as it was written first, but for case, accents,
   * punctuation and spaces.
   */
  public String kept(String written) {
    String tidy = written.strip().replaceAll("\\s+", " ");
    return spellings.computeIfAbsent(NameKey.of(tidy), key -> tidy);
  }

  /** Whether the user decided what this name means. */
  public boolean isDecided(String name) {
    return decisions.containsKey(NameKey.of(name));
  }

  /** What a name would be settled as; nothing is learnt. */
  public Settled look(String written) {
    return find(written.strip().replaceAll("\\s+", " "));
  }

  /** The model that a name is known to mean, without any assumption; nothing is learnt. */
  public Optional<String> known(String written) {
    String key = NameKey.of(written);
    if (decisions.containsKey(key)) {
      return Optional.of(decided(key, written));
    }
    String exact = only(byKey.get(key));
    return Optional.ofNullable(exact != null ? exact : only(byShortKey.get(key)));
  }

  /** The model that a decided name means, over as many decisions as it takes. */
  private String decided(String key, String written) {
    Decision decision = decisions.get(key);
    if (decision.value() == null) {
      String exact = only(byKey.get(key));
      return exact != null && NameKey.of(exact).equals(key) ? exact : kept(written);
    }
    String model = decision.value();
    String modelKey = NameKey.of(model);
    if (decisions.containsKey(modelKey)) {
      return decided(modelKey, model);
    }
    String exact = only(byKey.get(modelKey));
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
    String exact = only(byKey.get(key));
    if (exact != null) {
      return new Settled.Known(exact);
    }
    String shorter = only(byShortKey.get(key));
    if (shorter != null) {
      return new Settled.Known(shorter);
    }
    for (String maker : makers) {
      if (key.startsWith(maker + " ")) {
        String withoutMaker = only(byKey.get(key.substring(maker.length() + 1)));
        if (withoutMaker != null) {
          return new Settled.Known(withoutMaker);
        }
      }
    }
    List<Candidate> candidates = candidates(written);
    if (!candidates.isEmpty() && candidates.get(0).score() >= ALIKE) {
      boolean clear =
          candidates.size() == 1 || candidates.get(0).score() - candidates.get(1).score() >= MARGIN;
      if (clear) {
        return new Settled.Assumed(candidates.get(0).model(), candidates.get(0));
      }
    }
    NameRecord earlier = before.get(key);
    if (earlier != null) {
      return new Settled.Assumed(
          earlier.model(), new Candidate(earlier.model(), ALIKE, "as in an earlier file"));
    }
    return new Settled.New(written, candidates);
  }

  private static String only(Set<String> names) {
    return names == null || names.size() != 1 ? null : names.iterator().next();
  }

  /**
   * Models that a written name could mean, best first; other generations of the same words come
   * last and are for showing only.
   */
  public List<Candidate> candidates(String written) {
    Words words = Words.of(written);
    List<Candidate> candidates = new ArrayList<>();
    for (String name : byGenerations.getOrDefault(words.generations(), new TreeSet<>())) {
      Words its = wordsOf.get(name);
      double score = likeness(words.plain(), its.plain());
      if (score >= OFFERED_FROM) {
        candidates.add(new Candidate(name, score, reason(its, score)));
      }
    }
    if (!words.plain().isEmpty()) {
      byPlain.getOrDefault(words.plain(), new TreeSet<>()).stream()
          .filter(name -> !wordsOf.get(name).generations().equals(words.generations()))
          .limit(OFFERED)
          .map(name -> new Candidate(name, SIBLING, "the same words, but another generation"))
          .forEach(candidates::add);
    }
    candidates.sort(
        Comparator.comparingDouble(Candidate::score).reversed().thenComparing(Candidate::model));
    return candidates.size() > OFFERED ? List.copyOf(candidates.subList(0, OFFERED)) : candidates;
  }

  /**
   * The words of a name, those that tell generations apart set apart from the others: found once a
   * name, for a long table brings thousands.
   */
  private record Words(List<String> plain, List<String> generations) {
    static Words of(String name) {
      List<String> all = NameKey.words(name);
      return new Words(
          all.stream().filter(word -> !NameKey.tellsGenerations(word)).toList(),
          all.stream().filter(NameKey::tellsGenerations).toList());
    }
  }

  /**
   * The likeness of two names: of their letters when they have as many words, where a word that is
   * another word altogether ("Sport" for "Evo") counts more than the rest; a missing word makes two
   * names unlike.
   */
  private static double likeness(List<String> some, List<String> others) {
    if (some.size() != others.size() || some.isEmpty()) {
      return some.isEmpty() || others.isEmpty() ? 0 : joined(some, others);
    }
    double worst = 1;
    double sum = 0;
    for (int i = 0; i < some.size(); i++) {
      double word = LIKENESS.apply(some.get(i), others.get(i));
      worst = Math.min(worst, word);
      sum += word;
    }
    return Math.min(sum / some.size(), worst + 0.04);
  }

  /** Words run together or set apart. */
  private static double joined(List<String> some, List<String> others) {
    String one = String.join("", some);
    String other = String.join("", others);
    return one.equals(other) ? 0.99 : Math.min(0.9, LIKENESS.apply(one, other));
  }

  private static String reason(Words its, double score) {
    return String.format(
        Locale.ROOT,
        "%.0f %% alike in letters%s",
        100 * score,
        its.generations().isEmpty()
            ? ""
            : ", and \"" + String.join(" ", its.generations()) + "\" is the same");
  }
}
