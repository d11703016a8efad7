package org.griplore.query.dependence;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.griplore.query.discipline.DisciplineArms;
import org.griplore.query.evidence.Evidence;
import org.griplore.query.evidence.Exclusions;

/**
 * The contrast inside one test: mean of the first side less mean of the second, on the discipline's
 * scale.
 *
 * @param test position of the test
 * @param first entries of the first side
 * @param second entries of the second
 * @param figures results of the first side, then of the second
 * @param difference plus: the first is better
 */
record TestContrast(
    int test, List<Integer> first, List<Integer> second, List<Double> figures, double difference) {

  /** What the contrast of a and b tyres weighs: ab/(a + b), as two means of independent results. */
  double weight() {
    return (double) first.size() * second.size() / (first.size() + second.size());
  }

  /** All entries of both sides. */
  List<Integer> entries() {
    List<Integer> all = new ArrayList<>(first);
    all.addAll(second);
    return all;
  }

  /** The tests that hold both sides, by date; others are counted. */
  static List<TestContrast> of(
      Evidence evidence, DisciplineArms arms, List<Side> sides, Exclusions excluded) {
    TreeMap<Integer, Gathered> byTest = new TreeMap<>();
    for (int i = 0; i < arms.size(); i++) {
      int entry = arms.entry()[i];
      Gathered gathered = byTest.computeIfAbsent(arms.test()[i], test -> new Gathered());
      for (int side = 0; side < 2; side++) {
        if (sides.get(side).holds(evidence, entry)) {
          gathered.entries.get(side).add(entry);
          gathered.figures.get(side).add(arms.y()[i]);
        }
      }
    }
    List<TestContrast> contrasts = new ArrayList<>();
    byTest.forEach(
        (test, g) -> {
          List<Integer> first = g.entries.get(0);
          List<Integer> second = g.entries.get(1);
          if (first.isEmpty() || second.isEmpty()) {
            excluded.add("tests that do not hold both sides");
          } else {
            contrasts.add(
                new TestContrast(
                    test,
                    first,
                    second,
                    g.figures(),
                    mean(g.figures.get(0)) - mean(g.figures.get(1))));
          }
        });
    return contrasts;
  }

  private static double mean(List<Double> figures) {
    return figures.stream().mapToDouble(figure -> figure).sum() / figures.size();
  }

  private static final class Gathered {
    final List<List<Integer>> entries = List.of(new ArrayList<>(), new ArrayList<>());
    final List<List<Double>> figures = List.of(new ArrayList<>(), new ArrayList<>());

    List<Double> figures() {
      return figures.stream().flatMap(List::stream).toList();
    }
  }
}
