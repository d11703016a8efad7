package org.griplore.query.dependence;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.griplore.query.statistics.ClusteredRegression;
import org.griplore.query.statistics.ClusteredRegression.Errors;
import org.griplore.query.statistics.ClusteredRegression.Estimate;

/**
 * The slope of a contrast with each model compared with itself: y = test + model + slope ·
 * moderator for tyres of the first side, so that it cannot come from other models standing for a
 * side in other tests. Test effects are taken off by centring, errors are related within tests.
 */
final class SameModels {
  /** Models cubed times tests: beyond it the errors would take seconds. */
  private static final double MOST_WORK = 2e8;

  private SameModels() {}

  /**
   * A tyre of either side in a test.
   *
   * @param series the test, or the first of those that it repeats
   * @param at the moderator of the test, in steps, for the first side; 0 for the second
   */
  record Arm(int test, int series, int model, double y, double at) {}

  /** The slope per step; empty where the same models do not say, or there are very many. */
  static Optional<Estimate> slope(List<Arm> all) {
    List<Arm> arms = repeated(all);
    Map<Integer, Integer> column = columns(arms);
    int tests = (int) arms.stream().map(Arm::test).distinct().count();
    if (tests < 3 || Math.pow(column.size() + 1.0, 3) * tests > MOST_WORK) {
      return Optional.empty();
    }
    int width = column.size() + 1;
    double[][] x = new double[arms.size()][width];
    double[] y = new double[arms.size()];
    for (int i = 0; i < arms.size(); i++) {
      Integer own = column.get(arms.get(i).model());
      if (own != null) {
        x[i][own] = 1;
      }
      x[i][width - 1] = arms.get(i).at();
      y[i] = arms.get(i).y();
    }
    centre(arms, x, y);
    int[] cluster = arms.stream().mapToInt(Arm::series).toArray();
    return ClusteredRegression.of(y, x, null, cluster)
        .filter(fit -> fit.residualSd() > Slope.ROUNDING)
        .flatMap(fit -> fit.slope(width - 1, Errors.REDUCED_BIAS));
  }

  /** Leaves out models in one test only, and tests with one model, as long as there are any. */
  private static List<Arm> repeated(List<Arm> all) {
    List<Arm> arms = all;
    int before;
    do {
      before = arms.size();
      Map<Integer, Long> tests =
          arms.stream().collect(Collectors.groupingBy(Arm::model, Collectors.counting()));
      List<Arm> kept = arms.stream().filter(arm -> tests.get(arm.model()) > 1).toList();
      Map<Integer, Long> models =
          kept.stream().collect(Collectors.groupingBy(Arm::test, Collectors.counting()));
      arms = kept.stream().filter(arm -> models.get(arm.test()) > 1).toList();
    } while (arms.size() < before);
    return arms;
  }

  /** A column for each model but the first of each part that tests connect. */
  private static Map<Integer, Integer> columns(List<Arm> arms) {
    Map<Integer, List<Integer>> modelsOfTest = new HashMap<>();
    Map<Integer, List<Integer>> testsOfModel = new HashMap<>();
    for (Arm arm : arms) {
      modelsOfTest.computeIfAbsent(arm.test(), t -> new ArrayList<>()).add(arm.model());
      testsOfModel.computeIfAbsent(arm.model(), m -> new ArrayList<>()).add(arm.test());
    }
    Map<Integer, Integer> part = new HashMap<>();
    Map<Integer, Integer> column = new HashMap<>();
    for (Integer first : testsOfModel.keySet()) {
      if (part.containsKey(first)) {
        continue;
      }
      part.put(first, first);
      List<Integer> open = new ArrayList<>(List.of(first));
      while (!open.isEmpty()) {
        for (Integer test : testsOfModel.get(open.remove(open.size() - 1))) {
          for (Integer model : modelsOfTest.get(test)) {
            if (part.putIfAbsent(model, first) == null) {
              column.put(model, column.size());
              open.add(model);
            }
          }
        }
      }
    }
    return column;
  }

  private static void centre(List<Arm> arms, double[][] x, double[] y) {
    Map<Integer, List<Integer>> rows = new HashMap<>();
    for (int i = 0; i < arms.size(); i++) {
      rows.computeIfAbsent(arms.get(i).test(), t -> new ArrayList<>()).add(i);
    }
    for (List<Integer> test : rows.values()) {
      double n = test.size();
      double meanY = test.stream().mapToDouble(i -> y[i]).sum() / n;
      double[] mean = new double[x[0].length];
      test.forEach(i -> Arrays.setAll(mean, k -> mean[k] + x[i][k] / n));
      for (int i : test) {
        y[i] -= meanY;
        Arrays.setAll(x[i], k -> x[i][k] - mean[k]);
      }
    }
  }
}
