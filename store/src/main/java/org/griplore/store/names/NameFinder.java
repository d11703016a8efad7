package org.griplore.store.names;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.griplore.store.archive.ModelRecord;
import org.griplore.store.vocabulary.NameKey;

/**
 * Finds the models that a written name means for certain, or could mean, with the reasons. Names of
 * the same comparing form are one ({@link NameKey}); beyond that nothing is certain but an alias
 * and a name without its maker, or with it before.
 *
 * <p>Candidates are found by the words they share with the written name, the rarest first, so that
 * a search costs the same in an archive of fifty names and of fifty thousand. Learning is not safe
 * for several threads; asking is.
 */
public final class NameFinder {
  /** Less alike than this is not worth offering (common practice, no source). */
  private static final double OFFERED_FROM = 0.45;

  /** What was typed and is not known may be far off: the nearest are named all the same. */
  private static final double NAMED_FROM = 0.1;

  /** Words that so many ways of writing hold are looked up only where no rarer one is written. */
  private static final int RARE = 64;

  private static final int COMMON = 500;
  private static final int WORDS_LOOKED_UP = 3;
  private static final int LONGEST_MAKER = 4;

  private final Map<String, Set<String>> byKey = new HashMap<>();
  private final Map<String, Set<String>> byShortKey = new HashMap<>();
  private final Set<String> makers = new HashSet<>();
  private final List<NameForm> forms = new ArrayList<>();
  private final Map<String, Integer> formNumbers = new HashMap<>();
  private final Map<String, List<Integer>> formsOfWord = new HashMap<>();
  private final Map<String, List<Integer>> formsRunTogether = new HashMap<>();
  private final WordBlocks blocks = new WordBlocks();
  private final List<Waiting> waiting = new ArrayList<>();

  /** A name that was learnt and not yet made ready to be compared with. */
  private record Waiting(String model, String written, String maker) {}

  /** A finder of the names, aliases and makers of models. */
  public static NameFinder of(Collection<ModelRecord> models) {
    NameFinder finder = new NameFinder();
    for (ModelRecord model : models) {
      finder.learnMaker(model.maker());
    }
    for (ModelRecord model : models) {
      finder.learn(model.name(), model.maker(), model.aliases());
    }
    return finder;
  }

  private void learnMaker(String maker) {
    if (maker != null) {
      makers.add(NameKey.of(maker));
    }
  }

  /**
   * Learns a model and how else it is written.
   *
   * @param maker its maker; null when that is not known
   */
  public void learn(String name, String maker, Collection<String> aliases) {
    learnMaker(maker);
    String key = NameKey.of(name);
    of(byKey, key).add(name);
    add(name, name, maker);
    for (String alias : aliases) {
      of(byKey, NameKey.of(alias)).add(name);
      add(name, alias, maker);
    }
    String prefix = maker == null ? null : NameKey.of(maker) + " ";
    if (prefix != null && key.startsWith(prefix)) {
      of(byShortKey, key.substring(prefix.length())).add(name);
    }
  }

  private static Set<String> of(Map<String, Set<String>> names, String key) {
    return names.computeIfAbsent(key, k -> new LinkedHashSet<>(2));
  }

  private void add(String model, String written, String maker) {
    waiting.add(new Waiting(model, written, maker));
  }

  /** Looks up nothing for a name that is never asked about: candidates are asked for seldom. */
  private synchronized void index() {
    waiting.forEach(this::index);
    waiting.clear();
  }

  private void index(Waiting name) {
    String model = name.model();
    NameForm form =
        NameForm.of(
            model, name.written(), name.maker() == null ? makerOf(name.written()) : name.maker());
    String identity = model + "\n" + String.join(" ", form.words());
    Integer known = formNumbers.putIfAbsent(identity, forms.size());
    if (known != null) {
      forms.set(known, form);
      return;
    }
    int number = forms.size();
    forms.add(form);
    for (String word : new LinkedHashSet<>(form.words())) {
      List<Integer> others = formsOfWord.get(word);
      if (others == null) {
        others = new ArrayList<>(2);
        formsOfWord.put(word, others);
        blocks.add(word);
      }
      others.add(number);
    }
    formsRunTogether
        .computeIfAbsent(String.join("", form.words()), word -> new ArrayList<>(1))
        .add(number);
  }

