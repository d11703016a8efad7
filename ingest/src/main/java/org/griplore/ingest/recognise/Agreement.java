package org.griplore.ingest.recognise;

import java.util.List;
import java.util.Map;
import org.griplore.store.vocabulary.Dimension;
import org.griplore.store.vocabulary.Direction;
import org.griplore.store.vocabulary.Unit;

/**
 * How a column of ratings or totals goes with the measured columns of its table: a total that runs
 * against every one of them is read the wrong way round. Pairs of rows are counted that stand in
 * the same order in both columns, and in the other (as in Kendall's tau).
 */
final class Agreement {
  /** Fewer pairs say nothing. */
  private static final int PAIRS = 3;

  private Agreement() {}

  /**
   * The sign of the agreement of a column with all measured ones: 1 when high figures stand with
   * good results in each that says anything, -1 when low ones do, 0 else.
   */
  static int withMeasured(
      int column,
      ColumnRole.Value role,
      Map<Integer, RawColumn> raw,
      List<ColumnRole> roles,
      int rows) {
    if (role.discipline().unit().dimension() != Dimension.POINTS) {
      return 0;
    }
    int with = 0;
    int against = 0;
    for (Map.Entry<Integer, RawColumn> other : raw.entrySet()) {
      if (roles.get(other.getKey()) instanceof ColumnRole.Value measured && isMeasured(measured)) {
        int sign = sign(raw.get(column).values, other.getValue().values, measured);
        with += sign > 0 ? 1 : 0;
        against += sign < 0 ? 1 : 0;
      }
    }
    if (with + against == 0 || with > 0 && against > 0) {
      return with >= 3 * Math.max(1, against) ? 1 : against >= 3 * Math.max(1, with) ? -1 : 0;
    }
    return with > 0 ? 1 : -1;
  }

  /** Cost and mass are no performance, and totals need not go with them. */
  private static boolean isMeasured(ColumnRole.Value role) {
    Unit unit = role.unit() == null ? role.discipline().unit() : role.unit();
    return switch (unit.dimension()) {
      case POINTS, MARK, RELATIVE, NUMBER, CURRENCY, MASS -> false;
      default -> role.discipline().accepts(unit);
    };
  }

  private static int sign(Double[] ratings, Double[] values, ColumnRole.Value measured) {
    Unit unit = measured.unit() == null ? measured.discipline().unit() : measured.unit();
    int better = measured.discipline().directionOf(unit) == Direction.HIGH ? 1 : -1;
    int rows = Math.min(ratings.length, 300);
    int with = 0;
    int against = 0;
    for (int i = 0; i < rows; i++) {
      for (int j = 0; j < i; j++) {
        if (ratings[i] != null && ratings[j] != null && values[i] != null && values[j] != null) {
          int sign =
              Double.compare(ratings[i], ratings[j])
                  * better
                  * Double.compare(values[i], values[j]);
          with += sign > 0 ? 1 : 0;
          against += sign < 0 ? 1 : 0;
        }
      }
    }
    if (with + against < PAIRS) {
      return 0;
    }
    return with >= 3 * against ? 1 : against >= 3 * with ? -1 : 0;
  }
}
