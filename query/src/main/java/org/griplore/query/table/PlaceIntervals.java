package org.griplore.query.table;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.griplore.query.discipline.Difference;
import org.griplore.query.network.Estimate;
import org.griplore.query.statistics.JointErrors;
import org.griplore.query.statistics.RankIntervals;

/** The places that the evidence allows the tyres of a column, for all of them at once. */
final class PlaceIntervals {
  /** Places are drawn from one seed, so that a table reads the same each time. */
  private static final long SEED = 20_240_502L;

  /** Pairs of tyres times models of the network: beyond, places have no intervals. */
  private static final long MOST_WORK = 200_000;

  private final List<Integer> rows;
  private final RankIntervals intervals;

  private PlaceIntervals(List<Integer> rows, RankIntervals intervals) {
    this.rows = rows;
    this.intervals = intervals;
  }

  /**
   * @param models number of models in the network
   */
  static PlaceIntervals of(Footing footing, int tyres, int models) {
    List<Integer> rows = new ArrayList<>();
    for (int i = 0; i < tyres; i++) {
      if (footing.basis(i) != FigureBasis.NONE) {
        rows.add(i);
      }
    }
    int n = rows.size();
    if (n < 2 || (long) n * n / 2 * models > MOST_WORK) {
      return new PlaceIntervals(rows, null);
    }
    double[][] spread = new double[n][n];
    Estimate pair = null;
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < i; j++) {
        double[] weights = new double[tyres];
        weights[rows.get(i)] = 1;
        weights[rows.get(j)] = -1;
        pair = footing.combination(weights);
        if (pair.se().isEmpty()) {
          return new PlaceIntervals(rows, null);
        }
        spread[i][j] = pair.scale().widening() * pair.se().getAsDouble();
        spread[j][i] = spread[i][j];
      }
    }
    RankIntervals.PairSpread of = (i, j) -> spread[i][j];
    return new PlaceIntervals(
        rows,
        RankIntervals.of(
            rows.stream().mapToDouble(footing::position).toArray(),
            of,
            JointErrors.of(n, of),
            pair.scale().df(),
            Difference.LEVEL,
            new SplittableRandom(SEED)));
  }

  /** The best place of a row; null where it cannot be said. */
  Integer low(int row) {
    return intervals == null ? null : (Integer) intervals.low(rows.indexOf(row));
  }

  /** The worst place of a row; null as {@link #low}. */
  Integer high(int row) {
    return intervals == null ? null : (Integer) intervals.high(rows.indexOf(row));
  }
}
