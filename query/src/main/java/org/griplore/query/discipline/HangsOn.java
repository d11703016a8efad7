package org.griplore.query.discipline;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import org.griplore.query.evidence.Evidence;
import org.griplore.query.network.EstimatedComparison;
import org.griplore.query.network.Influence;
import org.griplore.query.network.NetworkFit;
import org.griplore.query.network.Removal;

/**
 * What estimates of one network hang on: the test, the source (by who published it) and the model
 * without which each would move farthest, variances held. Models and tests are told by their
 * positions in the evidence.
 */
public final class HangsOn {
  /** Entries of the inverses that fits without a source may keep; beyond, sources are not asked. */
  private static final long MOST_ENTRIES = 2_000_000;

  private final Network network;
  private final NetworkFit fit;
  private final Evidence evidence;
  private final Influence influence;
  private final Map<String, NetworkFit> withoutSource = new TreeMap<>();
  private final Map<List<Object>, List<StrongestRemoval>> differences = new ConcurrentHashMap<>();
  private final Map<Integer, Optional<StrongestRemoval>> effects = new ConcurrentHashMap<>();

  HangsOn(Network network, NetworkFit fit, Evidence evidence) {
    this.network = network;
    this.fit = fit;
    this.evidence = evidence;
    this.influence = fit.influence();
    Map<String, Set<Integer>> sources = new TreeMap<>();
    for (int t = 0; t < network.testPositions().length; t++) {
      String source = source(t);
      if (source != null) {
        sources.computeIfAbsent(source, name -> new HashSet<>()).add(t);
      }
    }
    long entries = (long) sources.size() * fit.models() * fit.models();
    if (sources.size() > 1 && entries <= MOST_ENTRIES) {
      sources.forEach(
          (name, tests) ->
              withoutSource.put(name, fit.within((test, model) -> !tests.contains(test))));
    }
  }

  private String source(int test) {
    return evidence.tests().get(network.testPositions()[test]).details().publication();
  }

  private String key(int test) {
    return evidence.tests().get(network.testPositions()[test]).key();
  }

  /**
   * A difference's strongest test and source, and model where that is asked, in this order.
   *
   * @param first position of a model that the network compares with the second
   * @param withModel whether models are looked at too, which takes longer
   */
  public List<StrongestRemoval> difference(int first, int second, boolean withModel) {
    return differences.computeIfAbsent(
        List.of(first, second, withModel), key -> found(first, second, withModel));
  }

  private List<StrongestRemoval> found(int first, int second, boolean withModel) {
    int p = network.own(first);
    int q = network.own(second);
    List<StrongestRemoval> found = new ArrayList<>();
    influence
        .strongestTest(p, q)
        .ifPresent(t -> found.add(told("test", key(t.test()), t.removal())));
    strongestSource(p, q).ifPresent(found::add);
    if (withModel) {
      influence
          .strongestModel(p, q)
          .ifPresent(m -> found.add(told("model", name(m.model()), m.removal())));
    }
    return List.copyOf(found);
  }

  private String name(int model) {
    return evidence.models().get(network.modelPositions()[model]).name();
  }

  private StrongestRemoval told(String kind, String name, Removal removal) {
    return StrongestRemoval.of(kind, name, removal, network.measure());
  }

  private Optional<StrongestRemoval> strongestSource(int first, int second) {
    if (!(fit.compare(first, second) instanceof EstimatedComparison whole)) {
      return Optional.empty();
    }
    return withoutSource.entrySet().stream()
        .map(
            source ->
                told(
                    "source",
                    source.getKey(),
                    new Removal(
                        whole.estimate(),
                        source.getValue().compare(first, second) instanceof EstimatedComparison rest
                            ? Optional.of(rest.estimate())
                            : Optional.empty())))
        .max(Comparator.comparingDouble(HangsOn::distance));
  }

  private static double distance(StrongestRemoval removal) {
    return removal.change() == null ? Double.POSITIVE_INFINITY : Math.abs(removal.change());
  }

  /** The test that a model's effect, against the mean, hangs on most. */
  public Optional<StrongestRemoval> effect(int model) {
    return effects.computeIfAbsent(
        model,
        position ->
            influence
                .strongestTest(network.own(position))
                .map(t -> told("test", key(t.test()), t.removal())));
  }

  /**
   * The one of several that a sentence should name: one that changes it, a test before a source
   * before a model; else the test.
   */
  public static Optional<StrongestRemoval> telling(List<StrongestRemoval> removals) {
    return removals.stream()
        .filter(StrongestRemoval::sentenceChanges)
        .findFirst()
        .or(() -> removals.stream().findFirst());
  }

  /**
   * A result that fits no other.
   *
   * @param test the test's key
   * @param model the model's name
   * @param result number of the stored result, which leads to its cell
   * @param studentised how many standard errors it lies from where all others put it
   * @param chance that any result of the network would lie so far off
   */
  public record MisfitResult(
      String test, String model, long result, double studentised, double chance) {
    /** A sentence, with the number that leads to the result's cell. */
    public String words() {
      return String.format(
          Locale.ROOT,
          "%s in %s fits no other result: %.1f standard errors %s where all others put it (result"
              + " %d, see `origin %d`).",
          model,
          test,
          Math.abs(studentised),
          studentised > 0 ? "above" : "below",
          result,
          result);
    }
  }

  /** Results that fit no other, the farthest first. */
  public List<MisfitResult> misfits() {
    List<MisfitResult> found = new ArrayList<>();
    for (Influence.Misfit misfit : influence.misfits(0.05)) {
      int test = network.testPositions()[misfit.test()];
      int model = network.modelPositions()[misfit.model()];
      DisciplineArms arms = network.arms();
      for (int i = 0; i < arms.size(); i++) {
        if (arms.test()[i] == test && arms.model()[i] == model) {
          found.add(
              new MisfitResult(
                  key(misfit.test()),
                  name(misfit.model()),
                  evidence.results().id()[arms.result()[i]],
                  misfit.studentised(),
                  misfit.p()));
        }
      }
    }
    return List.copyOf(found);
  }
}
