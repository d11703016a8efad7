package org.griplore.query.reweigh;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.griplore.query.discipline.DisciplineArms;
import org.griplore.query.evidence.Evidence;
import org.griplore.query.evidence.Exclusions;
import org.griplore.query.evidence.Filter;

/**
 * Sets the results of past tests on one scale over disciplines: each result less the mean of its
 * test, over the usual spread within tests of the archive (pooled, by degrees of freedom). So a
 * discipline in which tyres hardly differ does not weigh more because its figures look large, and a
 * test of like tyres is not stretched.
 *
 * <p>A test counts when its disciplines hold at least half of the weight, a tyre when its results
 * hold at least half of its test's; what is missing takes no part, and the other weights stand in
 * for it.
 */
final class TestScores {
  private static final double LEAST_COVERED = 0.5;

  private final Evidence evidence;
  private final List<String> disciplines;
  private final double[] weights;
  private final double leastCovered;
  private final Map<Integer, Map<Integer, Row>> byTest = new TreeMap<>();

  /** A model's scores in a test; the entry is the first that told any. */
  private record Row(int entry, double[] scores) {}

  /**
   * Gathers them.
   *
   * @param ofEachTest whether the weights are meant for what each test has, however little
   */
  TestScores(
      Evidence evidence,
      Map<String, Double> weights,
      boolean ofEachTest,
      Filter filter,
      Exclusions excluded) {
    this.evidence = evidence;
    this.leastCovered = ofEachTest ? 0 : LEAST_COVERED;
    this.disciplines = weights.keySet().stream().filter(d -> weights.get(d) > 0).toList();
    this.weights = disciplines.stream().mapToDouble(weights::get).toArray();
    for (int d = 0; d < disciplines.size(); d++) {
      DisciplineArms arms = DisciplineArms.of(evidence, disciplines.get(d), filter);
      arms.excluded().list().forEach(left -> excluded.add(left.reason(), left.count()));
      add(d, arms);
    }
  }

  /** The disciplines that are weighted. */
  List<String> disciplines() {
    return disciplines;
  }

  private void add(int discipline, DisciplineArms arms) {
    Map<Integer, List<Integer>> armsOfTest = new TreeMap<>();
    for (int arm = 0; arm < arms.size(); arm++) {
      armsOfTest.computeIfAbsent(arms.test()[arm], t -> new ArrayList<>()).add(arm);
    }
    armsOfTest.values().removeIf(of -> of.size() < 2);
    Map<Integer, Double> means = new HashMap<>();
    double squares = 0;
    int df = 0;
    for (Map.Entry<Integer, List<Integer>> of : armsOfTest.entrySet()) {
      double mean =
          of.getValue().stream().mapToDouble(arm -> arms.y()[arm]).average().orElseThrow();
      means.put(of.getKey(), mean);
      for (int arm : of.getValue()) {
        squares += (arms.y()[arm] - mean) * (arms.y()[arm] - mean);
      }
      df += of.getValue().size() - 1;
    }
    double spread = Math.sqrt(squares / df);
    armsOfTest.forEach(
        (test, of) -> {
          for (int arm : of) {
            Row row =
                byTest
                    .computeIfAbsent(test, t -> new TreeMap<>())
                    .computeIfAbsent(arms.model()[arm], m -> new Row(arms.entry()[arm], missing()));
            // where no tyre ever differed, the discipline tells nothing
            row.scores[discipline] = spread > 0 ? (arms.y()[arm] - means.get(test)) / spread : 0;
          }
        });
  }

  private double[] missing() {
    double[] row = new double[weights.length];
    Arrays.fill(row, Double.NaN);
    return row;
  }

  /** The tests that count, by date. */
  List<ScoredTest> tests(int minField, Exclusions excluded) {
    List<ScoredTest> scored = new ArrayList<>();
    double whole = Arrays.stream(weights).sum();
    byTest.forEach(
        (test, rows) -> {
          double[] own = weightsOf(rows.values());
          double covered = Arrays.stream(own).sum();
          if (covered < leastCovered * whole) {
            excluded.add("tests whose disciplines hold less than half of the weight");
            return;
          }
          List<Row> ranked = new ArrayList<>();
          for (Row row : rows.values()) {
            if (weightOf(row.scores, own) >= LEAST_COVERED * covered) {
              ranked.add(row);
            } else {
              excluded.add("tyres whose results hold less than half of the weight of their test");
            }
          }
          if (ranked.size() < minField) {
            excluded.add("tests that rank " + (minField - 1) + " or fewer");
            return;
          }
          scored.add(
              new ScoredTest(
                  test,
                  ranked.stream().mapToInt(Row::entry).toArray(),
                  ranked.stream().map(Row::scores).toArray(double[][]::new),
                  own));
        });
    return scored;
  }

  private double[] weightsOf(Iterable<Row> rows) {
    double[] own = new double[weights.length];
    for (Row row : rows) {
      for (int d = 0; d < own.length; d++) {
        own[d] = Double.isNaN(row.scores[d]) ? own[d] : weights[d];
      }
    }
    return own;
  }

  private static double weightOf(double[] row, double[] weights) {
    double sum = 0;
    for (int d = 0; d < row.length; d++) {
      sum += Double.isNaN(row[d]) ? 0 : weights[d];
    }
    return sum;
  }

  /** The model of an entry. */
  int model(int entry) {
    return evidence.entries().model()[entry];
  }
}
