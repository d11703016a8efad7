package org.griplore.query.retold;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.function.BiPredicate;
import org.griplore.store.archive.Snapshot;
import org.griplore.store.vocabulary.DisciplineCatalogue;
import org.griplore.store.vocabulary.SourceKind;

/**
 * Tests of an archive that look like one, told by two reports under keys of their own: no more than
 * 180 days apart, in one size, with four or more models in common, most of whose figures are equal
 * to the coarser rounding, or proportional with equal ranks. Until somebody decides, such a test
 * counts once: the own report before an independent one before a maker's, then the one that tells
 * more, then the earlier.
 */
public final class TestsToldTwice {
  private final List<ToldTwice> pairs;
  private final BitSet left = new BitSet();

  private TestsToldTwice(List<ToldTwice> pairs) {
    this.pairs = List.copyOf(pairs);
    pairs.forEach(pair -> left.set(pair.second()));
  }

  /**
   * Finds them.
   *
   * @param apart whether two tests, by their keys, have been decided to be two
   */
  public static TestsToldTwice in(
      Snapshot snapshot, DisciplineCatalogue catalogue, BiPredicate<String, String> apart) {
    TestCells cells = new TestCells(snapshot, catalogue);
    PairComparison comparison = new PairComparison(snapshot, catalogue, cells);
    Comparator<Integer> rank =
        Comparator.<Integer>comparingInt(test -> standing(snapshot, test))
            .thenComparing(test -> -cells.count(test))
            .thenComparing(test -> test);
    List<ToldTwice> found = new ArrayList<>();
    new TestPairs(snapshot)
        .forEach(
            (one, other) -> {
              boolean inOrder = rank.compare(one, other) <= 0;
              int first = inOrder ? one : other;
              int second = inOrder ? other : one;
              String key = snapshot.tests().get(first).key();
              if (!apart.test(key, snapshot.tests().get(second).key())) {
                comparison.of(first, second).ifPresent(found::add);
              }
            });
    found.sort(Comparator.comparingInt(ToldTwice::first).thenComparing(ToldTwice::second));
    return new TestsToldTwice(found);
  }

  private static int standing(Snapshot snapshot, int test) {
    SourceKind kind = snapshot.tests().get(test).details().kind();
    return kind == SourceKind.OWN ? 0 : kind == SourceKind.MAKER ? 2 : 1;
  }

  /** The pairs, by the position of the test that counts. */
  public List<ToldTwice> pairs() {
    return pairs;
  }

  /** Whether a test is one that another tells, and so does not count. */
  public boolean isRetold(int test) {
    return left.get(test);
  }
}
