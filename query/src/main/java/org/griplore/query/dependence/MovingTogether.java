package org.griplore.query.dependence;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.griplore.query.answer.Wording;
import org.griplore.query.evidence.Evidence;
import org.griplore.query.statistics.RankCorrelation;

/**
 * Moderators that move together over the tests that hold both sides: where they do, a slope on one
 * is as much a slope on the other, and no number of tests of this kind tells them apart.
 */
final class MovingTogether {
  /** Rank correlations of this size and more are told. */
  private static final double STRONG = 0.6;

  private static final int FEWEST = 5;

  private MovingTogether() {}

  /** A sentence a pair of moderators, for those looked at beside any other. */
  static List<String> words(
      Evidence evidence, List<TestContrast> contrasts, List<Moderator> lookedAt) {
    List<String> words = new ArrayList<>();
    Moderator[] all = Moderator.values();
    for (int a = 0; a < all.length; a++) {
      for (int b = a + 1; b < all.length; b++) {
        if (lookedAt.contains(all[a]) || lookedAt.contains(all[b])) {
          words(evidence, contrasts, all[a], all[b]).ifPresent(words::add);
        }
      }
    }
    return words;
  }

  private static Optional<String> words(
      Evidence evidence, List<TestContrast> contrasts, Moderator one, Moderator other) {
    Moderator.Values first = one.in(evidence, contrasts);
    Moderator.Values second = other.in(evidence, contrasts);
    int[] both =
        java.util.stream.IntStream.range(0, contrasts.size())
            .filter(i -> first.of().get(i).isPresent() && second.of().get(i).isPresent())
            .toArray();
    if (both.length < FEWEST) {
      return Optional.empty();
    }
    double[] x =
        java.util.Arrays.stream(both).mapToDouble(i -> first.of().get(i).getAsDouble()).toArray();
    double[] y =
        java.util.Arrays.stream(both).mapToDouble(i -> second.of().get(i).getAsDouble()).toArray();
    return RankCorrelation.spearman(x, y)
        .filter(rho -> Math.abs(rho) >= STRONG)
        .map(
            rho ->
                "In these tests %s and %s move together (rank correlation %s over %s): a slope on one may be the other's."
                    .formatted(
                        first.words(),
                        second.words(),
                        Wording.signed(rho, 2),
                        Wording.counted(both.length, "test")));
  }
}
