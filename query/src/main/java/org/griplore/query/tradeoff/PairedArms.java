package org.griplore.query.tradeoff;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.griplore.query.discipline.DisciplineArms;
import org.griplore.query.statistics.CrossedCorrelation;
import org.griplore.query.statistics.WithinGroupCorrelation;

/** Models in tests that measured both disciplines. */
final class PairedArms {
  private final List<int[]> pairs = new ArrayList<>();
  private final DisciplineArms x;
  private final DisciplineArms y;

  PairedArms(DisciplineArms x, DisciplineArms y) {
    this.x = x;
    this.y = y;
    Map<Long, Integer> first = new HashMap<>();
    for (int i = 0; i < x.size(); i++) {
      first.put(key(x, i), i);
    }
    for (int j = 0; j < y.size(); j++) {
      Integer i = first.get(key(y, j));
      if (i != null) {
        pairs.add(new int[] {i, j});
      }
    }
  }

  private static long key(DisciplineArms arms, int i) {
    return (long) arms.test()[i] << 32 | arms.model()[i];
  }

  /** The correlation inside tests; empty where the pairs do not say. */
  Optional<WithinGroupCorrelation> correlation() {
    return WithinGroupCorrelation.of(
        pairs.stream().mapToInt(pair -> x.test()[pair[0]]).toArray(),
        pairs.stream().mapToDouble(pair -> x.y()[pair[0]]).toArray(),
        pairs.stream().mapToDouble(pair -> y.y()[pair[1]]).toArray());
  }

  /** The same with models that return taken as what they are; empty where it cannot be told. */
  Optional<CrossedCorrelation> crossed() {
    return CrossedCorrelation.of(
        pairs.stream().mapToInt(pair -> x.test()[pair[0]]).toArray(),
        pairs.stream().mapToInt(pair -> x.model()[pair[0]]).toArray(),
        pairs.stream().mapToDouble(pair -> x.y()[pair[0]]).toArray(),
        pairs.stream().mapToDouble(pair -> y.y()[pair[1]]).toArray());
  }

  /** How many models each test has in both. */
  Map<Integer, Integer> models() {
    Map<Integer, Integer> counts = new HashMap<>();
    pairs.forEach(pair -> counts.merge(x.test()[pair[0]], 1, Integer::sum));
    return counts;
  }

  /** In how many tests each model has both. */
  Map<Integer, Integer> tests() {
    Map<Integer, Integer> counts = new HashMap<>();
    pairs.forEach(pair -> counts.merge(x.model()[pair[0]], 1, Integer::sum));
    return counts;
  }
}
