package org.griplore.query.tradeoff;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.griplore.query.discipline.Network;
import org.griplore.query.evidence.Exclusions;

/**
 * Which models two networks can set against each other: the largest component that both connect.
 */
final class CommonComponent {
  private CommonComponent() {}

  /** A component of either network. */
  private record Parts(int x, int y) {}

  /**
   * Positions of the models, in the order of the evidence; of components of one size, the one that
   * comes first.
   *
   * @param models how many models the evidence has
   * @param excluded takes the models left out
   */
  static int[] of(Network x, Network y, int models, Exclusions excluded) {
    Map<Parts, List<Integer>> components =
        IntStream.range(0, models)
            .filter(m -> x.component(m).isPresent() && y.component(m).isPresent())
            .boxed()
            .collect(
                Collectors.groupingBy(
                    m -> new Parts(x.component(m).getAsInt(), y.component(m).getAsInt()),
                    () -> new TreeMap<>(Comparator.comparingInt(Parts::x).thenComparing(Parts::y)),
                    Collectors.toList()));
    List<Integer> largest = List.of();
    for (List<Integer> component : components.values()) {
      largest = component.size() > largest.size() ? component : largest;
    }
    int either =
        (int)
            IntStream.range(0, models)
                .filter(m -> x.component(m).isPresent() || y.component(m).isPresent())
                .count();
    int both = components.values().stream().mapToInt(List::size).sum();
    excluded.add("models compared in one of the two disciplines only", either - both);
    excluded.add("models in smaller groups that no tests connect", both - largest.size());
    return largest.stream().mapToInt(m -> m).toArray();
  }
}
