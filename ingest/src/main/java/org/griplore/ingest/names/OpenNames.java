package org.griplore.ingest.names;

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
  private static final double SIDE_BY_SIDE = 0.5;

  private final Map<String, Set<String>> tests;

  private OpenNames(Map<String, Set<String>> tests) {
    this.tests = tests;
  }

  /** The open names that current reports use. */
  public static List<OpenName> of(Archive archive) {
    Map<String, NameRecord> open = new HashMap<>();
    Set<String> models = new HashSet<>();
    for (NameRecord name : archive.names()) {
      models.add(name.model());
      if (name.open()) {
        open.put(name.name(), name);
      }
    }
    if (open.isEmpty()) {
      return List.of();
    }
    NameReconciler reconciler = NameReconciler.of(archive);
    Map<NameUse, List<Candidate>> candidates = new HashMap<>();
    Set<String> involved = new HashSet<>();
    for (NameUse use : archive.nameUses()) {
      if (open.containsKey(use.name())) {
        List<Candidate> likely = candidates(open.get(use.name()), reconciler);
        likely.removeIf(candidate -> !models.contains(candidate.model()));
        candidates.put(use, likely);
        likely.forEach(candidate -> involved.add(candidate.model()));
        if (!likely.isEmpty()) {
          involved.add(use.name());
        }
      }
    }
    OpenNames names = new OpenNames(archive.testsOfNames(involved));
    List<OpenName> all = new ArrayList<>();
    candidates.forEach(
        (use, likely) ->
            all.add(
                new OpenName(
                    use, open.get(use.name()).model(), names.weighed(use.name(), likely))));
    all.sort(Comparator.comparingDouble(OpenNames::best).reversed().thenComparing(OpenName::name));
    return all;
  }

  private static double best(OpenName name) {
    return name.candidates().isEmpty() ? 0 : name.candidates().get(0).score();
  }

  private static List<Candidate> candidates(NameRecord name, NameReconciler reconciler) {
    List<Candidate> likely = new ArrayList<>(reconciler.candidates(name.name()));
    likely.removeIf(candidate -> candidate.model().equals(name.name()));
    boolean assumed = !name.model().equals(name.name());
    if (assumed && likely.stream().noneMatch(c -> c.model().equals(name.model()))) {
      likely.add(new Candidate(name.model(), 0, "as an earlier file was read"));
    }
    return likely;
  }

  private List<Candidate> weighed(String name, List<Candidate> candidates) {
    return candidates.stream()
        .map(candidate -> weighed(name, candidate))
        .sorted(
            Comparator.comparingDouble(Candidate::score).reversed().thenComparing(Candidate::model))
        .toList();
  }

  private Candidate weighed(String name, Candidate candidate) {
    Set<String> both = new TreeSet<>(tests.getOrDefault(name, Set.of()));
    both.retainAll(tests.getOrDefault(candidate.model(), Set.of()));
    if (both.isEmpty()) {
      return candidate;
    }
    String first = both.iterator().next();
    return new Candidate(
        candidate.model(),
        SIDE_BY_SIDE * candidate.score(),
        candidate.reason()
            + "; but both stood in test "
            + first
            + (both.size() == 1 ? "" : " and in " + (both.size() - 1) + " more"));
  }
}
