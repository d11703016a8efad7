package org.griplore.store.names;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.griplore.store.archive.Archive;
import org.griplore.store.archive.NameRecord;
import org.griplore.store.archive.NameUse;

/**
 * The names of an archive that nobody has decided on: names that files use and no lineage table
 * lists, and names that were taken for misspellings. Those with the likeliest candidates come
 * first. Two names that stood side by side in a test are rarely one model: that is said, and halves
 * the score.
 */
public final class OpenNames {
  private static final int OFFERED = 3;

  private OpenNames() {}

  /** The open names that current reports use. */
  public static List<OpenName> of(Archive archive) {
    Map<String, NameRecord> open = new HashMap<>();
    for (NameRecord name : archive.names()) {
      if (name.open()) {
        open.put(name.name(), name);
      }
    }
    if (open.isEmpty()) {
      return List.of();
    }
    NameFinder finder = NameFinder.of(archive.models());
    Map<NameUse, List<Candidate>> likely = new HashMap<>();
    Set<String> involved = new HashSet<>();
    for (NameUse use : archive.nameUses()) {
      if (open.containsKey(use.name())) {
        List<Candidate> candidates = candidates(open.get(use.name()), finder);
        likely.put(use, candidates);
        if (!candidates.isEmpty()) {
          involved.add(use.name());
          candidates.forEach(candidate -> involved.add(candidate.model()));
        }
      }
    }
    Map<String, Set<String>> tests = archive.testsOfNames(involved);
    List<OpenName> all = new ArrayList<>();
    likely.forEach(
        (use, candidates) ->
            all.add(
                new OpenName(
                    use,
                    open.get(use.name()).model(),
                    candidates.stream()
                        .map(candidate -> weighed(use.name(), candidate, tests))
                        .sorted(BEST_FIRST)
                        .toList())));
    all.sort(
        Comparator.comparingDouble(OpenName::likeness).reversed().thenComparing(OpenName::name));
    return all;
  }

  private static final Comparator<Candidate> BEST_FIRST =
      Comparator.comparingDouble(Candidate::score).reversed().thenComparing(Candidate::model);

  private static List<Candidate> candidates(NameRecord name, NameFinder finder) {
    List<Candidate> likely = new ArrayList<>(finder.candidates(name.name(), OFFERED + 1));
    likely.removeIf(candidate -> candidate.model().equals(name.name()));
    while (likely.size() > OFFERED) {
      likely.remove(OFFERED);
    }
    boolean assumed = !name.model().equals(name.name());
    if (assumed && likely.stream().noneMatch(c -> c.model().equals(name.model()))) {
      likely.add(new Candidate(name.model(), 0, List.of()));
    }
    return likely;
  }

  private static Candidate weighed(
      String name, Candidate candidate, Map<String, Set<String>> tests) {
    Set<String> both = new TreeSet<>(tests.getOrDefault(name, Set.of()));
    both.retainAll(tests.getOrDefault(candidate.model(), Set.of()));
    return both.isEmpty()
        ? candidate
        : candidate.standingBeside(both.iterator().next(), both.size() - 1);
  }
}