  /** The known maker that a name begins with; null when with none. */
  private String makerOf(String written) {
    List<String> words = NameKey.words(written);
    for (int n = Math.min(LONGEST_MAKER, words.size() - 1); n > 0; n--) {
      String maker = String.join(" ", words.subList(0, n));
      if (makers.contains(maker)) {
        return maker;
      }
    }
    return null;
  }

  /**
   * The models that a name means without any assumption: one when it is certain, several when it
   * means them all, none when it is not known. What it is written as counts before what it means
   * without its maker.
   */
  public Set<String> exact(String written) {
    String key = NameKey.of(written);
    Set<String> several = null;
    String maker = makerOf(written);
    Set<String> bare = maker == null ? null : byKey.get(key.substring(maker.length() + 1));
    for (Set<String> found : Arrays.asList(byKey.get(key), byShortKey.get(key), bare)) {
      if (found != null && found.size() == 1) {
        return Set.copyOf(found);
      }
      several = several == null ? found : several;
    }
    return several == null ? Set.of() : Collections.unmodifiableSet(several);
  }

  /** Models that a written name could mean, the likeliest first. */
  public List<Candidate> candidates(String written, int most) {
    return candidates(written, OFFERED_FROM, most);
  }

  /** The names nearest to a text that was typed, however far off, the likeliest first. */
  public List<String> nearest(String typed, int most) {
    return candidates(typed, NAMED_FROM, most).stream().map(Candidate::model).toList();
  }

  private List<Candidate> candidates(String written, double from, int most) {
    index();
    Map<String, Candidate> best = new LinkedHashMap<>();
    List<String> words = NameKey.words(written);
    compare(words, null, from, best);
    for (ScannedText scanned : ScannedText.of(written)) {
      compare(scanned.words(), scanned.difference(), from, best);
    }
    return best.values().stream()
        .sorted(
            Comparator.comparingDouble(Candidate::score).reversed().thenComparing(Candidate::model))
        .limit(most)
        .toList();
  }

  private void compare(
      List<String> words, NameDifference scanned, double from, Map<String, Candidate> best) {
    for (int number : alike(words)) {
      Candidate found = forms.get(number).compared(words, from);
      if (found == null) {
        continue;
      }
      if (scanned != null) {
        List<NameDifference> all = new ArrayList<>(found.differences());
        all.add(scanned);
        found = new Candidate(found.model(), found.score() * scanned.kind().keeps(), all);
      }
      best.merge(
          found.model(), found, (some, other) -> other.score() > some.score() ? other : some);
    }
  }

  /** Ways of writing that a name is compared with. */
  Set<Integer> alike(String written) {
    index();
    return alike(NameKey.words(written));
  }

  /** Ways of writing that share words with a name, or nearly share them. */
  private Set<Integer> alike(List<String> words) {
    Set<Integer> alike =
        new LinkedHashSet<>(formsRunTogether.getOrDefault(String.join("", words), List.of()));
    List<Holding> lists = new ArrayList<>();
    for (String word : new LinkedHashSet<>(words)) {
      Holding holding = holding(word);
      if (holding.size() > 0) {
        lists.add(holding);
      }
    }
    lists.sort(Comparator.comparingInt(Holding::size));
    int rare = 0;
    while (rare < Math.min(WORDS_LOOKED_UP, lists.size()) && lists.get(rare).size() <= RARE) {
      lists.get(rare++).lists().forEach(alike::addAll);
    }
    if (rare == 0 && !lists.isEmpty()) {
      Set<Integer> fewest = lists.get(0).all();
      for (int i = 1; i < lists.size() && fewest.size() > COMMON; i++) {
        fewest.retainAll(lists.get(i).all());
      }
      fewest.stream().limit(COMMON).forEach(alike::add);
    }
    return alike;
  }

  private Holding holding(String word) {
    List<List<Integer>> lists = new ArrayList<>();
    if (formsOfWord.containsKey(word)) {
      lists.add(formsOfWord.get(word));
    }
    for (String near : blocks.near(word)) {
      if (!near.equals(word)) {
        lists.add(formsOfWord.get(near));
      }
    }
    return new Holding(lists, lists.stream().mapToInt(List::size).sum());
  }

  /** The ways of writing that hold a word or one nearly spelt like it, word by word. */
  private record Holding(List<List<Integer>> lists, int size) {
    Set<Integer> all() {
      Set<Integer> all = new LinkedHashSet<>();
      lists.forEach(all::addAll);
      return all;
    }
  }
}
