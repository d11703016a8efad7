package org.griplore.query.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.griplore.query.discipline.Difference;
import org.griplore.query.network.Estimate;
import org.griplore.query.ranking.Places;
import org.griplore.query.statistics.Tails;
import org.griplore.store.vocabulary.Direction;

/** Adds up a table's columns under the user's weights. */
final class WeightedTotals {
  /** A total needs this share of the weight. */
  private static final double LEAST_COVERED = 0.5;

  private WeightedTotals() {}

  /**
   * The totals, one a tyre.
   *
   * @param columns the columns with evidence, by catalogue key
   * @param weights weight of each discipline
   */
  static List<WeightedTotal> of(
      Map<String, DisciplineColumn> columns, Map<String, Double> weights, int tyres) {
    List<WeightedTotal> totals = new ArrayList<>();
    for (int row = 0; row < tyres; row++) {
      totals.add(total(columns, weights, row));
    }
    double[] complete =
        totals.stream()
            .mapToDouble(t -> t.value() == null || !t.leftOut().isEmpty() ? Double.NaN : t.value())
            .toArray();
    int[] places = new int[tyres];
    Places.rank(complete, tyres, Direction.HIGH, places);
    List<WeightedTotal> placed = new ArrayList<>();
    for (int row = 0; row < tyres; row++) {
      WeightedTotal t = totals.get(row);
      placed.add(
          new WeightedTotal(
              t.value(),
              t.low(),
              t.high(),
              Double.isNaN(complete[row]) ? null : (Integer) places[row],
              t.leftOut()));
    }
    return placed;
  }

  private static WeightedTotal total(
      Map<String, DisciplineColumn> columns, Map<String, Double> weights, int row) {
    double sum = 0;
    double variance = 0;
    double covered = 0;
    double whole = 0;
    List<String> leftOut = new ArrayList<>();
    for (Map.Entry<String, Double> weight : weights.entrySet()) {
      double w = weight.getValue();
      if (w == 0) {
        continue;
      }
      whole += w;
      DisciplineColumn column = columns.get(weight.getKey());
      double spread = column == null ? Double.NaN : column.spreadOfModels();
      Optional<Estimate> difference =
          column == null || !(spread > 0) ? Optional.empty() : column.difference(row);
      if (difference.isEmpty()) {
        leftOut.add(weight.getKey());
        continue;
      }
      covered += w;
      sum += w * difference.get().value() / spread;
      double se = difference.get().se().orElse(Double.NaN) * w / spread;
      variance += se * se;
    }
    if (covered < LEAST_COVERED * whole) {
      return new WeightedTotal(null, null, null, null, leftOut);
    }
    double value = sum / covered;
    boolean hasInterval = variance > 0 && !Double.isNaN(variance);
    double half = hasInterval ? Tails.normal(Difference.LEVEL) * Math.sqrt(variance) / covered : 0;
    return new WeightedTotal(
        value,
        hasInterval ? (Double) (value - half) : null,
        hasInterval ? (Double) (value + half) : null,
        null,
        leftOut);
  }
}
