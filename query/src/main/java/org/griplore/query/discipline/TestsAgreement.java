package org.griplore.query.discipline;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.TreeSet;
import org.griplore.query.statistics.RankConcordance;

/**
 * How far tests agree on the order of the models that all of them placed. Tests share few models,
 * so a part of them is taken in which each test placed each model; it is chosen by who was in which
 * test and never by the places, so that the chance stays true.
 *
 * @param w Kendall's W, corrected for ties, from 0 (no agreement) to 1
 * @param tests tests compared
 * @param models models that each of them placed
 * @param friedman Friedman's statistic, {@code tests (models - 1) W}
 * @param chance share of shuffled places that agree as well, the places themselves counted in
 * @param chanceByF the same by Iman and Davenport's F, for comparison: too small for few places
 */
public record TestsAgreement(
    double w, int tests, int models, double friedman, double chance, double chanceByF) {
  /** Two models agree or not; an order needs three. */
  private static final int FEWEST_MODELS = 3;

  private static final int FEWEST_TESTS = 2;

  /** The models in most tests from which a common part is sought. */
  private static final int STARTS = 12;

  /** Any will do; the same gives the same chance. */
  private static final long SEED = 1939;

  /**
   * Agreement over the common part with most places.
   *
   * @param fields the places of each test, by model
   * @return nothing where no two tests placed the same three models, or all of those tie
   */
  static Optional<TestsAgreement> of(Collection<? extends Map<Integer, Integer>> fields) {
    return common(List.copyOf(fields)).flatMap(TestsAgreement::of);
  }

  private static Optional<TestsAgreement> of(double[][] places) {
    try {
      RankConcordance agreement = RankConcordance.of(places);
      return Optional.of(
          new TestsAgreement(
              agreement.w(),
              agreement.tests(),
              agreement.models(),
              agreement.friedman(),
              agreement.shuffledP(new SplittableRandom(SEED)),
              agreement.fisherP()));
    } catch (IllegalArgumentException allTie) {
      return Optional.empty();
    }
  }

  /** The common part with most places: a row a test, a column a model. */
  private static Optional<double[][]> common(List<Map<Integer, Integer>> fields) {
    List<Common> found = new ArrayList<>();
    for (int start : byTests(fields).stream().limit(STARTS).toList()) {
      Common part = new Common(List.of(), fields).with(start);
      while (part.tests().size() >= FEWEST_TESTS) {
        if (part.models().size() >= FEWEST_MODELS) {
          found.add(part);
        }
        List<Integer> others = new ArrayList<>(byTests(part.tests()));
        others.removeAll(part.models());
        if (others.isEmpty()) {
          break;
        }
        part = part.with(others.get(0));
      }
    }
    return found.stream().max(Comparator.comparingInt(Common::size)).map(Common::places);
  }

  /** The models placed, those in most tests first, then in order of position. */
  private static List<Integer> byTests(List<Map<Integer, Integer>> fields) {
    Map<Integer, Integer> tests = new HashMap<>();
    fields.forEach(field -> field.keySet().forEach(model -> tests.merge(model, 1, Integer::sum)));
    return new TreeSet<>(tests.keySet())
        .stream().sorted(Comparator.comparingInt(model -> -tests.get(model))).toList();
  }

  private record Common(List<Integer> models, List<Map<Integer, Integer>> tests) {
    Common with(int model) {
      List<Integer> more = new ArrayList<>(models);
      more.add(model);
      return new Common(more, tests.stream().filter(t -> t.containsKey(model)).toList());
    }

    int size() {
      return models.size() * tests.size();
    }

    double[][] places() {
      return tests.stream()
          .map(test -> models.stream().mapToDouble(test::get).toArray())
          .toArray(double[][]::new);
    }
  }

  /** One sentence. */
  public String words() {
    return String.format(
        Locale.ROOT,
        "The order of the same %d models agrees between %d tests with Kendall's W %.2f (0 is none,"
            + " 1 is full; %s).",
        models,
        tests,
        w,
        chance < 0.0005
            ? "by chance P < 0.001"
            : String.format(Locale.ROOT, "by chance P = %.3f", chance));
  }
}
