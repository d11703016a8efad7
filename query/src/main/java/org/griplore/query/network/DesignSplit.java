package org.griplore.query.network;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The generalised Q split by design, the set of models that a test held (Krahn, Binder and Koenig
 * 2013, BMC Med Res Methodol 13:35).
 *
 * @param within scatter among tests of the same design
 * @param between inconsistency of designs with each other: what is left of Q
 */
public record DesignSplit(Heterogeneity within, Heterogeneity between) {

  static DesignSplit of(TestRows rows, double[] variance, Heterogeneity whole) {
    Map<String, List<Integer>> designs = new TreeMap<>();
    for (int t = 0; t < rows.tests; t++) {
      String design =
          Arrays.toString(Arrays.copyOfRange(rows.model, rows.start[t], rows.start[t + 1]));
      designs.computeIfAbsent(design, d -> new ArrayList<>()).add(t);
    }
    double q = 0;
    int df = 0;
    for (List<Integer> tests : designs.values()) {
      if (tests.size() > 1) {
        int arms = rows.start[tests.get(0) + 1] - rows.start[tests.get(0)];
        q += quadratic(rows, variance, tests, arms);
        df += (tests.size() - 1) * (arms - 1);
      }
    }
    return new DesignSplit(
        Heterogeneity.of(q, df), Heterogeneity.of(Math.max(0, whole.q() - q), whole.df() - df));
  }

  private static double quadratic(
      TestRows rows, double[] variance, List<Integer> tests, int models) {
    int n = tests.size() * models;
    int[] test = new int[n];
    int[] model = new int[n];
    double[] y = new double[n];
    double[] v = new double[n];
    for (int k = 0; k < n; k++) {
      test[k] = k / models;
      model[k] = k % models;
      int arm = rows.start[tests.get(test[k])] + model[k];
      y[k] = rows.y[arm];
      v[k] = variance[arm];
    }
    TestRows own = new TestRows(new Arms(tests.size(), models, test, model, y, v));
    Components components = new Components(own, models);
    Laplacian laplacian = new Laplacian(own, ModelOrder.of(own, components, models));
    return GlsPoint.at(laplacian, v, 0, false, false).quadratic;
  }
}
