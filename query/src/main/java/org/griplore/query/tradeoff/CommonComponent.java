package org.griplore.query.tradeoff;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.griplore.query.estimate.Network;
import org.griplore.query.evidence.Exclusions;

/** Which models two networks can set against each other: the largest part that both connect. */
final class CommonComponent {
  private CommonComponent() {}

  /** A part of either network. */
  private record Parts(int x, int y) {}

  /**
   * Positions of the models, in the order of the evidence; of parts of one size, the one that comes
   * first.
   *
   * @param models how many models the evidence has
   * @param excluded takes the models left out
   */
  static int[] of(Network x, Network y, int models, Exclusions excluded) {
    Map<Parts, List<Integer>> parts =
        IntStream.range(0, models)
            .filter(m -> x.part(m).isPresent() && y.part(m).isPresent())
            .boxed()
            .collect(
                Collectors.groupingBy(
                    m -> new Parts(x.part(m).getAsInt(), y.part(m).getAsInt()),
                    () -> new TreeMap<>(Comparator.comparingInt(Parts::x).thenComparing(Parts::y)),
                    Collectors.toList()));
    List<Integer> largest = List.of();
    for (List<Integer> part : parts.values()) {
      largest = part.size() > largest.size() ? part : largest;
    }
    int either =
        (int)
            IntStream.range(0, models)
                .filter(m -> x.part(m).isPresent() || y.part(m).isPresent())
                .count();
    int both = parts.values().stream().mapToInt(List::size).sum();
    excluded.add("models compared in one of the two disciplines only", either - both);
    excluded.add("models in smaller parts that no tests connect", both - largest.size());
    return largest.stream().mapToInt(m -> m).toArray();
  }
}
