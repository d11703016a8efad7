package org.griplore.query.network;

import java.util.ArrayList;
import java.util.List;

/** Arms gathered one by one. */
final class ArmList {
  private final List<double[]> rows = new ArrayList<>();

  void add(int test, int model, double y, double variance) {
    rows.add(new double[] {test, model, y, variance});
  }

  int size() {
    return rows.size();
  }

  Arms build() {
    int tests = 1 + (int) rows.stream().mapToDouble(r -> r[0]).max().orElse(-1);
    int models = 1 + (int) rows.stream().mapToDouble(r -> r[1]).max().orElse(-1);
    return build(tests, models);
  }

  Arms build(int tests, int models) {
    return new Arms(
        tests,
        models,
        rows.stream().mapToInt(r -> (int) r[0]).toArray(),
        rows.stream().mapToInt(r -> (int) r[1]).toArray(),
        rows.stream().mapToDouble(r -> r[2]).toArray(),
        rows.stream().mapToDouble(r -> r[3]).toArray());
  }
}
