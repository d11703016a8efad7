package org.griplore.query.retold;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.griplore.store.archive.Snapshot;
import org.griplore.store.vocabulary.DisciplineCatalogue;
import org.griplore.store.vocabulary.SourceKind;
import org.griplore.store.vocabulary.TestDecision.Verdict;

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

  /** Finds them, as far as nobody has decided otherwise; pairs decided to be one are among them. */
  public static TestsToldTwice in(Snapshot snapshot, DisciplineCatalogue catalogue) {
    TestCells cells = new TestCells(snapshot, catalogue);
    PairComparison comparison = new PairComparison(snapshot, catalogue, cells);
    Comparator<Integer> rank =
        Comparator.<Integer>comparingInt(test -> standing(snapshot, test))
            .thenComparing(test -> -cells.count(test))
            .thenComparing(test -> test);
    Map<Set<String>, Verdict> decided = new HashMap<>();
    snapshot.testDecisions().forEach(d -> decided.put(Set.of(d.test(), d.other()), d.verdict()));
    List<ToldTwice> found = new ArrayList<>();
    new TestPairs(snapshot)
        .forEach(
            (one, other) -> {
              boolean inOrder = rank.compare(one, other) <= 0;
              int first = inOrder ? one : other;
              int second = inOrder ? other : one;
              Verdict verdict = decided.get(Set.of(key(snapshot, one), key(snapshot, other)));
              if (verdict != Verdict.APART && verdict != Verdict.SAME) {
                comparison.of(first, second).ifPresent(found::add);
              }
            });
    decided.forEach(
        (pair, verdict) -> {
          List<Integer> tests =
              IntStream.range(0, snapshot.tests().size())
                  .filter(test -> pair.contains(key(snapshot, test)))
                  .boxed()
                  .sorted(rank)
                  .toList();
          if (verdict == Verdict.SAME && tests.size() == 2) {
            found.add(comparison.decided(tests.get(0), tests.get(1)));
          }
        });
    found.sort(Comparator.comparingInt(ToldTwice::first).thenComparing(ToldTwice::second));
    return new TestsToldTwice(found);
  }

  private static String key(Snapshot snapshot, int test) {
    return snapshot.tests().get(test).key();
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
